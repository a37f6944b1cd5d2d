import { describe, expect, test } from 'vitest';
import { everyFigure, type ListedFigure } from '../../../src/formula/working/every-figure';
import { tables } from '../../reference/tables';
import { coefficientsIn } from '../../reference/walk';

const groups = everyFigure();
const all = groups.flatMap(({ figures }) => figures);

function quoted(text: string): string {
  return /[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** Rounded past any digit of a table: what is computed from a size, such as 1.06 times a quart, has no more. */
function written(value: number | undefined): string {
  return value === undefined ? '' : `${Number(value.toPrecision(12))}`;
}

function lineOf(group: string, { of, label, value, unit, low, high, mark, from }: ListedFigure): string {
  return [group, of, label, written(value), unit, written(low), written(high), mark, from].map(quoted).join(',');
}

describe('the list of every figure', () => {
  test('has each coefficient of every table, with its unit and range', () => {
    const has = new Set(all.map(({ value, unit, low, high, mark }) => [value, unit, low, high, mark].join(' | ')));
    const missing = coefficientsIn(tables).filter(({ value, unit, low, high, origin }) => {
      return !has.has([value, unit, low, high, origin.kind].join(' | '));
    });
    expect(missing.map(({ at }) => at)).toEqual([]);
  });

  test('says of each what it is, its unit, and where it is from, once in its group', () => {
    for (const { title, figures } of groups) {
      expect(figures.length, title).toBeGreaterThan(0);
      const names = figures.map(({ of, label }) => `${of}: ${label}`);
      expect(
        names.filter((name, at) => names.indexOf(name) !== at),
        title,
      ).toEqual([]);
    }
    for (const { of, label, value, unit, from } of all) {
      expect(label, of).toMatch(/^[A-Z0-9]/);
      expect(Number.isFinite(value), label).toBe(true);
      expect(unit, label).toMatch(/\S/);
      expect(from, label).toMatch(/^(Published: |Common practice|From memory|A judgement of this sheet: ).*\.$/s);
    }
  });

  test('is the document that goes with the page; -u writes it anew', async () => {
    const head = 'about,of,figure,value,unit,low,high,mark,origin';
    const lines = groups.flatMap(({ title, figures }) => figures.map((figure) => lineOf(title, figure)));
    await expect(`${[head, ...lines].join('\n')}\n`).toMatchFileSnapshot('../../../public/coefficients.csv');
  });
});
