import type { Formulation } from '../formula/formulate';
import type { RowId } from '../formula/order';
import { type Kitchen, type Written, writeRow, writeValue } from '../formula/write-row';
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
  const amount = (id: RowId): string | null => {
    const written = writeRow(formulation, id, kitchen);
    const { value } = rows[id];
    return written === null || value === 0 ? null : choose(written, how, rows[id].kind === 'volume');
  };
  const item = (id: RowId, food: string): readonly string[] => {
    const written = amount(id);
    return written === null ? [] : [`- ${written} ${food}`];
  };
  const title = name.replace(/\s+/g, ' ').trim();
  return [
    ...(title === '' ? [] : [title, '']),
    ...item('sourceMass', choices.source.plural),
    ...(choices.source.soak?.drained ? item('soakWater', 'water for soaking') : []),
    ...item('blendWater', 'water'),
    ...sweetenerLines(formulation, how, kitchen),
    ...item('grainMass', choices.grain.name.toLowerCase()),
    '',
    ...jarLine(formulation, kitchen),
    ...(amount('drinkVolume') === null ? [] : [`Makes ${amount('drinkVolume')} of kefir.`]),
    '',
  ].join('\n');
}

function choose({ metric, us }: Written, how: RecipeMeasure, isVolume: boolean): string {
  if (how === 'grams' || us === null) return withPlainSpaces(metric);
  const [scoops = '', ounces] = us.split(' · ');
  // Without a cup weight only ounces are written, and less than the smallest scoop is no amount to measure.
  const usable = (isVolume || ounces !== undefined) && /^[\d½⅓⅔¼¾⅛]/.test(scoops);
  return withPlainSpaces(usable ? scoops : metric);
}

function sweetenerLines({ choices, rows }: Formulation, how: RecipeMeasure, kitchen: Kitchen): readonly string[] {
  const { value } = rows.sweetenerMass;
  if (typeof value !== 'number') return [];
  return choices.sweetener.flatMap(({ entry, share }) => {
    const mass = value * share;
    if (!(mass > 0)) return [];
    const weight = entry.spoon === null ? null : entry.spoon.grams / entry.spoon.millilitres;
    return [`- ${choose(writeValue(mass, 'mass', weight, kitchen), how, false)} ${entry.name.toLowerCase()}`];
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
