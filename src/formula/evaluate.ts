import { roundPast } from '../measure/rounding';
import { type Choices, type CoefficientId, chooseFrom, coefficientInEffect } from './coefficients';
import { readGiven } from './givens';
import { leastRatio, type Reduced, type Stages, stagesAt } from './models/milk';
import type { IntermediateId, NumericRowId } from './order';
import type { Plan } from './plan';
import type { Problem } from './problem';
import type { Recipe } from './recipe';
import type { Access, Term, TermId, Way } from './row';
import { numericRows } from './sheet';
import { intermediates } from './terms';
import { fillWay } from './terms/fill';
import { reducedAt, reducedFor } from './treated';

/** Values and coefficients that stand in for what would be worked out: what was measured, and what measuring fixes. */
export interface Standing {
  readonly values: ReadonlyMap<TermId, number>;
  readonly coefficients: ReadonlyMap<CoefficientId, number>;
}

const nothingStands: Standing = { values: new Map(), coefficients: new Map() };

// Asked for each term of each batch, so both are found once.
const rowIds: ReadonlySet<string> = new Set(Object.keys(numericRows));
const usualWays = new Map<string, string | undefined>(
  Object.entries({ ...intermediates, ...numericRows }).map(([id, { ways }]) => [id, Object.keys(ways)[0]]),
);

export function isRow(id: string): id is NumericRowId {
  return rowIds.has(id);
}

export function isIntermediate(id: string): id is IntermediateId {
  return Object.hasOwn(intermediates, id);
}

export function termOf(id: TermId): Term {
  return isRow(id) ? numericRows[id] : intermediates[id];
}

/**
 * Works out terms on demand, each once. A value that can't be had is NaN in here, with a problem recorded at its root,
 * so whatever it feeds is NaN as well; `formulate` turns that into a problem that names the root.
 */
export class Evaluation implements Access {
  readonly choices: Choices;
  readonly problems = new Map<NumericRowId, Problem>();
  /** Null while a term is being worked out. */
  private readonly values = new Map<TermId, number | null>();
  private readonly coefficients = new Map<CoefficientId, number>();
  private readonly readings = new Map<NumericRowId, number | Problem>();
  private reducedOnce: Reduced | undefined;
  private stagesOnce: Stages | null | undefined;

  constructor(
    readonly recipe: Recipe,
    readonly plan: Plan,
    readonly standing: Standing = nothingStands,
  ) {
    this.choices = chooseFrom(recipe);
  }

  of(id: TermId): number {
    const known = this.values.get(id);
    if (typeof known === 'number') return known;
    if (known === null) return this.fail({ code: 'roundabout', at: isRow(id) ? id : 'milkVolume' });
    this.values.set(id, null);
    const value = this.workOut(id);
    this.values.set(id, value);
    return value;
  }

  c(id: CoefficientId): number {
    const known = this.coefficients.get(id);
    if (known !== undefined) return known;
    const value = this.standing.coefficients.get(id) ?? coefficientInEffect(id, this.recipe, this.choices).value;
    this.coefficients.set(id, value);
    return value;
  }

  typed(id: NumericRowId): number {
    const value = this.reading(id);
    if (typeof value === 'number') return value;
    if (value !== null) this.problems.set(id, value);
    return Number.NaN;
  }

  /** What was typed into a row, in its own unit; a problem where it can't stand there; null where nothing was. */
  reading(id: NumericRowId): number | Problem | null {
    const known = this.readings.get(id);
    if (known !== undefined) return known;
    const given = this.recipe.given.find(({ row }) => row === id);
    if (given === undefined) return null;
    const value = readGiven(this, id, numericRows[id], given);
    this.readings.set(id, value);
    return value;
  }

  reduced(): Reduced {
    this.reducedOnce ??= reducedFor(this, Number.POSITIVE_INFINITY);
    return this.reducedOnce;
  }

  stages(): Stages | null {
    if (this.stagesOnce === undefined) this.stagesOnce = stagesOf(this);
    return this.stagesOnce;
  }

  fail(problem: Problem): number {
    if (isRow(problem.at)) this.problems.set(problem.at, problem);
    return Number.NaN;
  }

  /** The way a term takes in this plan. */
  way(id: TermId): Way {
    const way = termOf(id).ways[this.wayName(id)];
    if (way === undefined) throw new Error(`${id} has no way to be worked out`);
    return way;
  }

  /** The name of that way, under which it is told too. */
  wayName(id: TermId): string {
    const name = isRow(id) ? this.plan.ways[id] : this.wayOfShared(id);
    return (name !== undefined && name in termOf(id).ways ? name : usualWays.get(id)) ?? '';
  }

  private wayOfShared(id: IntermediateId): string | undefined {
    if (id === 'sugarForgotten') return this.standing.values.has('sugarLeft') ? 'measured' : 'all';
    return fillWay(id, this.plan);
  }

  private workOut(id: TermId): number {
    const standing = this.standing.values.get(id);
    if (standing !== undefined) return standing;
    if (isRow(id)) {
      if (this.plan.accepted.has(id)) return this.typed(id);
      if (numericRows[id].absent?.(this)) return 0;
    }
    return this.way(id).rule(this);
  }
}

/** The balance at the water ratio in effect. Where the slurry is no wetter than the pulp: the problem that it gels. */
export function stagesOf(x: Access): Stages | null {
  const ratio = x.of('waterRatio');
  if (Number.isNaN(ratio)) return null;
  const stages = stagesAt(reducedAt(x, ratio), ratio);
  if (stages === null) {
    const least = roundPast(leastRatio(x.reduced()), 1);
    x.fail({ code: 'gels', at: 'waterRatio', least, gelling: x.choices.source.gels });
  }
  return stages;
}
