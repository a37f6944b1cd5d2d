import { describe, expect, test } from 'vitest';
import {
  chooseFrom,
  coefficientIds,
  coefficientInEffect,
  coefficientKey,
  isAllowed,
  sharesOf,
} from '../../../src/formula/recipe/coefficients';
import { coefficientNames } from '../../../src/formula/words/coefficient-names';
import { rowSymbols, sharedNames } from '../../../src/formula/working/told/names';
import { sources } from '../../../src/reference/sources';
import { grainIds, jarIds, recipeOf, sourceIds } from '../../batches';

describe('a coefficient', () => {
  test('of every choice lies within what may be typed for it, with its origin', () => {
    for (const vessel of jarIds) {
      for (const source of sourceIds) {
        for (const grains of grainIds) {
          const recipe = recipeOf({ vessel, source, grains });
          for (const id of coefficientIds) {
            const { value, origin } = coefficientInEffect(id, recipe, chooseFrom(recipe));
            const absent = (id === 'labelServing' && value === 0) || isAllowed(id, value);
            expect(absent, `${id} of ${source} in ${vessel}: ${value}`).toBe(true);
            expect(origin.kind).not.toBe('yours');
          }
        }
      }
    }
  });

  test('corrected holds for its own choice alone, or for the whole kitchen', () => {
    expect(coefficientKey('uptake', recipeOf())).toBe('almond.uptake');
    expect(coefficientKey('uptake', recipeOf({ source: 'hemp' }))).toBe('hemp.uptake');
    expect(coefficientKey('brimfulUsual', recipeOf())).toBe('quartWide.brimfulUsual');
    expect(coefficientKey('usualDose', recipeOf({ grains: 'milk' }))).toBe('milk.usualDose');
    expect(coefficientKey('sugarUsual', recipeOf())).toBe('kitchen.sugarUsual');
  });

  test('corrected stays corrected, with its unit, unless it can’t be', () => {
    const recipe = recipeOf({ yours: { 'almond.passing': { value: 0.5, how: 'learned' } } });
    expect(coefficientInEffect('passing', recipe, chooseFrom(recipe))).toEqual({
      value: 0.5,
      unit: 'share',
      origin: { kind: 'yours', how: 'learned' },
    });
    const impossible = recipeOf({ yours: { 'almond.passing': { value: 1.5, how: 'typed' } } });
    expect(coefficientInEffect('passing', impossible, chooseFrom(impossible)).value).toBe(sources.almond.passing.value);
  });

  test('of what a source does not have can’t be corrected into being there', () => {
    const recipe = recipeOf({ yours: { 'almond.ownWater': { value: 0.3, how: 'typed' } } });
    expect(coefficientInEffect('ownWater', recipe, chooseFrom(recipe)).value).toBe(0);
  });

  test('has a symbol that no other figure, row or intermediate has', () => {
    const coefficients = Object.values(coefficientNames).map(({ symbol }) => symbol);
    const shared = Object.values(sharedNames).map(({ symbol }) => symbol);
    const all = [...coefficients, ...Object.values(rowSymbols), ...shared];
    const symbols = all.map(plain);
    expect(symbols.filter((symbol, at) => symbols.indexOf(symbol) !== at)).toEqual([]);
  });

  test('of the cook’s own jar is corrected for that batch’s jar alone', () => {
    const own = recipeOf({ vessel: 'own', jarOf: 'b2' });
    expect(coefficientKey('neckHeight', own)).toBe('own@b2.neckHeight');
    expect(coefficientKey('uptake', own)).toBe('almond.uptake');
    expect(coefficientKey('neckHeight', recipeOf({ jarOf: 'b2' }))).toBe('quartWide.neckHeight');
    expect(coefficientKey('neckHeight', recipeOf({ vessel: 'own' }))).toBe('own.neckHeight');
  });
});

describe('the shares of a blend', () => {
  const blend = recipeOf({
    sweetener: [
      { id: 'honey', share: 3 },
      { id: 'caneWhite', share: 1 },
    ],
  });

  test('that do not add up to 1 count in proportion', () => {
    expect(sharesOf(blend)).toBe(4);
    expect(chooseFrom(blend).sweetener.map(({ share }) => share)).toEqual([0.75, 0.25]);
  });

  test('of an empty blend are none', () => {
    expect(chooseFrom(recipeOf({ sweetener: [] })).sweetener).toEqual([]);
  });
});

const lowered = new Map([...'₀₁ₐₑₗₘₙₛᵦ'].map((mark, at) => [mark, '01aelmnsb'[at]]));

/** `tₛ` as `t_s`: whichever way a symbol is lowered, it reads the same. */
function plain(symbol: string): string {
  return [...symbol].map((mark) => (lowered.has(mark) ? `_${lowered.get(mark)}` : mark)).join('');
}
