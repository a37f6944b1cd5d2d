import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readFormula } from '../../../src/formula/engine/expression';
import { waysOf } from '../../../src/formula/engine/ways-of';
import { intermediateIds } from '../../../src/formula/rows/terms';
import { formulaOf } from '../../../src/formula/working/formula-of';
import { numericRowIds } from '../../batches';
import { agrees } from '../../results';
import { reckon } from '../reckon';

/** Reckons while it reads, apart from the engine. */
function reckonRead(formula: string, numberOf: (name: string) => number): number {
  const leaf = (text: string): number => {
    if (/^\d+$/.test(text)) return Number(text);
    const [, name] = text.match(/^\{(\w+)\}$/) ?? [];
    if (name === undefined) throw new Error(`“${text}” is no number`);
    return numberOf(name);
  };
  return readFormula(formula, leaf, (op, left, right) => {
    if (op === '+') return left + right;
    if (op === '−') return left - right;
    if (op === '×') return left * right;
    if (op === '÷') return left / right;
    if (op === '^') return left ** right;
    if (op === ', rounded up') return Math.ceil(left - 1e-9);
    return op === ', rounded' ? Math.round(left) : Math.max(left, right);
  });
}

const formulas = [...numericRowIds, ...intermediateIds].flatMap((id) =>
  Object.values(waysOf(id)).flatMap((way) => formulaOf(way) ?? []),
);

describe('a formula', () => {
  test.each([
    ['2 × 3 + 4 ÷ 8 − 1', 5.5],
    ['2 − 3 − 4', -5],
    ['16 ÷ 4 ÷ 2', 2],
    ['2 × 3^(1 + 1)', 18],
    ['− 2 × 3 + 1', -5],
    ['(2 − 3, if above 0) + 1', 1],
    ['the warmer of 2, 3', 3],
    ['1 − 2, never below 0', 0],
    ['7 ÷ 2, rounded up, at least 1', 4],
    ['1 ÷ 4, rounded, at least 1', 1],
    ['', 0],
  ])('“%s” is %f', (formula, value) => {
    expect(reckonRead(formula, Number)).toBe(value);
  });

  test.each(['2 ×', '(2', '2 3', '2, and so on', '{open', '× 2', 'the warmer of 2'])(
    '“%s” can’t be read',
    (formula) => {
      expect(() => reckonRead(formula, Number)).toThrow();
    },
  );

  test('of any way is read as the reckoner of the workings reads it', () => {
    expect(formulas.length).toBeGreaterThan(80);
    const given = formulas.filter((formula) => formula !== '');
    fc.assert(
      fc.property(
        fc.constantFrom(...given),
        fc.array(fc.integer({ min: 1, max: 999 }), { minLength: 9, maxLength: 9 }),
        (formula, numbers) => {
          const known = new Map<string, number>();
          const numberOf = (name: string): number => {
            const value = known.get(name) ?? (numbers[known.size] ?? 1) / 1000;
            known.set(name, value);
            return value;
          };
          const reckoned = reckon(formula, numberOf);
          const [one, other] = ['value' in reckoned ? reckoned.value : null, reckonRead(formula, numberOf)];
          expect(one === other || agrees(Number(one), other), `${one} ${other}`).toBe(true);
        },
      ),
      { numRuns: 1000 },
    );
  });
});
