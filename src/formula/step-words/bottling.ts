import { handwork } from '../../reference/handwork';
import { kitchen } from '../../reference/kitchen';
import { kitchenLines } from '../../reference/kitchen-lines';
import { sweeteners } from '../../reference/sweeteners';
import { fermentableOfOne } from '../models/blend';
import { type Pen, say } from './pen';
import type { StepDraft } from './step';

/** Whether the kefir is sealed in bottles at all: a second ferment of no time is none. */
function isBottled(pen: Pen): boolean {
  return pen.value('bottleTime') !== 0;
}

/** Filling the bottles, with what is added to them and what is left empty; null where there is no second ferment. */
export function bottleStep(pen: Pen): StepDraft | null {
  if (!isBottled(pen)) return null;
  return {
    id: 'bottle',
    title: 'Fill the bottles',
    text: say(
      `Only at pH ${kitchen.acidityLine.value} or less, by strip or meter.`,
      `Clean bottles made for fizz, of ${pen.amount('bottleVolume')} to the rim: ${pen.amount('bottleCount')}.`,
      describeAddition(pen),
      `Leave this much empty in each: ${pen.amount('bottleHeadspace')}.`,
      'One that comes out less full is no harm. Close them.',
    ),
  };
}

/** What goes into each bottle first, as fermentable sugar and as cane sugar; nothing is said where nothing is added. */
function describeAddition(pen: Pen): string | null {
  const [added, whole, empty] = [pen.value('bottleSugar'), pen.value('bottleVolume'), pen.value('bottleHeadspace')];
  if (added === 0) return null;
  const told = `Sugar or fruit to add, as fermentable sugar: ${pen.amount('bottleSugar')}`;
  if (added === null || whole === null || empty === null) return `${told}.`;
  const hexose = (added * (whole - empty)) / 1000;
  const cane = hexose / fermentableOfOne(sweeteners.caneWhite, pen.formulation.choices.grain.takes).value;
  return `${told}. As white cane sugar that is ${pen.quantity(cane, 'mass')} in each bottle.`;
}

/** The hours in the bottle, what builds up, and how to look after it; null where there is none. */
export function secondStep(pen: Pen): StepDraft | null {
  if (!isBottled(pen)) return null;
  const likely = pen.value('bottlePressureLikely') === null ? null : pen.amount('bottlePressureLikely');
  const forgotten = pen.value('bottlePressureForgotten') === null ? null : pen.amount('bottlePressureForgotten');
  return {
    id: 'second',
    title: 'Second ferment',
    text: say(
      `Leave them sealed for ${pen.amount('bottleTime')} at ${pen.amount('bottleTemperature')}.`,
      likely === null ? null : `Likely pressure by then: ${likely}.`,
      forgotten === null ? null : `A bottle forgotten in the warmth can reach some ${forgotten}.`,
      'Check before the time is over: squeeze a plastic bottle of the same, or chill one of the bottles and open it. When that one is hard or fizzy, the second ferment is done.',
    ),
  };
}

/** Cooling the sealed bottles before any is opened; null where there are none. */
export function chillStep(pen: Pen): StepDraft | null {
  if (!isBottled(pen)) return null;
  return {
    id: 'chill',
    title: 'Chill the bottles',
    text: say(
      `Put them in the refrigerator for about ${pen.quantity(handwork.chill.value, 'time')} before you open any.`,
      'Open each cold: in a towel, slowly, away from your face.',
    ),
  };
}

/** How long it keeps, and where. */
export function keepStep(pen: Pen): StepDraft {
  const { range } = pen.formulation.rows.keepDays;
  const most = pen.quantity(kitchenLines.refrigerator.high ?? kitchenLines.refrigerator.value, 'temperature');
  const from = range === null ? null : pen.quantity(range.low, 'count');
  const to = range === null ? null : pen.quantity(range.high, 'count');
  return {
    id: 'keep',
    title: 'Keep it cold',
    text: say(
      `Keep it in the refrigerator, at ${most} or less.`,
      `Usual, counted from straining: ${pen.amount('keepDays')}.`,
      from === null || to === null || from === to ? null : `Kitchens differ: ${from} to ${to} days.`,
    ),
  };
}
