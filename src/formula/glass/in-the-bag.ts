import { reducedAt, reducedFor } from '../composition/composition-in-effect';
import { type Pressing, pressingAt } from '../composition/pressing';
import type { Formulation } from '../engine/formulate';
import { passingSolids, type SolidComponent, type Stages, type Strain, stagesAt } from '../models/milk';
import { solidsOf } from '../models/strain';

/** g of each component; `sugars` apart from the other carbohydrate. */
export type Parts = Readonly<Record<SolidComponent | 'sugars', number>>;

interface Strained {
  readonly strain: Strain;
  readonly stages: Stages;
}

function strainedBy({ evaluation, of }: Formulation, pressing?: Pressing): Strained | null {
  const ratio = of('waterRatio');
  if (!Number.isFinite(ratio)) return null;
  const reduced = pressing === undefined ? reducedAt(evaluation, ratio) : reducedFor(evaluation, ratio, pressing);
  const stages = stagesAt(reduced, ratio);
  return stages === null ? null : { strain: reduced.strain, stages };
}

const components = ['protein', 'fat', 'carbohydrate', 'fibre', 'ash'] as const satisfies readonly SolidComponent[];

function partsBy(of: (component: SolidComponent) => number, sugars: number): Parts {
  const [protein, fat, carbohydrate, fibre, ash] = components.map(of);
  return {
    protein: protein ?? 0,
    fat: fat ?? 0,
    carbohydrate: carbohydrate ?? 0,
    fibre: fibre ?? 0,
    ash: ash ?? 0,
    sugars,
  };
}

/** What is dissolved and floating in the milk, g per mL of it, by this bag and hand; null where it gels. */
function inMillilitre(formulation: Formulation, pressing?: Pressing): Parts | null {
  const found = strainedBy(formulation, pressing);
  if (found === null) return null;
  const { strain, stages } = found;
  const passes = passingSolids(strain);
  const own = formulation.choices.source.ownWater?.composition;
  const ofOwn = own === undefined ? null : solidsOf(own);
  // Before the hand loses any of it, so that the milk that is there is of the same make.
  const share = stages.milkMass / (stages.beforeLoss * stages.milkVolume);
  const floating = (component: SolidComponent): number =>
    (passes[component] + (ofOwn === null ? 0 : ofOwn[component] * strain.own.mass)) * share;
  return partsBy(floating, stages.milkSugars / stages.milkVolume);
}

/** What is in all the milk of a batch, g; at an end of what bags and hands do; null where there is no milk. */
export function inMilk(formulation: Formulation, end: 'least' | 'likely' | 'most'): Parts | null {
  const { evaluation, of } = formulation;
  const likely = inMillilitre(formulation);
  if (likely === null || !(of('milkVolume') > 0)) return null;
  const extreme = { least: 'leastSolids', most: 'mostSolids' } as const;
  // A bag that would make a gel of it is no bag to count with.
  const found = end === 'likely' ? likely : (inMillilitre(formulation, pressingAt(evaluation, extreme[end])) ?? likely);
  return partsBy((component) => found[component] * of('milkVolume'), found.sugars * of('milkVolume'));
}

export interface Pulp {
  /** As it comes out of the bag, g, and the same dry. */
  readonly wet: number;
  readonly dry: number;
  /** Of the dry, g. */
  readonly parts: Parts;
  /** The share of the source's dry weight that stays, 0 to 1, and between which shares by bag and hand. */
  readonly share: number;
  readonly shareLeast: number;
  readonly shareMost: number;
}

/** What stays in the bag; null where nothing is strained, and where it can't be worked out. */
export function pulpOf(formulation: Formulation): Pulp | null {
  const { rows, of, evaluation } = formulation;
  const found = strainedBy(formulation);
  const { value: wet } = rows.pulpMass;
  const source = of('sourceMass');
  // Pulp may be measured where the weight of the source can't be told, or was none.
  if (found === null || typeof wet !== 'number' || !(wet > 0) || !(source > 0)) return null;
  const { strain, stages } = found;
  const passes = passingSolids(strain);
  const kept = (component: SolidComponent): number => (strain.solids[component] - passes[component]) * source;
  const shareBy = (pressing?: Pressing): number | null => {
    const by = strainedBy(formulation, pressing);
    return by === null ? null : by.stages.pulpDry / dryOf(by.strain);
  };
  const share = stages.pulpDry / dryOf(strain);
  const ends = [shareBy(pressingAt(evaluation, 'leastSolids')), shareBy(pressingAt(evaluation, 'mostSolids')), share];
  const known = ends.filter((end) => end !== null);
  return {
    wet,
    dry: stages.pulpDry * source,
    parts: partsBy(kept, stages.heldBack * (strain.sugars + strain.own.sugars) * source),
    share,
    shareLeast: Math.min(...known),
    shareMost: Math.max(...known),
  };
}

/** Dry weight of what comes to the bag, g per g of the source; the sugar that soaking took is gone before. */
function dryOf({ solids, sugars, own }: Strain): number {
  const others = components.reduce((sum, component) => sum + solids[component], 0);
  return others + sugars + own.sugars + own.solids;
}
