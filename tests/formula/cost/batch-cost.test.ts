import { describe, expect, test } from 'vitest';
import { batchCost } from '../../../src/formula/cost/batch-cost';
import { compareSources } from '../../../src/formula/cost/compare-sources';
import { describeMissing, describeThrownAway, tellCost } from '../../../src/formula/cost/cost-words';
import { currencyOf } from '../../../src/formula/cost/money';
import { needsOf } from '../../../src/formula/cost/needs';
import type { PackagePrice } from '../../../src/formula/cost/package-price';
import { formulate } from '../../../src/formula/engine/formulate';
import { doubleOf, exactly } from '../../../src/measure/exact';
import type { Kind } from '../../../src/measure/units';
import { bottledRecipe, recipeOf, typed } from '../../batches';

function pack(food: string, amount: number, price: string, kind: Kind = 'mass'): PackagePrice {
  return { food, amount: { kind, amount, text: `${amount}` }, price };
}

const kitchen = {
  leads: 'metric',
  cups: 'us',
  scoops: { cups: ['1', '1/2'], tablespoon: true, teaspoons: ['1'] },
  decimalComma: false,
} as const;
const euros = currencyOf('1 €');
const almonds = formulate(recipeOf({ given: [typed('sourceMass', 200), typed('sweetenerMass', 30)] }));

describe('what a batch costs', () => {
  test('is what each thing costs, by the gram', () => {
    const cost = batchCost(almonds, [pack('source.almond', 500, '9.90'), pack('sweetener.caneWhite', 1000, '1.50')]);
    // 200 of 500 g at 9.90, 30 of 1000 g at 1.50.
    expect(cost.lines.map((line) => line.cost && doubleOf(line.cost))).toEqual([3.96, 0.045]);
    expect(doubleOf(cost.total)).toBe(4.005);
    expect(cost.missing).toEqual([]);
    const litres = almonds.of('drinkVolume') / 1000;
    expect(doubleOf(cost.perLitre ?? exactly(0))).toBeCloseTo(4.005 / litres, 12);
    expect(doubleOf(cost.perGlass ?? exactly(0))).toBeCloseTo((4.005 / litres) * 0.25, 12);
    const told = tellCost(cost, euros, kitchen);
    // A half goes up, and the lines add up to it.
    expect(told.batch).toBe('4.01\u00A0€');
    expect(told.lines.map((line) => line.cost)).toEqual(['3.96\u00A0€', '0.05\u00A0€']);
    expect(told.lines.map(({ amount }) => amount)).toEqual(['200\u00A0g', '30\u00A0g']);
  });

  test('says what has no price yet, and the rest so far', () => {
    const cost = batchCost(almonds, [pack('sweetener.caneWhite', 1000, '1.50')]);
    expect(describeMissing(cost)).toBe('No price yet for almonds, whole: type one.');
    const powder = formulate(recipeOf({ grains: 'powder', given: [typed('sourceMass', 200)] }));
    const prices = [pack('source.almond', 500, '9.90'), pack('sweetener.caneWhite', 1000, '1.50')];
    expect(describeMissing(batchCost(powder, prices))).toBe('Starter powder is not counted: add what it costs.');
    expect(describeMissing(batchCost(powder, prices.slice(0, 1)))).toBe(
      'No price yet for cane sugar, white: type one. Starter powder is not counted: add what it costs.',
    );
    expect(describeMissing(batchCost(formulate(recipeOf({ grains: 'kefir' })), prices))).toBeNull();
    expect(doubleOf(cost.total)).toBe(0.045);
  });

  test.each([
    ['volume', 1000, 2 * (200 / (143 / 0.2365882365))],
    ['mass', 1000, 0.4],
  ] as const)('counts a package by %s', (kind, amount, expected) => {
    const [line] = batchCost(almonds, [pack('source.almond', amount, '2', kind)]).lines;
    expect(line?.cost && doubleOf(line.cost)).toBeCloseTo(expected, 9);
  });

  test.each([
    ['count', 3, 'noPiece'],
    ['mass', 0, 'nothing'],
    ['temperature', 20, 'unreadable'],
  ] as const)('refuses a package by %s of %s', (kind, amount, why) => {
    expect(batchCost(almonds, [pack('source.almond', amount, '2', kind)]).lines[0]?.why).toBe(why);
  });

  test('counts cans of what is sold in cans', () => {
    const coconut = formulate(recipeOf({ source: 'coconutMilk', given: [typed('sourceMass', 390)] }));
    const [line] = batchCost(coconut, [pack('source.coconutMilk', 2, '5.00', 'count')]).lines;
    const can = 400 * coconut.of('sourceWeight');
    expect(line?.cost && doubleOf(line.cost)).toBeCloseTo((390 / (2 * can)) * 5, 9);
  });

  test('goes by the carton it is poured from, and by each sweetener of a blend', () => {
    const sweetener = [
      { id: 'honey', share: 0.25 },
      { id: 'caneWhite', share: 0.75 },
    ] as const;
    const given = [typed('sweetenerMass', 40)];
    const carton = formulate(recipeOf({ source: 'cartonPlain', sweetener, given }));
    expect(needsOf(carton, 'Green one').map(({ food }) => food)).toEqual([
      'carton.Green one',
      'sweetener.honey',
      'sweetener.caneWhite',
    ]);
    expect(needsOf(carton).map(({ food, grams }) => [food, Math.round(grams)])).toEqual([
      ['source.cartonPlain', Math.round(carton.of('sourceMass'))],
      ['sweetener.honey', 10],
      ['sweetener.caneWhite', 30],
    ]);
  });

  test('counts what goes into the bottles', () => {
    const given = [typed('bottleSugar', 10)];
    const plain = formulate(bottledRecipe({ given }));
    const sugar = needsOf(plain).find(({ part }) => part === 'bottle');
    // 10 g of hexose a litre are 9.52 g of sugar that is 99.8 % sucrose.
    expect(sugar?.grams).toBeCloseTo((plain.of('drinkVolume') / 1000) * (10 / (0.998 * 1.05263)), 2);
    const fruit = { name: 'raspberries', amount: '30 g', grams: 30 };
    const berries = needsOf(formulate(bottledRecipe({ given, fruit }))).find(({ part }) => part === 'fruit');
    expect(berries).toMatchObject({ food: 'fruit.raspberries', name: 'Raspberries' });
    expect(berries?.grams).toBe(30 * Number(formulate(bottledRecipe({ given, fruit })).rows.bottleCount.value));
  });

  test('has no number where the batch has none', () => {
    const broken = formulate(recipeOf({ given: [typed('sourceMass', -1)] }));
    const cost = batchCost(broken, [pack('source.almond', 500, '9.90')]);
    expect(cost.lines).toEqual([]);
    expect([cost.perLitre, cost.perGlass]).toEqual([null, null]);
  });
});

test('what the pulp keeps is told as an estimate of the price', () => {
  const share = { likely: 0.32, least: 0.21, most: 0.58 };
  expect(describeThrownAway(share, exactly('3.96'), 'almonds', euros, kitchen).replaceAll('\u00A0', ' ')).toBe(
    'The pulp keeps about 32 % of what is dry in the almonds, which is 1.27 € of what they cost; by bag and hand 0.83 € to 2.30 €.',
  );
});

describe('sources compared', () => {
  const packages = [
    pack('source.almond', 1000, '20'),
    pack('source.hemp', 1000, '30'),
    pack('source.coconutMilk', 400, '1.5', 'volume'),
    pack('carton.Green one', 1000, '2', 'volume'),
    pack('sweetener.caneWhite', 1000, '1.50'),
  ];

  test('are each for as much kefir, by what each costs, the cheapest first', () => {
    const found = compareSources(almonds, packages);
    expect(found).toHaveLength(4);
    expect(found.map(({ food }) => food)).toContain('carton.Green one');
    const costs = found.map(({ perLitre }) => doubleOf(perLitre));
    expect(costs).toEqual(costs.toSorted((a, b) => a - b));
    const litres = almonds.of('drinkVolume') / 1000;
    for (const { total, perLitre } of found) expect(doubleOf(total) / litres).toBeCloseTo(doubleOf(perLitre), 9);
    expect(found.filter(({ isThis }) => isThis).map(({ food }) => food)).toEqual(['source.almond']);
  });

  test('leave out what has no price, and are none where there is one alone', () => {
    expect(compareSources(almonds, packages.slice(0, 1))).toEqual([]);
    expect(compareSources(almonds, [...packages.slice(0, 2), pack('source.cashew', 0, '3')])).toHaveLength(2);
  });

  test('make as much of another source as of this', () => {
    const [hemp] = compareSources(almonds, packages).filter(({ food }) => food === 'source.hemp');
    const alone = formulate(recipeOf({ source: 'hemp', given: [typed('drinkVolume', almonds.of('drinkVolume'))] }));
    expect(hemp?.grams).toBeCloseTo(alone.of('sourceMass'), 6);
  });
});
