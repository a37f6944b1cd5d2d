import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import { expectedAcidityOf, firstReading } from '../../../src/formula/time/expected-acidity';
import { describeExpected } from '../../../src/formula/time/expected-words';
import { expectedOf } from '../../../src/reference/expected-acidity';
import { recipeOf, sourceIds, typed } from '../../batches';

const at = (celsius: number, of: Partial<Parameters<typeof recipeOf>[0]> = {}) =>
  formulate(recipeOf({ ...of, given: [typed('roomTemperature', celsius), ...(of.given ?? [])] }));

describe('the pH to expect', () => {
  test('is that of the table in its room, drawn straight between its hours', () => {
    const nut = at(23.5);
    expect(expectedAcidityOf(nut, 0)).toMatchObject({ low: 6.2, high: 7 });
    expect(expectedAcidityOf(nut, 12)?.low).toBeCloseTo(4.7, 6);
    // Half way from 12 to 24 h: between 4.7 and 4, and between 5.8 and 4.9.
    expect(expectedAcidityOf(nut, 18)?.low).toBeCloseTo(4.35, 6);
    expect(expectedAcidityOf(nut, 18)?.high).toBeCloseTo(5.35, 6);
    expect(expectedAcidityOf(nut, 500)).toMatchObject({ low: 3.7, high: 4.4 });
  });

  test('goes from the nearer end of the rooms of the table, as the ready time does', () => {
    expect(expectedAcidityOf(at(22), 12)).toMatchObject(expectedAcidityOf(at(25), 12) ?? { low: 'unknown' });
    // 21 °C takes 1.1 times as long as 22 °C by the nearest of the growth models.
    const slower = Number(at(21).rows.readyTime.value) / Number(at(22).rows.readyTime.value);
    expect(expectedAcidityOf(at(21), 12 * slower)?.low).toBeCloseTo(4.7, 6);
  });

  test('goes with the ready time: higher in a cool room and with few grains, lower in a warm one', () => {
    const middle = expectedAcidityOf(at(23.5), 12)?.high ?? 0;
    expect(expectedAcidityOf(at(19), 12)?.high).toBeGreaterThan(middle);
    expect(expectedAcidityOf(at(28), 12)?.high).toBeLessThan(middle);
    expect(expectedAcidityOf(at(23.5, { given: [typed('grainRate', 25)] }), 12)?.high).toBeGreaterThan(middle);
  });

  test('is unknown of cartons and coconut water, and where no time can be told', () => {
    for (const source of ['cartonPlain', 'cartonSweetened', 'coconutWater', 'flax', 'tigerNut'] as const) {
      expect(expectedAcidityOf(at(21, { source }), 12), source).toBeNull();
    }
    expect(expectedAcidityOf(at(35), 12)).toBeNull();
    expect(describeExpected(at(35), null, false)).toBe('Which pH to expect of almonds is unknown here.');
  });

  test('falls with the hours, for every source that has one', () => {
    const hours = fc.double({ min: 0, max: 100, noNaN: true });
    for (const source of sourceIds.filter((id) => expectedOf[id] !== undefined)) {
      const batch = at(21, { source });
      fc.assert(
        fc.property(hours, hours, (one, other) => {
          const [early, late] = [
            expectedAcidityOf(batch, Math.min(one, other)),
            expectedAcidityOf(batch, Math.max(one, other)),
          ];
          if (early === null || late === null) return expect.fail('unknown');
          expect(late.low).toBeLessThanOrEqual(early.low + 1e-9);
          expect(late.high).toBeLessThanOrEqual(early.high + 1e-9);
          expect(late.high).toBeGreaterThan(late.low);
        }),
        { numRuns: 20 },
      );
    }
  });

  test('is said for the first reading, the end of the time, and now', () => {
    expect(firstReading(13)).toBe(6);
    expect(describeExpected(at(23.5), 15, false).replaceAll('\u00A0', ' ')).toMatch(
      /^To expect with lively grains: pH \d\.\d to \d\.\d after 8 h, \d\.\d to \d\.\d after 17 h\. Now, after 15 h: \d/,
    );
    expect(describeExpected(at(23.5), null, true)).toMatch(/pH \d,\d to \d,\d/);
  });
});
