import { fermenting } from '../../reference/fermenting';
import type { Formulation } from '../engine/formulate';
import { timesAsLong } from '../models/ripening';
import { atThisDoseAndSugar } from '../rows/dose-and-sugar';
import { slowerAt } from '../rows/figure-values';

/** Hours until ready to taste at a temperature, °C. */
export interface RipeningPoint {
  readonly celsius: number;
  readonly soonest: number;
  readonly likely: number;
  readonly latest: number;
}

/**
 * The ready time of this batch against the temperature of the room, over all that the models cover, in steps of a
 * degree; null where the batch's own time can't be told for another reason than its temperature.
 */
export function ripeningAgainstRoom(formulation: Formulation): readonly RipeningPoint[] | null {
  const atUsual = hoursInUsualRoom(formulation);
  if (atUsual === null) return null;
  const { readyTime, readyTemperature } = formulation.choices.grain;
  const { value, low = value, high = value } = readyTime;
  const { evaluation: x } = formulation;
  const [least, most] = [slowerAt(x, 'low') / x.c('slower'), slowerAt(x, 'high') / x.c('slower')];
  const points: RipeningPoint[] = [];
  for (let celsius = fermenting.ripeningCoolest.value; celsius <= fermenting.ripeningWarmest.value; celsius += 1) {
    const spread = timesAsLong(celsius, readyTemperature.value);
    points.push({
      celsius,
      soonest: (atUsual * spread.least * low * least) / value,
      likely: atUsual * spread.likely,
      latest: (atUsual * spread.most * high * most) / value,
    });
  }
  return points;
}

/** Hours at this batch's dose, sugar and kitchen in the usual room: also where its own room is outside the models. */
export function hoursInUsualRoom({ evaluation: x }: Formulation): number | null {
  const pace = x.c('pace') * x.c('paceOfGrains') * x.c('paceOfSource');
  const hours = (x.c('readyUsual') * x.c('slower') * atThisDoseAndSugar(x)) / pace;
  return Number.isFinite(hours) ? hours : null;
}
