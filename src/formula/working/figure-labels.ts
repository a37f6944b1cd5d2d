import { grains } from '../../reference/grains';
import { jars } from '../../reference/jars';
import { sources } from '../../reference/sources';
import type { Choices } from '../recipe/coefficient';
import { coefficientIds, coefficients } from '../recipe/coefficients';
import { coefficientNames } from '../words/coefficient-names';

/** What a figure is called where the name of its field does not say it. */
const plain: Readonly<Record<string, string>> = {
  blendSeconds: 'Blending for',
  'blendWater.temperature': 'Water to blend with, temperature',
  'can.volume': 'What a can holds',
  'cook.minutes': 'Cooking for',
  'cup.grams': 'A level cup or spoon weighs',
  'cup.millilitres': 'That cup or spoon holds',
  cupGrams: 'A US cup weighs',
  otherHexose: 'Hexose of maltose and galactose',
  pieceGrams: 'One piece weighs',
  'spoon.grams': 'A level spoon or cup weighs',
  'spoon.millilitres': 'That spoon or cup holds',
  'piece.grams': 'One piece weighs',
  'total.low': 'All sugars, at least',
  'total.high': 'All sugars, at most',
  takes: 'Sugars taken',
  readyTemperature: 'Room of the usual ready time',
  tablespoon: 'Drained grains in a rounded tablespoon',
  carbohydrate: 'Carbohydrate by difference, fibre included',
  ownWater: 'Its own liquid',
  coefficients: 'Coefficient of power',
  numerator: 'Coefficient above the line, of power',
  denominator: 'Coefficient below the line',
  bands: 'How lively it is: up to, band',
  hours: 'Hours at time',
  low: 'Acidity, at least, at time',
  high: 'Acidity, at most, at time',
  longest: 'In the cold, at most',
  onItsWay: 'Well on its way at',
  steps: 'How sweet it tastes: up to, step',
  from: 'Holds from',
  to: 'Holds up to',
  pressureTo: 'Holds up to a pressure of',
  // The plan.
  soak: 'Putting it to soak',
  weigh: 'Draining and weighing out',
  load: 'Blending and straining one load',
  pour: 'Opening and pouring a ready milk',
  setUp: 'Sweetening, adding grains, washing up',
  jar: 'Filling and covering one jar',
  heat: 'Warming up and cooling down',
  taste: 'Tasting',
  strain: 'Straining, once',
  strainJar: 'Straining one jar',
  bottle: 'Bottling, once',
  bottleEach: 'Filling one bottle',
  fridge: 'Putting bottles into the fridge, once',
  fridgeEach: 'Putting one bottle into the fridge',
  chill: 'Until a bottle is cold through',
  outOfCold: 'Milk may stand out of the cold',
  outOfColdHot: 'Milk may stand out of the cold in a hot room',
  hotRoom: 'A hot room',
  step: 'Fineness of a plan',
  search: 'Starts tried this far apart',
  drawn: 'Days drawn in one line, at most',
  reach: 'Another start is looked for this far away',
  // Grains as they are kept.
  recent: 'Latest batches that count',
  below: 'Share below the upper end of a range',
  inSight: 'Batches that can be seen ahead',
  pace: 'Batches from which there is a usual time between',
  sugarWater: 'Sugar of a resting jar',
  dairy: 'Grains to dairy milk',
  portionJar: 'Jar that a portion is for',
  // In the glass.
  proteinEnergy: 'Energy of protein',
  fatEnergy: 'Energy of fat',
  carbohydrateEnergy: 'Energy of carbohydrate',
  alcoholEnergy: 'Energy of alcohol',
  acidEnergy: 'Energy of acid',
  kilojoules: 'A kilocalorie in kilojoules',
  pulpInFridge: 'Pulp keeps in the fridge',
  pulpInFreezer: 'Pulp keeps in the freezer',
  // How a level measure lies.
  own: 'Your own cup',
  pieces: 'In pieces',
  fine: 'Ground or flaked',
};

/** The words of a camel-cased name: `ethanolActivation` is “Ethanol activation”. */
export function wordsOf(key: string): string {
  const words = key.replaceAll(/([A-Z])/g, (capital) => ` ${capital.toLowerCase()}`).trim();
  return (plain[key] ?? words).replace(/^./, (first) => first.toUpperCase());
}

/** The labels of the sheet’s coefficients by the figures of the tables that they are found in. */
function labelsOfSheet(): ReadonlyMap<object, string> {
  const labels = new Map<object, string>();
  const [jar, source, grain] = [jars.litre, sources.almond, grains.water];
  const all: Choices[] = [
    ...Object.values(jars).map((each) => ({ jar: each, source, grain, sweetener: [] })),
    ...Object.values(sources).map((each) => ({ jar, source: each, grain, sweetener: [] })),
    ...Object.values(grains).map((each) => ({ jar, source, grain: each, sweetener: [] })),
  ];
  for (const choices of all) {
    for (const id of coefficientIds) labels.set(coefficients[id].find(choices), coefficientNames[id].label);
  }
  return labels;
}

let known: ReadonlyMap<object, string> | undefined;

/** What a figure is called: as the sheet calls it, else by the names that lead to it. */
export function describeFigure(path: readonly string[], source: object): string {
  known ??= labelsOfSheet();
  const ofSheet = known.get(source);
  if (ofSheet !== undefined) return ofSheet;
  const named = path.filter((key) => key !== 'composition');
  const [last = '', before = ''] = [...named].reverse();
  const both = plain[`${before}.${last}`];
  if (both !== undefined) return both;
  const isPlace = /^\d+$/.test(last);
  if (isPlace) return `${wordsOf(before)} ${last}`;
  return before === '' ? wordsOf(last) : `${wordsOf(before)}: ${wordsOf(last).toLowerCase()}`;
}
