import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { blend, halfGlass, type Poured, toPour } from '../../../src/formula/blend/blend';
import { blendCare, blendCautions, blendLabel, blendLines } from '../../../src/formula/blend/blend-words';
import { formulate } from '../../../src/formula/engine/formulate';
import { alcoholOf } from '../../../src/formula/fizz/sugar-fate';
import { inKefir, inSoMuch } from '../../../src/formula/glass/in-a-glass';
import { bottledRecipe, plainRecipe, recipeOf, typed } from '../../batches';
import { agrees } from '../../results';
import '../../seed';

const kitchen = {
  leads: 'metric',
  cups: 'us',
  scoops: { cups: ['1'], tablespoon: true, teaspoons: ['1'] },
  decimalComma: false,
} as const;

function pour(name: string, volume: number, changes: Parameters<typeof recipeOf>[0] = {}): Poured {
  return { name, volume, formulation: formulate(recipeOf(changes)) };
}

function blended(poured: readonly Poured[]) {
  return blend(poured) ?? expect.fail('nothing can be told of the blend');
}

const measured = (amount: number) => ({
  measured: { finalPH: { amount, kind: 'acidity' as const } },
});

const said = (poured: readonly Poured[]) =>
  blendLines(blended(poured), kitchen).map(({ label, text }) => `${label}: ${text}`.replaceAll('\u00A0', ' '));

describe('drinks poured together', () => {
  test('hold the volume, the sugar and the alcohol of both, and lie between them', () => {
    fc.assert(
      fc.property(
        plainRecipe,
        plainRecipe,
        fc.double({ min: 1, max: 2000, noNaN: true }),
        fc.double({ min: 1, max: 2000, noNaN: true }),
        (one, other, much, more) => {
          const poured = [
            { name: 'One', formulation: formulate(one), volume: much },
            { name: 'Other', formulation: formulate(other), volume: more },
          ];
          const kefirs = poured.map(({ formulation }) => inKefir(formulation));
          const [first, second] = kefirs;
          fc.pre(first !== null && second !== null && first !== undefined && second !== undefined);
          const mix = blended(poured);
          expect(agrees(mix.volume, much + more)).toBe(true);
          const [a, b] = [inSoMuch(first, much), inSoMuch(second, more)];
          for (const end of ['low', 'likely', 'high'] as const) {
            expect(agrees(mix.sugars[end], a.sugars[end] + b.sugars[end])).toBe(true);
            expect(agrees((mix.sugarRate[end] * mix.volume) / 1000, mix.sugars[end])).toBe(true);
            const ends = [first, second].map((kefir) => alcoholOf(inSoMuch(kefir, 1000).alcohol[end]));
            expect(mix.alcohol[end]).toBeGreaterThanOrEqual(Math.min(...ends) * (1 - 1e-9));
            expect(mix.alcohol[end]).toBeLessThanOrEqual(Math.max(...ends) * (1 + 1e-9));
          }
          expect(mix.sugars.low).toBeLessThanOrEqual(mix.sugars.high);
          const turned = blended(poured.toReversed());
          expect(agrees(turned.sugars.likely, mix.sugars.likely)).toBe(true);
          expect(said(poured).join(' ')).not.toMatch(/NaN|Infinity|undefined/);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('of one batch are that batch, poured in two', () => {
    const whole = blended([pour('A', 300)]);
    const halves = blended([pour('A', 100), pour('A', 200)]);
    expect(agrees(whole.sugars.likely, halves.sugars.likely)).toBe(true);
    expect(agrees(whole.alcohol.high, halves.alcohol.high)).toBe(true);
  });

  test('have a pH only where each was measured, between those', () => {
    expect(blended([pour('A', 100, measured(4.1)), pour('B', 100)]).acidity).toBeNull();
    expect(said([pour('A', 100), pour('B', 100)])).toContain(
      'pH: not known, as not all were measured: dip a strip into the blend',
    );
    const both = [pour('A', 100, measured(4.4)), pour('B', 100, measured(4.1))];
    expect(said(both)).toContain('pH: between 4.1 and 4.4, as they were measured');
    expect(blendCautions(blended(both), kitchen)).toEqual([]);
  });

  test('are refused in words where one is not sour enough', () => {
    const mix = blended([pour('A', 100, measured(5.2)), pour('B', 100, measured(4.1))]);
    expect(blendCautions(mix, kitchen)).toEqual([
      '“A” is above pH 4.6: it is not finished. Don’t pour it to any other.',
    ]);
  });

  test('keep as long as what keeps least', () => {
    const short = { yours: { 'almond.keepUsual': { value: 2, how: 'typed' as const } } };
    const { keeps } = blended([pour('A', 100), pour('B', 100, short)]);
    expect(keeps).toEqual({ best: 2, last: 2, name: 'B' });
  });

  test('carry the allergens of every part, milk and honey, each once', () => {
    const honey = { source: 'oats', grains: 'milk', sweetener: [{ id: 'honey', share: 1 }] } as const;
    const care = blendCare([pour('A', 100), pour('B', 100, honey), pour('C', 100)]);
    const text = care.join(' ');
    expect(text).toContain('Contains almond (tree nut)');
    expect(text).toContain('Contains oats (gluten)');
    expect(text).toContain('Traces of milk, from the grains');
    expect(text).toContain('not for children under 12 months');
    expect(new Set(care).size).toBe(care.length);
    expect(blendCare([pour('Mine', 100, { source: 'cartonPlain' })]).join(' ')).toContain(
      '“Mine”: allergens: those named on the carton',
    );
  });

  test('say on the label that they may be over the line of alcohol where they may', () => {
    const label = (poured: readonly Poured[]) => blendLabel('Mix', poured, blended(poured));
    const mild = [pour('A', 100, { given: [typed('sugarRate', 3)] })];
    expect(label(mild)[0]).toBe('Mix');
    expect(label(mild).at(-1)).toBe('Holds a little alcohol.');
    const strong = [pour('A', 100), pour('B', 100, { given: [typed('sugarRate', 200)] })];
    expect(label(strong).at(-1)).toBe('May hold more than 0.5 % alcohol.');
  });

  test('say of a bottle that no model reaches that it may hold more alcohol', () => {
    const warm = pour('W', 100, bottledRecipe({ given: [typed('bottleTemperature', 41)] }));
    const mix = blended([pour('A', 100), warm]);
    expect(mix.uncounted).toEqual(['W']);
    expect(blendCautions(mix, kitchen).join(' ')).toContain('“W” may hold more alcohol');
    expect(blendLabel('Mix', [warm], mix).at(-1)).toBe('May hold more than 0.5 % alcohol.');
    expect(blended([pour('B', 100, bottledRecipe())]).uncounted).toEqual([]);
  });

  test('can’t be told where a batch can’t be worked out or nothing is poured', () => {
    const bad = pour('A', 100, { given: [typed('sourceMass', -3)] });
    expect(blend([bad, pour('B', 100)])).toBeNull();
    expect(blend([])).toBeNull();
    expect(blend([pour('A', 0)])).toBeNull();
    expect(halfGlass(bad.formulation)).toBeNull();
  });

  test('begin with half a glass, or all there is', () => {
    const { formulation } = pour('A', 1);
    expect(halfGlass(formulation)).toBe(formulation.of('servingSize') / 2);
    const little = formulate(recipeOf({ given: [typed('drinkVolume', 40)] }));
    expect(halfGlass(little)).toBe(toPour(little));
  });
});
