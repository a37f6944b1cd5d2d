import { writeNumber } from '../../measure/write-quantity';
import { alcoholLine } from '../../reference/finished';
import { kitchen as kitchenTable } from '../../reference/kitchen';
import { isUnknown } from '../advice/batch-allergens';
import type { Estimate } from '../fizz/sugar-fate';
import { labelOfBatch } from '../steps/label-text';
import { leading } from '../words/leading';
import { lowerFirst } from '../words/lower-first';
import { type Kitchen, writeValue } from '../words/write-row';
import type { Blended, Poured } from './blend';

const hardSpace = '\u00A0';
const oneDay = `1${hardSpace}day`;

/** What is told of a blend, line by line. */
export interface BlendLine {
  readonly label: string;
  readonly text: string;
}

/** What a blend comes to: how much, its sugar, alcohol and acidity, and for how long it keeps. */
export function blendLines(
  { volume, sugars, sugarRate, alcohol, acidity, keeps }: Blended,
  kitchen: Kitchen,
): readonly BlendLine[] {
  const { decimalComma, leads } = kitchen;
  const range = ({ low, high }: Estimate, places: number, unit: string): string => {
    const [from, to] = [writeNumber(low, places, decimalComma), writeNumber(high, places, decimalComma)];
    return from === to ? `${to}${hardSpace}${unit}` : `${from} to ${to}${hardSpace}${unit}`;
  };
  return [
    { label: 'Together', text: leading(writeValue(volume, 'volume', null, kitchen), leads).first },
    { label: 'Sugar left', text: `${range(sugars, 0, 'g')} in all, ${range(sugarRate, 0, 'g')} in a litre` },
    { label: 'Alcohol', text: `${range(alcohol, 1, '%')} by volume` },
    { label: 'pH', text: tellAcidity(acidity, decimalComma) },
    { label: 'Keeps', text: tellKeeping(keeps) },
  ];
}

function tellAcidity(acidity: Blended['acidity'], decimalComma: boolean): string {
  if (acidity === null) return 'not known, as not all were measured: dip a strip into the blend';
  const [low, high] = [acidity.low, acidity.high].map((value) => writeNumber(value, 1, decimalComma));
  return low === high ? `about ${low}, as each was measured` : `between ${low} and ${high}, as they were measured`;
}

function tellKeeping(keeps: Blended['keeps']): string {
  if (keeps === null) return 'as long as what keeps least of them';
  return `at its best for ${days(keeps.best)} and used up within ${days(keeps.last)} after “${keeps.name}” was ready, which keeps least`;
}

function days(count: number): string {
  return count === 1 ? oneDay : `${count}${hardSpace}days`;
}

/** What to mind with a blend. */
export function blendCautions({ notSour, uncounted }: Blended, { decimalComma }: Kitchen): readonly string[] {
  const line = writeNumber(kitchenTable.acidityLine.value, 1, decimalComma);
  return [
    ...notSour.map((name) => `“${name}” is above pH ${line}: it is not finished. Don’t pour it to any other.`),
    ...uncounted.map((name) => `“${name}” may hold more alcohol: its bottle stands outside what can be worked out.`),
  ];
}

/**
 * What to write on a blend, line by line: what it is made of, the allergens of every part as on its own label, milk and
 * honey too, and that it keeps as long as what keeps least.
 */
export function blendLabel(name: string, poured: readonly Poured[], blended: Blended): readonly string[] {
  const { alcohol, uncounted, keeps } = blended;
  const made = poured.map(({ formulation: { choices } }) => choices.source.plural);
  const isUnder = alcohol.high < alcoholLine.value && uncounted.length === 0;
  return [
    name,
    `A blend of plant-milk kefirs of ${[...new Set(made)].join(' and ')}.`,
    ...blendCare(poured),
    ...(keeps === null ? [] : [`Use up within ${days(keeps.last)} after “${keeps.name}” was ready.`]),
    'Keep cold. Contains live cultures. Open slowly.',
    isUnder ? 'Holds a little alcohol.' : `May hold more than ${alcoholLine.value} % alcohol.`,
  ];
}

/** What each part brings that somebody can’t have, each once, as its own label says it. */
export function blendCare(poured: readonly Poured[]): readonly string[] {
  const lines = poured.flatMap(({ name, formulation }) => {
    const label = labelOfBatch(formulation, { name, days: { made: null, tasteBy: null, useBy: null } });
    const of = (id: (typeof label)[number]['id']): readonly string[] =>
      label.filter((line) => line.id === id).map(({ text }) => text);
    const { fruit } = formulation.recipe;
    // What the sheet can’t know is told by the name of the batch, so that it is clear whose carton to read.
    const isOpen = isUnknown(formulation.choices.source);
    const whose = isOpen ? of('allergens').map((text) => `“${name}”: ${lowerFirst(text)}`) : of('allergens');
    return [...(fruit === undefined ? [] : [`With ${fruit.name}.`]), ...whose, ...of('dairy'), ...of('infants')];
  });
  return [...new Set(lines)];
}
