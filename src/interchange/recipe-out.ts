import type { Formulation } from '../formula/engine/formulate';
import type { RowId } from '../formula/recipe/order';
import { writeOff } from '../formula/words/in-scoops';
import { type Kitchen, type Written, writeRow, writeValue } from '../formula/words/write-row';
import { writeMetric } from '../measure/write-quantity';
import { withPlainSpaces } from './plain-spaces';

/** In grams, for those who weigh, or in the cook’s own scoops, for those who spoon. */
export type RecipeMeasure = 'grams' | 'scoops';

/**
 * A batch as plain recipe text: its name, what goes in, and the jar, a line each, in a form `readRecipe` reads again.
 * In scoops, whatever has no cup weight stands in grams. Amounts that can’t be worked out are left out.
 */
export function writeRecipe(formulation: Formulation, name: string, how: RecipeMeasure, kitchen: Kitchen): string {
  const { choices, rows } = formulation;
  const say = (id: RowId, food: string): string | null => {
    const written = writeRow(formulation, id, kitchen);
    return written === null || rows[id].value === 0 ? null : amountOf(written, how, food);
  };
  const item = (id: RowId, food: string): readonly string[] => {
    const said = say(id, food);
    return said === null ? [] : [`- ${said}`];
  };
  const makes = say('drinkVolume', 'of kefir');
  const title = name.replace(/\s+/g, ' ').trim();
  return [
    ...(title === '' ? [] : [title, '']),
    ...item('sourceMass', choices.source.plural),
    ...(choices.source.soak?.drained ? item('soakWater', 'water for soaking') : []),
    ...item('blendWater', 'water'),
    ...sweetenerLines(formulation, how, kitchen),
    ...item('grainMass', choices.grain.name.toLowerCase()),
    ...(formulation.recipe.extras ?? []).map((extra) => `- ${extra}, to serve`),
    '',
    ...jarLine(formulation, kitchen),
    ...(makes === null ? [] : [`Makes ${makes}.`]),
    '',
  ].join('\n');
}

/** An amount of a food; how far the scoops are off it stands behind the food, where a reader of recipes leaves it be. */
function amountOf({ metric, spoons, off }: Written, how: RecipeMeasure, food: string): string {
  // Without a cup weight there are no scoops, and less than the smallest is no amount to measure.
  if (how === 'grams' || spoons === null || !/^(?:about\u00A0)?[\d½⅓⅔¼¾⅛]/.test(spoons))
    return withPlainSpaces(`${metric} ${food}`);
  return withPlainSpaces(`${spoons} ${food}${off === null ? '' : ` (${writeOff(off)})`}`);
}

function sweetenerLines({ choices, rows }: Formulation, how: RecipeMeasure, kitchen: Kitchen): readonly string[] {
  const { value } = rows.sweetenerMass;
  if (typeof value !== 'number') return [];
  return choices.sweetener.flatMap(({ entry, share }) => {
    const mass = value * share;
    if (!(mass > 0)) return [];
    const weight = entry.spoon === null ? null : entry.spoon.grams / entry.spoon.millilitres;
    return [`- ${amountOf(writeValue(mass, 'mass', weight, kitchen), how, entry.name.toLowerCase())}`];
  });
}

function jarLine({ choices, recipe, rows }: Formulation, { decimalComma }: Kitchen): readonly string[] {
  const { jar } = choices;
  const count = rows.vesselCount.value;
  const brimful = rows.brimful.value;
  const volume = recipe.vessel === 'own' && typeof brimful === 'number' ? brimful : jar.nominal;
  const size = withPlainSpaces(writeMetric(volume, 'volume', decimalComma));
  const name = jar.name.toLowerCase();
  return typeof count === 'number' && count > 1
    ? [`For each ${size} jar (${name}), ${count} of them.`]
    : [`For a ${size} jar (${name}).`];
}
