import { writeMetric, writeNumber } from '../../measure/write-quantity';
import { energy } from '../../reference/energy';
import { compositionInEffect } from '../composition/composition-in-effect';
import type { Formulation } from '../engine/formulate';
import { type CoefficientId, coefficientInEffect } from '../recipe/coefficients';
import { coefficientNames } from '../words/coefficient-names';
import { describeCoefficient, describeOrigin } from '../words/origin-words';
import type { Kitchen } from '../words/write-row';
import { type InKefir, inSoMuch } from './in-a-glass';

/** How one line came about, with the numbers put in, and where what it rests on is from. */
export interface GlassWorking {
  readonly label: string;
  readonly text: string;
  readonly origins: readonly string[];
}

const hardSpace = '\u00A0';

/** How the figures of a glass of so many mL came about, line by line. */
export function glassWorking(
  formulation: Formulation,
  kefir: InKefir,
  glass: number,
  { decimalComma }: Kitchen,
): readonly GlassWorking[] {
  const { of, choices, evaluation, recipe } = formulation;
  const { source } = choices;
  const food = compositionInEffect(evaluation);
  const contents = inSoMuch(kefir, glass);
  const plain = (value: number, places = 1): string => writeNumber(value, places, decimalComma);
  const grams = (value: number, places = 1): string => `${plain(value, places)}${hardSpace}g`;
  const volume = (value: number): string => writeMetric(value, 'volume', decimalComma);
  const inSource = of('sourceMass') / 100;
  const poured = source.passing.value === 1;
  const passes = (part: 'fat' | 'protein'): string => {
    const [held, passed] = [inSource * food[part], kefir.milk[part]];
    const way = poured ? 'all of it in the milk' : `of which ${percent(passed / held, plain)} ${passesWords}`;
    const sweet = kefir.sweetener[part];
    const more = sweet > smallest ? `, and ${grams(sweet)} of the sweetener` : '';
    return `${grams(of('sourceMass'), 0)} of ${source.plural} hold ${grams(held)}, ${way}: ${grams(passed)}${more}. A glass is ${volume(glass)} of the ${volume(kefir.liquid)}: ${grams(contents[part].likely)}.`;
  };
  const origin = (id: CoefficientId): string => {
    const coefficient = coefficientInEffect(id, recipe, choices);
    return `${coefficientNames[id].label}. ${describeCoefficient(coefficient, decimalComma)}`;
  };
  const factor = (id: keyof typeof energy): string => plain(energy[id].value, 0);
  const { fat, protein, carbohydrate, sugars, fibre, alcohol, acid } = contents;
  const brought = kefir.milk.sugars + kefir.sweetener.sugars + kefir.bottle.sugars;
  const foodOrigin = describeOrigin(food.origin);
  return [
    {
      label: 'Energy',
      text: `${factor('fatEnergy')} × ${plain(fat.likely)} fat + ${factor('proteinEnergy')} × ${plain(protein.likely)} protein + ${factor('carbohydrateEnergy')} × ${plain(carbohydrate.likely)} carbohydrate + ${factor('alcoholEnergy')} × ${plain(alcohol.likely)} alcohol + ${factor('acidEnergy')} × ${plain(acid.likely)} acid, kcal for a gram: ${plain(contents.energy.likely, 0)}${hardSpace}kcal.`,
      origins: energyOrigins(decimalComma),
    },
    { label: 'Fat', text: passes('fat'), origins: [foodOrigin, ...(poured ? [] : [origin('passing')])] },
    { label: 'Protein', text: passes('protein'), origins: [foodOrigin, proteinStays] },
    {
      label: 'Sugars',
      text: `${grams(kefir.milk.sugars)} of the milk, ${grams(kefir.sweetener.sugars)} of the sweetener${kefir.bottle.sugars > 0 ? `, ${grams(kefir.bottle.sugars)} in the bottles` : ''}: ${grams(brought)} in all. The grains leave ${percent(shareLeft(kefir), plain)} of it${kefir.isBottled ? ', the bottle included' : ''}; in a glass ${grams(sugars.likely)}.`,
      origins: [origin('usedWhenReady')],
    },
    {
      label: 'Carbohydrate',
      text: `${grams(sugars.likely)} of sugars, ${grams(fibre.likely)} of fibre, and ${grams(Math.max(carbohydrate.likely - sugars.likely - fibre.likely, 0))} of starch and the like. ${poured ? '' : 'A bag holds the fibre back first.'}`.trim(),
      origins: [foodOrigin],
    },
    {
      label: 'Alcohol and acid',
      text: `Of the sugar that is used, ${percent(yeastShare(kefir), plain)} goes through yeast, about half of it to alcohol and half to gas; the rest becomes acid: ${grams(alcohol.likely)} of alcohol and ${grams(acid.likely)} of acid in a glass.`,
      origins: [origin('yeastShare')],
    },
  ];
}

const passesWords = 'passes the bag and is not lost on it';
const proteinStays = 'Counted to pass as the fat does. From memory: what ferments leaves protein and fat as they are.';
const smallest = 1e-3; // tolerance: less than a milligram of it is nothing to tell

function percent(share: number, plain: (value: number, places?: number) => string): string {
  return `${plain(100 * share, 0)}${hardSpace}%`;
}

function shareLeft({ fate }: InKefir): number {
  return fate.start.likely > 0 ? fate.left.likely / fate.start.likely : 1;
}

function yeastShare({ fate }: InKefir): number {
  const { used, lacticAcid } = fate;
  return used.likely > 0 ? 1 - lacticAcid.likely / used.likely : 0;
}

function energyOrigins(decimalComma: boolean): readonly string[] {
  const told = (label: string, id: keyof typeof energy): string =>
    `${label}. ${describeCoefficient(energy[id], decimalComma)}`;
  return [
    told('Fat', 'fatEnergy'),
    told('Protein', 'proteinEnergy'),
    told('Carbohydrate', 'carbohydrateEnergy'),
    told('Alcohol', 'alcoholEnergy'),
    told('Acid', 'acidEnergy'),
  ];
}
