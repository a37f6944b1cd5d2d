import type { Kind } from '../measure/units';
import { kitchen } from '../reference/kitchen';
import { type Choices, chooseFrom } from './coefficients';
import { correctCoefficients } from './correct';
import { Evaluation, isRow, type Standing } from './evaluate';
import { readGiven } from './givens';
import { fermentableOf } from './models/blend';
import { notesFor } from './notes';
import { type MeasuredRowId, measuredRows, type NumericRowId, type RowId, rowOrder } from './order';
import type { Plan } from './plan';
import { type Problem, severities } from './problem';
import type { Recipe } from './recipe';
import type { Absence, TermId } from './row';
import { numericRows } from './sheet';
import { planBatch } from './size';
import { Recorder, type Working, workingOf } from './working';

/** What stands in a cell of the sheet. */
export interface RowResult {
  readonly id: RowId;
  readonly kind: Kind | 'choice';
  /** In the base unit of the kind; the id of a choice; null where there is no such quantity or it can't be had. */
  readonly value: number | string | null;
  readonly status: 'choice' | 'given' | 'workedOut' | 'measured' | 'absent' | 'refused';
  /** What was typed, in the row's unit; null where nothing was, or nothing readable. */
  readonly typed: number | null;
  /** What the sheet expected, where something else was measured. */
  readonly planned: number | null;
  readonly absence: Absence | null;
  readonly problems: readonly Problem[];
  /** How the number came about; built when asked for. Null for a choice and for a quantity that is not there. */
  readonly working: Working | null;
}

export interface Formulation {
  readonly recipe: Recipe;
  readonly choices: Choices;
  readonly rows: Readonly<Record<RowId, RowResult>>;
  /** The row the batch is sized from, or the jar where no amount was typed. */
  readonly sizedFrom: RowId | 'jar';
  /** The value of any term as it stands after measuring; for steps, drawings and balances. NaN where it can't be had. */
  readonly of: (id: TermId) => number;
  readonly evaluation: Evaluation;
}

/**
 * Works out a whole batch. Pure: the same recipe gives the same result. Nothing a user can type makes it throw; what
 * can't be worked out carries a problem that names its root. Formulas: each row's own definition under `rows/`.
 */
export function formulate(recipe: Recipe): Formulation {
  const choices = chooseFrom(recipe);
  const plan = planBatch(recipe.given, {
    takesWater: choices.source.waterRatio.value > (choices.source.ownWater?.perGram.value ?? 0),
    sweetens: fermentableOf(choices.sweetener, choices.grain.takes).value > 0,
  });
  const planned = new Evaluation(recipe, plan);
  const actual = isMeasured(recipe) ? measure(recipe, plan, planned) : planned;
  const rows: Partial<Record<RowId, RowResult>> = {};
  for (const id of rowOrder) {
    rows[id] = isRow(id) ? numericResult(id, planned, actual) : choiceResult(id, recipe, actual);
  }
  if (!isComplete(rows)) throw new Error('a row of the order has no result');
  return { recipe, choices, rows, sizedFrom: plan.sizedFrom, of: (id) => actual.of(id), evaluation: actual };
}

function isComplete(rows: Partial<Record<RowId, RowResult>>): rows is Record<RowId, RowResult> {
  return rowOrder.every((id) => rows[id] !== undefined);
}

function isMeasured(recipe: Recipe): boolean {
  return measuredRows.some((id) => recipe.measured[id] !== undefined);
}

/** Rows that stay as planned when something is measured: they were done before. */
const upstream: readonly NumericRowId[] = [
  'vesselCount',
  'brimful',
  'sourceMass',
  'soakWater',
  'soakTime',
  'waterRatio',
  'blendWater',
  'blenderLoads',
];

/** The batch as it really stands: source, water and jars as planned, what was measured in place of what was expected. */
function measure(recipe: Recipe, plan: Plan, planned: Evaluation): Evaluation {
  const values = new Map<TermId, number>();
  for (const id of measuredRows) {
    const value = measuredValue(id, recipe, planned);
    if (typeof value === 'number') values.set(id, value);
  }
  // The pH is read at the end and feeds no amount.
  const moving = [...values.keys()].filter((id) => id !== 'finalPH');
  if (moving.length === 0) return new Evaluation(recipe, plan, { values, coefficients: new Map() });
  for (const id of ['sourceMass', 'waterRatio', 'vesselCount'] as const) values.set(id, planned.of(id));
  const standing: Standing = { values, coefficients: correctCoefficients(planned, values) };
  const reshaped = {
    ...plan.ways,
    milkVolume: 'fromSource',
    fillVolume: 'shared',
    headspaceVolume: 'fromFill',
    headspaceDepth: 'fromRoom',
    drinkVolume: 'strained',
  };
  const moved: readonly NumericRowId[] = [
    'milkVolume',
    'fillVolume',
    'headspaceDepth',
    'headspaceVolume',
    'drinkVolume',
  ];
  const servingsSize = plan.sizedFrom === 'servings';
  const accepted = new Set(
    [...plan.accepted].filter((id) => !moved.includes(id) && !(servingsSize && id === 'servings')),
  );
  return new Evaluation(recipe, { ...plan, ways: reshaped, accepted }, standing);
}

/** What was measured in this row, in its unit; a problem where it can't be read; null where nothing was. */
export function measuredValue(id: MeasuredRowId, recipe: Recipe, x: Evaluation): number | Problem | null {
  const typed = recipe.measured[id];
  return typed === undefined ? null : readGiven(x, id, { ...numericRows[id], check: () => null }, typed);
}

function isMeasuredRow(id: NumericRowId): id is MeasuredRowId {
  return measuredRows.some((row) => row === id);
}

function choiceResult(id: Exclude<RowId, NumericRowId>, recipe: Recipe, x: Evaluation): RowResult {
  const value = id === 'sweetener' ? recipe.sweetener.map((part) => part.id).join(' + ') : recipe[id];
  const problems = notesFor(id, x);
  const nothing = { typed: null, planned: null, absence: null, working: null };
  return { id, kind: 'choice', value, status: 'choice', problems, ...nothing };
}

function numericResult(id: NumericRowId, planned: Evaluation, actual: Evaluation): RowResult {
  const x = upstream.includes(id) ? planned : actual;
  const row = numericRows[id];
  const value = x.of(id);
  const given = x.recipe.given.find((entry) => entry.row === id);
  const typedOrProblem = given === undefined ? null : readGiven(x, id, row, given);
  const typed = typeof typedOrProblem === 'number' ? typedOrProblem : null;
  const measured = isMeasuredRow(id) ? measuredValue(id, x.recipe, planned) : null;
  const absence = given === undefined && measured === null ? (row.absent?.(x) ?? null) : null;
  const own = typedOrProblem !== null && typeof typedOrProblem !== 'number' ? [typedOrProblem] : [];
  const ofMeasuring = measured !== null && typeof measured !== 'number' ? [measured] : [];
  const has = Number.isFinite(value) && own.length === 0 && ofMeasuring.length === 0;
  const found = [...own, ...ofMeasuring, ...(has || own.length > 0 ? [] : [rootProblem(id, x)])];
  const standing = x.problems.get(id);
  if (standing && has) found.push(standing);
  const disagreement = typed === null || !has ? null : disagree(id, typed, value, planned, actual);
  const problems = [
    ...found,
    ...(disagreement ? [disagreement] : []),
    ...(has && absence === null ? notesFor(id, x) : []),
  ];
  const status = statusOf({ absence, has, measured, typed, accepted: x.plan.accepted.has(id) });
  return {
    id,
    kind: row.kind,
    value: absence !== null || !has ? null : value,
    status,
    typed,
    planned: typeof measured === 'number' ? finiteOrNull(planned.of(id)) : null,
    absence,
    problems: dedupe(problems),
    get working() {
      return absence === null && has ? workingOf(id, x) : null;
    },
  };
}

function finiteOrNull(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}

function dedupe(problems: readonly Problem[]): readonly Problem[] {
  return problems.filter((one, at) => problems.findIndex((other) => other.code === one.code) === at);
}

function statusOf(of: {
  absence: Absence | null;
  has: boolean;
  measured: number | Problem | null;
  typed: number | null;
  accepted: boolean;
}): RowResult['status'] {
  if (of.absence !== null) return 'absent';
  if (!of.has) return 'refused';
  if (of.measured !== null) return 'measured';
  return of.typed !== null && of.accepted ? 'given' : 'workedOut';
}

/** Whether a typed value that was not taken as it stands differs from what comes out, and what it differs from. */
function disagree(
  id: NumericRowId,
  typed: number,
  computed: number,
  planned: Evaluation,
  actual: Evaluation,
): Problem | null {
  if (Math.abs(typed - computed) <= kitchen.agreement.value * Math.max(Math.abs(typed), Math.abs(computed)))
    return null;
  const { plan } = planned;
  if (plan.accepted.has(id) && actual !== planned)
    return { code: 'measuredOff', at: id, planned: typed, measured: computed };
  if (plan.depthIsLeast && (id === 'headspaceDepth' || id === 'headspaceVolume')) {
    if (computed >= typed) return { code: 'headspaceKept', at: id, asked: typed, actual: computed };
    const sized = plan.sizedFrom === 'jar' || !isRow(plan.sizedFrom) ? [] : [plan.sizedFrom];
    return { code: 'conflict', at: id, typed, computed, with: sized };
  }
  const against = plan.against.get(id);
  if (against === undefined) return null;
  if (against.length > 0) return { code: 'conflict', at: id, typed, computed, with: against };
  const { entry } = planned.choices.sweetener[0] ?? {};
  return { code: 'nothingToFerment', at: id, sweetener: entry?.name ?? '', reason: entry?.refused ?? '' };
}

/** The problem that keeps a row from a number: its own, or that it waits for the row where the trouble began. */
function rootProblem(id: NumericRowId, x: Evaluation): Problem {
  const own = x.problems.get(id);
  if (own) return own;
  const root = findRoot(id, x, new Set());
  return root === null ? { code: 'unreadable', at: id } : { code: 'waits', at: id, for: root };
}

function findRoot(id: TermId, x: Evaluation, seen: Set<TermId>): NumericRowId | null {
  if (seen.has(id)) return null;
  seen.add(id);
  if (isRow(id)) {
    const problem = x.problems.get(id);
    if (problem && severities[problem.code] === 'refusal') return id;
  }
  const recorder = new Recorder(x);
  recorder.run(id);
  for (const fed of recorder.terms) {
    if (Number.isFinite(x.of(fed))) continue;
    const root = findRoot(fed, x, seen);
    if (root !== null) return root;
  }
  return firstProblem(x);
}

/** Where no path leads to the root (a value that stood in for another), the first row with a refusal. */
function firstProblem(x: Evaluation): NumericRowId | null {
  for (const [row, problem] of x.problems) if (severities[problem.code] === 'refusal') return row;
  return null;
}
