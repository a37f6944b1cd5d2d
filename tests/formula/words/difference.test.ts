import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { isRow } from '../../../src/formula/engine/evaluate';
import { formulate } from '../../../src/formula/engine/formulate';
import { rowOrder } from '../../../src/formula/recipe/order';
import { rowsThatDiffer } from '../../../src/formula/words/compare';
import { compareRow } from '../../../src/formula/words/difference';
import { recipeOf, sensibleRecipe, typed } from '../../batches';

const metric = demo.settings;
const us = { ...metric, leads: 'us' } as const;

function plain(text: string | null): string | null {
  return text === null ? null : text.replaceAll(/[\u00A0\u202F\u2009]/g, ' ');
}

describe('compareRow', () => {
  const batch = formulate(recipeOf({ given: [typed('sourceMass', 220), typed('waterRatio', 4)] }));
  const other = formulate(recipeOf({ given: [typed('sourceMass', 200), typed('waterRatio', 4)] }));

  test('gives the difference with its sign, in the row’s unit and in per cent of the other', () => {
    expect(plain(compareRow('sourceMass', batch, other, metric))).toBe('+20 g, +10 %');
    // 20 of 220 is 9 %.
    expect(plain(compareRow('sourceMass', other, batch, metric))).toBe('−20 g, −9 %');
  });

  test('gives it in US measure where that leads', () => {
    expect(plain(compareRow('sourceMass', batch, other, us))).toBe('+0.71 oz, +10 %');
    expect(plain(compareRow('blendWater', batch, other, us))).toBe('+⅓ cup, +10 %');
  });

  test('gives a place more to less than a per cent', () => {
    const near = formulate(recipeOf({ given: [typed('sourceMass', 201), typed('waterRatio', 4)] }));
    expect(plain(compareRow('sourceMass', near, other, metric))).toBe('+1.0 g, +0.5 %');
    expect(plain(compareRow('sourceMass', near, other, { ...metric, decimalComma: true }))).toBe('+1,0 g, +0,5 %');
  });

  test('gives the room of a jar without its share of the jar', () => {
    const [deep, usual] = [typed('headspaceVolume', 356), typed('headspaceVolume', 260)].map((cell) =>
      formulate(recipeOf({ given: [cell] })),
    );
    if (!deep || !usual) throw new Error('two batches are compared');
    expect(plain(compareRow('headspaceVolume', deep, usual, metric))).toBe('+96 mL, +37 %');
  });

  test('leaves out a share of nothing', () => {
    const sugarless = formulate(recipeOf({ given: [typed('sugarRate', 0)] }));
    expect(
      plain(compareRow('sugarRate', formulate(recipeOf({ given: [typed('sugarRate', 20)] })), sugarless, metric)),
    ).toBe('+20.0 g/L');
  });

  test('has nothing to say of likes, of choices, and where one has no number', () => {
    expect(compareRow('waterRatio', batch, other, metric)).toBeNull();
    expect(compareRow('source', batch, formulate(recipeOf({ source: 'cashew' })), metric)).toBeNull();
    expect(compareRow('pulpMass', batch, formulate(recipeOf({ source: 'cartonPlain' })), metric)).toBeNull();
    expect(compareRow('pulpMass', formulate(recipeOf({ source: 'cartonPlain' })), batch, metric)).toBeNull();
  });

  test('speaks just where two batches differ in number, and turns its sign when they change places', () => {
    fc.assert(
      fc.property(sensibleRecipe, sensibleRecipe, (one, two) => {
        const [a, b] = [formulate(one), formulate(two)];
        const different = rowsThatDiffer([a, b], metric);
        for (const row of rowOrder) {
          const numbers = [a, b].every(({ rows }) => typeof rows[row].value === 'number');
          const [there, back] = [compareRow(row, a, b, metric), compareRow(row, b, a, metric)];
          expect(there !== null, row).toBe(isRow(row) && numbers && different.has(row));
          if (there !== null && back !== null) expect([there[0], back[0]].toSorted(), row).toEqual(['+', '−']);
          expect(there ?? '').not.toMatch(/NaN|Infinity|undefined/);
        }
      }),
    );
  });
});
