import { describe, expect, it } from 'vitest';
import { keysOf } from '../../src/batch/document/table-keys';
import { foods } from '../../src/reference/foods';
import { sweetenerNotes } from '../../src/reference/sweetener-notes';
import { type Sweetener, sweeteners } from '../../src/reference/sweeteners';

const entries = Object.entries(sweeteners);
const usable = entries.filter(([id, { refused }]) => refused === undefined && id !== 'none');
const refused = entries.filter(([, sweetener]) => sweetener.refused !== undefined);

function knownSugar({ sugars }: Sweetener): number {
  const { sucrose, glucose, fructose, maltose, lactose, galactose } = sugars;
  return [sucrose, glucose, fructose, maltose, lactose, galactose].reduce<number>((sum, each) => sum + (each ?? 0), 0);
}

describe('sweeteners', () => {
  it('are at least 12 that the grains can ferment, with unique names', () => {
    expect(usable.length).toBeGreaterThanOrEqual(12);
    expect(new Set(entries.map(([, { name }]) => name)).size).toBe(entries.length);
  });

  it('either know some sugar or give the range of the total', () => {
    for (const [id, sweetener] of usable) {
      const { total } = sweetener;
      expect(total === undefined ? knownSugar(sweetener) : total.low, id).toBeGreaterThan(0);
      if (total) {
        expect(total.high, id).toBeGreaterThanOrEqual(total.low);
        expect(knownSugar(sweetener), id).toBe(0);
      }
    }
  });

  it('take water and single sugars of the record they name', () => {
    for (const [id, { food, water, sugars }] of entries) {
      if (food === null) continue;
      const { origin, ...single } = sugars;
      expect(foods[food], id).toMatchObject({ ...single, water });
      expect(origin.kind, id).toBe('published');
    }
  });

  it('take for molasses the sum of its sugars, not the printed total', () => {
    expect(knownSugar(sweeteners.molasses)).toBeCloseTo(54.11, 10);
    expect(sweeteners.molasses.total).toBeUndefined();
  });

  it('have spoons of a plausible density', () => {
    for (const [id, { spoon }] of entries) {
      if (!spoon) continue;
      expect(spoon.grams / spoon.millilitres, id).toBeGreaterThan(0.3);
      expect(spoon.grams / spoon.millilitres, id).toBeLessThan(1.6);
    }
  });

  it('have syrups heavier than water and dry ones lighter than syrup', () => {
    for (const [id, { spoon, state }] of entries) {
      if (!spoon) continue;
      expect(spoon.grams / spoon.millilitres > 1.2, id).toBe(state === 'liquid');
    }
  });

  it('give a reason for each one refused, and sugar to none of them', () => {
    expect(refused.map(([id]) => id)).toEqual([
      'stevia',
      'erythritol',
      'xylitol',
      'monkFruit',
      'sucralose',
      'allulose',
    ]);
    for (const [id, sweetener] of refused) {
      expect(sweetener.refused?.length ?? 0, id).toBeGreaterThan(20);
      expect(knownSugar(sweetener), id).toBe(0);
    }
  });

  it('mark honey and agave', () => {
    expect(entries.filter(([, { honeyUnderOne }]) => honeyUnderOne).map(([id]) => id)).toEqual(['honey']);
    const fructose = entries.filter(([, sweetener]) => (sweetener.sugars.fructose ?? 0) > knownSugar(sweetener) * 0.6);
    expect(fructose.map(([id]) => id)).toEqual(['agave']);
    expect(sweeteners.agave.mostlyFructose).toBe(true);
  });

  it('say where each caution and refusal comes from', () => {
    for (const id of keysOf(sweeteners)) {
      const { caution, flavour, refusedOrigin } = sweetenerNotes[id];
      expect(flavour, id).toMatch(/\.$/);
      expect(refusedOrigin === undefined, id).toBe(sweeteners[id].refused === undefined);
      if (caution !== undefined) expect(caution.text, id).toMatch(/\.$/);
    }
  });
});
