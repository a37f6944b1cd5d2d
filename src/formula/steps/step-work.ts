import { convertNumber } from '../../measure/units';
import { handwork } from '../../reference/handwork';
import type { Formulation } from '../engine/formulate';
import type { MeasuredRowId } from '../recipe/order';
import type { StepId } from './step';

/** How long a step of this batch is waited for, h, as a timer is set; null where nothing is waited for, or no time can be told. */
export function waitOf(step: StepId, formulation: Formulation): number | null {
  const hours = hoursOf(step, formulation);
  return hours !== null && hours > 0 ? hours : null;
}

function hoursOf(step: StepId, { recipe, rows, choices }: Formulation): number | null {
  switch (step) {
    case 'soak':
      return numberOf(rows.soakTime.value);
    case 'blend': {
      const { blendSeconds } = choices.source;
      return blendSeconds === null ? null : convertNumber(blendSeconds.value, 's', 'h');
    }
    case 'heatSource':
    case 'heatMilk': {
      const minutes = minutesHot({ choices, recipe }, step === 'heatMilk' ? 'milk' : 'source');
      return minutes === null ? null : convertNumber(minutes, 'min', 'h');
    }
    // Till the first taste: what is ready sooner than likely is not to be missed.
    case 'wait':
      return rows.readyTime.range?.low ?? numberOf(rows.readyTime.value);
    case 'second':
      return numberOf(rows.bottleTime.value);
    case 'chill':
      return handwork.chill.value;
    default:
      return null;
  }
}

/** How long source or milk is kept hot, min: cooked where it is not eaten raw, else as the cook asks; null for neither. */
export function minutesHot(
  { choices, recipe }: Pick<Formulation, 'choices' | 'recipe'>,
  what: 'source' | 'milk',
): number | null {
  const { cook } = choices.source;
  if (cook?.what === what) return cook.minutes.value;
  return recipe.heat?.what === what ? recipe.heat.minutes : null;
}

/** What a scale or a jug says at a step. What is poured from a carton or a can is measured where it is poured. */
const measuredRows: Readonly<Partial<Record<StepId, readonly MeasuredRowId[]>>> = {
  drain: ['soakedMass'],
  strain: ['milkVolume', 'pulpMass'],
};

/** The rows that a cook can measure at a step of this batch. */
export function measuredAt(step: StepId, { rows }: Formulation): readonly MeasuredRowId[] {
  const poured: readonly MeasuredRowId[] = step === 'blend' && rows.pulpMass.status === 'absent' ? ['milkVolume'] : [];
  return (measuredRows[step] ?? poured).filter((row) => rows[row].status !== 'absent');
}

function numberOf(value: number | string | null): number | null {
  return typeof value === 'number' ? value : null;
}
