import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import { fermentableOf, weightOf } from '../../../src/formula/models/blend';
import { sweeteners } from '../../../src/reference/sweeteners';
import { tightBag as recipeOf } from '../../batches';

const water = { lactose: false, galactose: true };
const half = [
  { entry: sweeteners.honey, share: 0.5 },
  { entry: sweeteners.caneWhite, share: 0.5 },
];

describe('a blend', () => {
  test('holds the weighted sum: half honey 0.82243, half cane sugar 1.05052', () => {
    expect(fermentableOf(half, water).value).toBeCloseTo((0.822426 + 1.050524) / 2, 5);
  });

  test('with an unknown part is a range as wide as that part', () => {
    const { low, high } = fermentableOf(
      [
        { entry: sweeteners.cornSyrup, share: 0.5 },
        { entry: sweeteners.caneWhite, share: 0.5 },
      ],
      water,
    );
    expect(high - low).toBeCloseTo((0.7677 * 1.05263 - 0.2677) / 2, 4);
  });

  test('with a part that feeds nothing holds only the rest', () => {
    const { value } = fermentableOf(
      [
        { entry: sweeteners.stevia, share: 0.25 },
        { entry: sweeteners.caneWhite, share: 0.75 },
      ],
      water,
    );
    expect(value).toBeCloseTo(0.75 * 1.050524, 5);
  });

  test('takes the room of its dry part and of its water', () => {
    const sweetener = [
      { id: 'honey', share: 0.5 },
      { id: 'caneWhite', share: 0.5 },
    ] as const;
    const { of } = formulate(recipeOf({ sweetener }));
    const asWater = (share: number) => share / of('waterDensity');
    expect(of('sweetenerRoom')).toBeCloseTo(
      0.5 * (0.829 * 0.62 + asWater(0.171)) + 0.5 * (0.9998 * 0.62 + asWater(0.0002)),
      9,
    );
  });

  test('has no weight by the spoon where one of its parts has none', () => {
    expect(
      weightOf([
        { entry: sweeteners.dates, share: 0.1 },
        { entry: sweeteners.honey, share: 0.9 },
      ]),
    ).toBeNull();
    expect(weightOf([])).toBeNull();
  });
});
