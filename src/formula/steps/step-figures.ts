import type { Grain } from '../../reference/grains';
import { handwork } from '../../reference/handwork';
import { kitchenLines } from '../../reference/kitchen-lines';
import type { Coefficient } from '../../reference/origins';
import type { Source } from '../../reference/sources';
import { wordsOf } from '../working/figure-labels';
import type { StepId } from './step';

/** A figure that a step or the plan of it rests on, with no row of its own. */
export interface StepFigure {
  readonly label: string;
  readonly coefficient: Coefficient;
}

/** How long a step is taken to keep one’s hands busy, once and for each jar, bottle or load. */
const minutesByHand: Readonly<Partial<Record<StepId, readonly (keyof typeof handwork)[]>>> = {
  soak: ['soak'],
  blend: ['load'],
  sweeten: ['setUp'],
  cover: ['jar'],
  wait: ['taste'],
  heatSource: ['heat'],
  heatMilk: ['heat'],
  lift: ['strain', 'strainJar'],
  bottle: ['bottle', 'bottleEach'],
  chill: ['chill', 'fridge', 'fridgeEach'],
};

/** What a step says besides the rows of the sheet: blending, warmth, chilling, and the minutes that a plan takes for it. */
export function figuresOfStep(
  id: StepId,
  { form, soak, blendSeconds, blendWater, can, cook }: Source,
  grain: Pick<Grain, 'starter'>,
): readonly StepFigure[] {
  const found: StepFigure[] = [];
  const add = (label: string, coefficient: Coefficient | null | undefined) => {
    if (coefficient !== null && coefficient !== undefined) found.push({ label, coefficient });
  };
  if (id === 'choose') {
    add('What a can holds', can?.volume);
    add(wordsOf(form === 'liquid' ? 'pour' : 'weigh'), form === 'liquid' ? handwork.pour : handwork.weigh);
  }
  if (id === 'blend') add('Blending for', blendSeconds);
  if (id === (soak?.place === 'blending water' ? 'soak' : 'blend')) add('Water to blend with', blendWater?.temperature);
  if (id === (cook?.what === 'milk' ? 'heatMilk' : 'heatSource')) add('Cooking for', cook?.minutes);
  if (id === 'cool') add('Warmth that harms no culture', kitchenLines.grainTemperatureLimit);
  if (id === 'keep') add('The fridge', kitchenLines.refrigerator);
  const byHand: readonly (keyof typeof handwork)[] =
    id === 'lift' && grain.starter !== undefined ? ['fridge', 'bottleEach'] : (minutesByHand[id] ?? []);
  for (const work of byHand) add(wordsOf(work), handwork[work]);
  return found;
}
