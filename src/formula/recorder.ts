import type { Choices, CoefficientId } from './coefficients';
import { type Evaluation, stagesOf } from './evaluate';
import type { Reduced, Stages } from './models/milk';
import type { NumericRowId } from './order';
import type { Plan } from './plan';
import type { Recipe } from './recipe';
import type { Access, TermId } from './row';
import { reducedFor } from './treated';

/** Runs a rule and notes which terms it really reads, to find where a number that can't be had got lost. */
export class Recorder implements Access {
  readonly terms: TermId[] = [];
  readonly recipe: Recipe;
  readonly choices: Choices;
  readonly plan: Plan;

  constructor(private readonly evaluation: Evaluation) {
    this.recipe = evaluation.recipe;
    this.choices = evaluation.choices;
    this.plan = evaluation.plan;
  }

  run(id: TermId): number {
    return this.evaluation.way(id).rule(this);
  }

  of(id: TermId): number {
    if (!this.terms.includes(id)) this.terms.push(id);
    return this.evaluation.of(id);
  }

  c(id: CoefficientId): number {
    return this.evaluation.c(id);
  }

  typed(id: NumericRowId): number {
    return this.evaluation.typed(id);
  }

  reduced(): Reduced {
    return reducedFor(this, Number.POSITIVE_INFINITY);
  }

  stages(): Stages | null {
    return stagesOf(this);
  }

  fail(): number {
    return Number.NaN;
  }
}
