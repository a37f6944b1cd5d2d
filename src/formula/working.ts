import type { Kind } from '../measure/units';
import type { Coefficient, Origin } from '../reference/origins';
import { type CoefficientId, coefficientInEffect, coefficientKey, coefficients } from './coefficients';
import { type Evaluation, isRow, isTerm, termOf } from './evaluate';
import type { RowResult } from './formulate';
import { Recorder } from './recorder';
import type { TermId } from './row';

/** A quantity that went into a number: another term of the sheet, or a coefficient with its origin. */
export type WorkingInput =
  | {
      readonly from: 'row' | 'intermediate';
      readonly id: TermId;
      readonly symbol: string;
      readonly label: string;
      readonly value: number;
      readonly kind: Kind;
    }
  | {
      readonly from: 'coefficient';
      readonly id: CoefficientId;
      readonly key: string;
      readonly symbol: string;
      readonly label: string;
      readonly value: number;
      readonly coefficient: Coefficient;
    };

export interface Working {
  readonly id: TermId;
  readonly symbol: string;
  readonly label: string;
  readonly value: number;
  readonly kind: Kind;
  /** `typed`: as it was given; `measured`: read off; `rule`: worked out by `formula`. */
  readonly how: 'typed' | 'measured' | 'rule';
  readonly words: string;
  /** With `{id}` for each quantity in it, to be written as symbols or as numbers. */
  readonly formula: string;
  readonly inputs: readonly WorkingInput[];
  /** Where the tables behind it are from, beside those of its inputs. */
  readonly origins: readonly Origin[];
}

/** How the number of a cell came about; null for a choice and for a quantity that is not there. */
export function workingIn({ id, from }: RowResult): Working | null {
  return from === null || !isRow(id) ? null : workingOf(id, from);
}

/** How a term's value came about, in words, as a formula, with what was put in and where each coefficient is from. */
export function workingOf(id: TermId, x: Evaluation): Working {
  const term = termOf(id);
  const way = x.way(id);
  const base = { id, symbol: term.symbol, label: term.label, value: x.of(id), kind: term.kind };
  if (x.standing.values.has(id) && isRow(id)) {
    return { ...base, how: 'measured', words: 'Read off while making it.', formula: '', inputs: [], origins: [] };
  }
  if (isRow(id) && x.plan.accepted.has(id)) {
    return { ...base, how: 'typed', words: 'As you typed it.', formula: '', inputs: [], origins: [] };
  }
  const recorder = new Recorder(x);
  recorder.run(id);
  const origins = term.origins?.(x) ?? [];
  return {
    ...base,
    how: 'rule',
    words: way.words,
    formula: way.formula,
    inputs: inputsOf(recorder, x, way.formula),
    origins,
  };
}

/** What the rule read, and what else its formula names (a stage of the balance that the rule took as a whole). */
function inputsOf(recorder: Recorder, x: Evaluation, formula: string): readonly WorkingInput[] {
  for (const [, id] of formula.matchAll(/\{(\w+)\}/g)) if (id !== undefined && isTerm(id)) recorder.of(id);
  const terms = recorder.terms.map((id): WorkingInput => {
    const term = termOf(id);
    const from = isRow(id) ? 'row' : 'intermediate';
    return { from, id, symbol: term.symbol, label: term.label, value: x.of(id), kind: term.kind };
  });
  const constants = recorder.coefficients.map((id): WorkingInput => {
    const { symbol, label } = coefficients[id];
    const standing = x.standing.coefficients.get(id);
    const found = coefficientInEffect(id, x.recipe, x.choices);
    const coefficient: Coefficient =
      standing === undefined ? found : { ...found, value: standing, origin: { kind: 'yours', how: 'measured' } };
    const key = coefficientKey(id, x.recipe);
    return { from: 'coefficient', id, key, symbol, label, value: coefficient.value, coefficient };
  });
  const place = ({ id }: WorkingInput): number => {
    const at = formula.indexOf(`{${id}}`);
    return at < 0 ? formula.length : at;
  };
  return [...terms, ...constants].sort((a, b) => place(a) - place(b));
}
