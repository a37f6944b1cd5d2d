import { baseUnits, units } from '../../measure/units';
import type { Coefficient, Origin } from '../../reference/origins';
import { type Evaluation, isIntermediate, isRow } from '../engine/evaluate';
import type { RowResult } from '../engine/formulate';
import { wayCalled } from '../engine/route';
import { type CoefficientId, coefficientInEffect, coefficientKey, isCoefficient } from '../recipe/coefficients';
import type { IntermediateId, NumericRowId } from '../recipe/order';
import type { TermId } from '../rows/row';
import { numericRows } from '../rows/sheet';
import { coefficientNames } from '../words/coefficient-names';
import type { Figure, Telling } from './figure';
import { findFigure } from './figures';
import { formulaOf } from './formula-of';
import { rowSymbols, sharedNames } from './told/names';
import { writtenOut } from './told/ripen';
import { told as toldWays } from './told/told';

interface Named {
  readonly symbol: string;
  readonly label: string;
  readonly value: number;
  /** As the working writes it; empty for a pure number. */
  readonly unit: string;
}

/** A quantity that went into a number: another term of the sheet, a coefficient or a figure with its origin. */
export type WorkingInput = Named &
  (
    | { readonly from: 'row'; readonly id: NumericRowId }
    | { readonly from: 'intermediate'; readonly id: IntermediateId }
    | {
        readonly from: 'coefficient';
        readonly id: CoefficientId;
        readonly key: string;
        readonly coefficient: Coefficient;
      }
    | { readonly from: 'figure'; readonly id: string; readonly figure: Figure }
  );

export interface Working extends Named {
  readonly id: string;
  /** `typed`: as it was given; `measured`: read off; `rule`: worked out by `formula`. */
  readonly how: 'typed' | 'measured' | 'rule';
  readonly words: string;
  /** With `{id}` for each quantity in it, to be written as symbols or as numbers. */
  readonly formula: string;
  readonly inputs: readonly WorkingInput[];
  /** Where the formula itself is from; null where that is plain arithmetic. */
  readonly by: Origin | null;
  /** The two ends of what is never one number; none where it is. */
  readonly ends: readonly WorkingInput[];
}

/** How the number of a cell came about; null for a choice and for a quantity that is not there. */
export function workingIn({ id, from, range }: RowResult): Working | null {
  if (from === null || !isRow(id)) return null;
  const { bounds } = numericRows[id];
  const working = workingOf(id, from);
  if (range === null || bounds === undefined) return working;
  return { ...working, ends: [inputOf(bounds.low, from), inputOf(bounds.high, from)] };
}

/** How a term's value came about, in words, as a formula, with what was put in and where each coefficient is from. */
export function workingOf(id: TermId, x: Evaluation): Working {
  const base = { ...namedTerm(id, x), id, inputs: [], ends: [], formula: '', by: null };
  if (x.standing.values.has(id) && isRow(id)) return { ...base, how: 'measured', words: 'Read off while making it.' };
  if (isRow(id) && x.plan.accepted.has(id)) return { ...base, how: 'typed', words: 'As you typed it.' };
  return { ...base, how: 'rule', ...told(tellingOf(id, x), x) };
}

function tellingOf(id: TermId, x: Evaluation): Telling {
  const name = x.wayName(id);
  const telling = toldWays[id][name];
  const formula = formulaOf(wayCalled(name, id)) ?? telling?.formula;
  if (telling === undefined || formula === undefined) throw new Error(`nothing tells how ${id} comes about`);
  return { words: telling.words, formula: formula.replace(/\{\w+\}/g, (part) => writtenOut[part] ?? part) };
}

/** How an input came about in its turn; null for one that a table has. */
export function workingOfInput(input: WorkingInput, x: Evaluation): Working | null {
  if (input.from === 'row' || input.from === 'intermediate') return workingOf(input.id, x);
  if (input.from === 'coefficient' || input.figure.told === null) return null;
  const { symbol, label, value, unit } = input;
  return { id: input.id, symbol, label, value, unit, how: 'rule', ends: [], ...told(input.figure.told, x) };
}

/** A formula with what it names. One that is a figure and no more is told as that figure is. */
function told(
  { words, formula, parts = {}, by }: Telling,
  x: Evaluation,
): Pick<Working, 'words' | 'formula' | 'inputs' | 'by'> {
  const inputs = inputsOf(formula, parts, x);
  const [only] = inputs;
  if (only?.from === 'figure' && only.figure.told !== null && formula === `{${only.id}}`) {
    return { ...told(only.figure.told, x), words };
  }
  return { words, formula, inputs, by: by ?? null };
}

function namedTerm(id: TermId, x: Evaluation): Named {
  const value = x.of(id);
  if (!isRow(id)) return { ...sharedNames[id], value };
  const { label, kind, unit } = numericRows[id];
  return { symbol: rowSymbols[id], label, value, unit: unit ?? units[baseUnits[kind]].symbol };
}

/** What a formula names, in its order. */
function inputsOf(formula: string, parts: Readonly<Record<string, Figure>>, x: Evaluation): readonly WorkingInput[] {
  const names = new Set([...formula.matchAll(/\{([^{}]+)\}/g)].map(([, id = '']) => id));
  return [...names].map((id) => {
    const part = parts[id];
    return part === undefined ? inputOf(id, x) : inputOfFigure(id, part);
  });
}

/** A figure as an input, to be shown and opened like any. */
export function inputOfFigure(id: string, figure: Figure): WorkingInput {
  const { symbol, label, value, unit } = figure;
  return { from: 'figure', id, symbol, label, value, unit, figure };
}

/** What a name in a formula stands for. A name that stands for nothing is a fault in our own code. */
function inputOf(id: string, x: Evaluation): WorkingInput {
  if (isRow(id)) return { from: 'row', id, ...namedTerm(id, x) };
  if (isIntermediate(id)) return { from: 'intermediate', id, ...namedTerm(id, x) };
  if (isCoefficient(id)) return inputOfCoefficient(id, x);
  const figure = findFigure(id, x);
  if (figure === undefined) throw new Error(`a formula names ${id}, which is nothing`);
  return inputOfFigure(id, figure);
}

function inputOfCoefficient(id: CoefficientId, x: Evaluation): WorkingInput {
  const { symbol, label } = coefficientNames[id];
  const standing = x.standing.coefficients.get(id);
  const found = coefficientInEffect(id, x.recipe, x.choices);
  const coefficient: Coefficient =
    standing === undefined ? found : { ...found, value: standing, origin: { kind: 'yours', how: 'measured' } };
  const { value, unit } = coefficient;
  return { from: 'coefficient', id, key: coefficientKey(id, x.recipe), symbol, label, value, unit, coefficient };
}
