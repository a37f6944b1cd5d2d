import { handwork } from '../../reference/handwork';
import { kitchenLines } from '../../reference/kitchen-lines';
import { sweeteners } from '../../reference/sweeteners';
import { fermentableOfOne } from '../models/blend';
import type { StepDraft } from './step';
import { type StepWriter, say } from './step-writer';

/** Whether the kefir is sealed in bottles at all: a second ferment of no time is none. */
function isBottled(writer: StepWriter): boolean {
  return writer.value('bottleTime') !== 0;
}

/** Filling the bottles, with what is added to them and what is left empty; null where there is no second ferment. */
export function bottleStep(writer: StepWriter): StepDraft | null {
  if (!isBottled(writer)) return null;
  return {
    id: 'bottle',
    title: 'Fill the bottles',
    text: say(
      writer.onlyAcid(),
      `Clean bottles made for fizz, of ${writer.amount('bottleVolume')} to the rim: ${writer.amount('bottleCount')}.`,
      describeAddition(writer),
      `Leave this much empty in each: ${writer.amount('bottleHeadspace')}.`,
      'One that comes out less full is no harm. Close them.',
    ),
  };
}

/** What goes into each bottle first, as fermentable sugar and as cane sugar; nothing is said where nothing is added. */
function describeAddition(writer: StepWriter): string | null {
  const [added, whole, empty] = [
    writer.value('bottleSugar'),
    writer.value('bottleVolume'),
    writer.value('bottleHeadspace'),
  ];
  if (added === 0) return null;
  const { fruit } = writer.formulation.recipe;
  if (fruit !== undefined) {
    const typed = /^[\d.,]*\s*(?:g|grams?)?$/i.test(fruit.amount) ? '' : `${fruit.amount}, `;
    return `Put in each bottle first, of ${fruit.name}: ${typed}${writer.quantity(fruit.grams, 'mass')}. As fermentable sugar: ${writer.amount('bottleSugar')}.`;
  }
  const told = `Sugar or fruit to add, as fermentable sugar: ${writer.amount('bottleSugar')}`;
  if (added === null || whole === null || empty === null) return `${told}.`;
  const hexose = (added * (whole - empty)) / 1000;
  const cane = hexose / fermentableOfOne(sweeteners.caneWhite, writer.formulation.choices.grain.takes).value;
  return `${told}. As white cane sugar that is ${writer.quantity(cane, 'mass')} in each bottle.`;
}

/** The hours in the bottle, what builds up, and how to look after it; null where there is none. */
export function secondStep(writer: StepWriter): StepDraft | null {
  if (!isBottled(writer)) return null;
  const likely = writer.value('bottlePressureLikely') === null ? null : writer.amount('bottlePressureLikely');
  const forgotten = writer.value('bottlePressureForgotten') === null ? null : writer.amount('bottlePressureForgotten');
  return {
    id: 'second',
    title: 'Second ferment',
    text: say(
      `Leave them sealed for ${writer.amount('bottleTime')} at ${writer.amount('bottleTemperature')}.`,
      likely === null ? null : `Likely pressure by then: ${likely}.`,
      forgotten === null ? null : `A bottle forgotten in the warmth can reach some ${forgotten}.`,
      'Check before the time is over: squeeze a plastic bottle of the same, or chill one of the bottles and open it. When that one is hard or fizzy, the second ferment is done.',
    ),
  };
}

/** Cooling the sealed bottles before any is opened; null where there are none. */
export function chillStep(writer: StepWriter): StepDraft | null {
  if (!isBottled(writer)) return null;
  return {
    id: 'chill',
    title: 'Chill the bottles',
    text: say(
      `Put them in the refrigerator for about ${writer.quantity(handwork.chill.value, 'time')} before you open any.`,
      'Open each cold: in a towel, slowly, away from your face.',
    ),
  };
}

/** What a recipe has besides: flavours go into the glass, where they reach no grains. */
function describeExtras({ formulation: { recipe } }: StepWriter): string | null {
  const { extras = [] } = recipe;
  if (extras.length === 0) return null;
  return `Flavour the glass at the end, and not the milk. The recipe has besides: ${extras.join('; ')}.`;
}

/** How long it keeps, and where. */
export function keepStep(writer: StepWriter): StepDraft {
  const { range } = writer.formulation.rows.keepDays;
  const most = writer.quantity(kitchenLines.refrigerator.high ?? kitchenLines.refrigerator.value, 'temperature');
  const from = range === null ? null : writer.quantity(range.low, 'count');
  const to = range === null ? null : writer.quantity(range.high, 'count');
  const strained = writer.formulation.choices.grain.starter === undefined ? 'straining' : 'the day it is ready';
  return {
    id: 'keep',
    title: 'Keep it cold',
    text: say(
      `Keep it in the refrigerator, at ${most} or less.`,
      `Usual, counted from ${strained}: ${writer.amount('keepDays')}.`,
      from === null || to === null || from === to ? null : `Kitchens differ: ${from} to ${to} days.`,
      describeExtras(writer),
    ),
  };
}
