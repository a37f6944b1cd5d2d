import { roundPast } from '../../measure/rounding';
import type { Settled } from '../composition/settled';
import { leastRatio, type Reduced, type Stages } from '../models/milk';
import type { Choices, CoefficientId } from '../recipe/coefficients';
import type { NumericRowId } from '../recipe/order';
import type { Problem } from '../recipe/problem';
import type { Recipe } from '../recipe/recipe';
import type { Plan } from '../recipe/sizing';
import type { Access, TermId } from '../rows/row';
import { numericRows } from '../rows/sheet';
import { readGiven } from './givens';
import { type Route, routeOf } from './route';
import { slotOf, termIds } from './slots';
import { isRow } from './ways-of';

export { isIntermediate } from '../rows/terms';
export { isRow } from './ways-of';

/** Values and coefficients that stand in for what would be worked out: what was measured, and what measuring fixes. */
export interface Standing {
  readonly values: ReadonlyMap<TermId, number>;
  readonly coefficients: ReadonlyMap<CoefficientId, number>;
}

const nothingStands: Standing = { values: new Map(), coefficients: new Map() };

// The state of a slot. Above `rootless` the value is bad, and the state less `firstRoot` is the place of its root among
// the problems.
const open = 0;
const underway = 1;
const known = 2;
const rootless = known + 1;
const firstRoot = rootless + 1;

// The balance is no number, but bad and asked for like one: it has the slot after the last term.
const balanceSlot = termIds.length;
// Copied for each evaluation: to copy a plain list of doubles takes a tenth of the time of a new Float64Array.
const noValues: readonly number[] = [...termIds.map(() => Number.NaN), Number.NaN];
const allOpen: readonly number[] = noValues.map(() => open);

/**
 * Works out terms on demand, each once. A value that can't be had is NaN in here and bears its root: the place of the
 * problem that began it, taken over from the first bad value that was read for it; `formulate` turns that into a
 * problem that names the root.
 */
export class Evaluation implements Access {
  readonly recipe: Recipe;
  readonly choices: Choices;
  readonly plan: Plan;
  /** What began the trouble where there is any, each once, in the order in which it was met. */
  readonly problems: Problem[] = [];
  private readonly values = noValues.slice();
  private readonly states = allOpen.slice();
  private readonly readings: { readonly row: NumericRowId; readonly reading: number | Problem }[] = [];
  /** The state of the first bad value read for the term that is being worked out. */
  private root = open;
  private stagesFound: Stages | null = null;

  constructor(
    readonly settled: Settled,
    recipe: Recipe,
    private readonly route: Route,
    readonly standing: Standing = nothingStands,
  ) {
    this.recipe = recipe;
    this.choices = settled.choices;
    this.plan = route.plan;
    for (const [id, value] of standing.values) this.keep(slotOf(id), value, rootless);
  }

  of(id: TermId): number {
    return this.at(slotOf(id));
  }

  /** The value in a slot. */
  at(slot: number): number {
    const before = this.states[slot] ?? open;
    if (before === underway) return this.fail({ code: 'roundabout', at: rowIdAt(slot) });
    const state = before === open ? this.workOut(slot) : before;
    if (state > known && this.root === open) this.root = state;
    return this.values[slot] ?? Number.NaN;
  }

  c(id: CoefficientId): number {
    return this.settled.c(id);
  }

  typed(id: NumericRowId): number {
    const value = this.reading(id);
    if (typeof value === 'number') return value;
    return value === null ? Number.NaN : this.fail(value);
  }

  /** What was typed into a row, in its own unit; a problem where it can't stand there; null where nothing was. */
  reading(id: NumericRowId): number | Problem | null {
    const given = this.recipe.given.find(({ row }) => row === id);
    if (given === undefined) return null;
    const found = this.readings.find(({ row }) => row === id);
    if (found !== undefined) return found.reading;
    const reading = readGiven(this, id, numericRows[id], given);
    this.readings.push({ row: id, reading });
    return reading;
  }

  reduced(): Reduced {
    return this.settled.reduced();
  }

  stages(): Stages | null {
    this.at(balanceSlot);
    return this.stagesFound;
  }

  fail(problem: Problem): number {
    this.root = firstRoot + this.record(problem);
    return Number.NaN;
  }

  /** The place of a problem among those of this batch. */
  record(problem: Problem): number {
    const met = this.problems.indexOf(problem);
    return met < 0 ? this.problems.push(problem) - 1 : met;
  }

  /** Has a row stand without a number for a problem, which is its root or waits for it. */
  standBad(id: NumericRowId, problem: Problem): void {
    this.fail(problem);
    this.keep(slotOf(id), Number.NaN, this.root);
    this.root = open;
  }

  /** The newest problem that stands at a row. */
  problemAt(id: NumericRowId): Problem | undefined {
    return this.problems.findLast(({ at }) => at === id);
  }

  /** The problem that keeps a row from a number: its own, or that it waits for the row where the trouble began. */
  rootOf(id: NumericRowId): Problem {
    const own = this.problemAt(id);
    if (own !== undefined) return own;
    const state = this.states[slotOf(id)] ?? open;
    // A value lost without a problem of its own (too large a number) waits for whatever is amiss in this batch.
    const root = this.problems[state - firstRoot] ?? this.problems[0];
    if (root === undefined) return { code: 'unreadable', at: id };
    return { code: 'waits', at: id, for: root.code === 'waits' ? root.for : root.at };
  }

  /** The name of the way a term takes in this plan, under which it is told too. */
  wayName(id: TermId): string {
    return this.route.names[slotOf(id)] ?? '';
  }

  private workOut(slot: number): number {
    this.states[slot] = underway;
    const outer = this.root;
    this.root = open;
    const value = this.valueOf(slot);
    const state = this.keep(slot, value, this.root === open ? rootless : this.root);
    this.root = outer;
    return state;
  }

  private keep(slot: number, value: number, ifBad: number): number {
    const state = Number.isFinite(value) ? known : ifBad;
    this.values[slot] = value;
    this.states[slot] = state;
    return state;
  }

  private valueOf(slot: number): number {
    if (slot === balanceSlot) return this.balance();
    const { absent, rules } = this.route;
    if (absent[slot]?.(this)) return 0;
    this.root = open;
    return rules[slot]?.(this) ?? Number.NaN;
  }

  /** Finds the balance at the water ratio in effect. Where the slurry is no wetter than the pulp: that it gels. */
  private balance(): number {
    const ratio = this.of('waterRatio');
    if (Number.isNaN(ratio)) return ratio;
    this.stagesFound = this.settled.at(ratio).stages;
    if (this.stagesFound !== null) return 1;
    const least = roundPast(leastRatio(this.reduced()), 1);
    return this.fail({ code: 'gels', at: 'waterRatio', least, gelling: this.choices.source.gels });
  }
}

/** The row of a slot; for what is no row the milk, which all hangs on. */
function rowIdAt(slot: number): NumericRowId {
  const id = termIds[slot] ?? 'milkVolume';
  return isRow(id) ? id : 'milkVolume';
}

/** The terms that take part in a plan: a recipe with nothing standing in. */
export function evaluate(settled: Settled, recipe: Recipe, plan: Plan, standing?: Standing): Evaluation {
  const route = routeOf(plan, standing?.values.has('sugarLeft') === true);
  return new Evaluation(settled, recipe, route, standing);
}
