import { describe, expect, test } from 'vitest';
import { type CartonLook, isToBeWarnedOf, recordOf } from '../../../src/formula/time/carton-record';
import { askWhichCarton, describeRecord, warnOfCarton } from '../../../src/formula/time/carton-words';

function look(batch: string, found: CartonLook['found'], hours: number, more: Partial<CartonLook> = {}): CartonLook {
  return { batch, found, at: 10_000 + hours, hours, expected: 30, acidity: null, ...more };
}

describe('recordOf', () => {
  test('counts makes, not looks: flat on the first day and ready on the second is once', () => {
    const record = recordOf([
      look('b1', 'flat', 24),
      look('b1', 'ready', 36),
      look('b2', 'looked', 48, { acidity: 4.5 }),
    ]);
    expect(record).toMatchObject({ worked: 2, refused: 0, open: 0, days: { least: 1.5, most: 2 }, waited: null });
    expect(record.share?.high).toBe(1);
    expect(isToBeWarnedOf(record)).toBe(false);
  });

  test('“never fermented in five days” is an answer, and so is given up sooner; two days are none yet', () => {
    const record = recordOf([
      look('b1', 'flat', 120),
      look('b2', 'flat', 70, { gaveUp: true }),
      look('b3', 'flat', 48),
    ]);
    expect(record).toMatchObject({ worked: 0, refused: 2, open: 1, days: null, waited: 5 });
    expect(record.share?.low).toBe(0);
    expect(record.share?.high).toBeLessThan(0.5);
    expect(isToBeWarnedOf(record)).toBe(true);
  });

  test('made again in the same column is another try', () => {
    const again = { ...look('b1', 'flat', 120), at: 20_000 };
    expect(recordOf([look('b1', 'ready', 30), again])).toMatchObject({ worked: 1, refused: 1 });
  });

  test('of no looks is nothing', () => {
    expect(recordOf([])).toEqual({ worked: 0, refused: 0, open: 0, share: null, days: null, waited: null });
  });
});

describe('in words', () => {
  const words = (looks: readonly CartonLook[]) => describeRecord(recordOf(looks), false);

  test('is how often it turned, in how many days, and how often that is likely', () => {
    expect(words([])).toBe('Not tried yet.');
    expect(words([look('b1', 'flat', 20)])).toBe('Tried, not over yet.');
    expect(
      words([look('b1', 'ready', 24), look('b2', 'ready', 48), look('b3', 'flat', 130), look('b4', 'flat', 9)]),
    ).toBe('Turned 2 of 3 times, in 1–2 days. Likely works 32–89 % of the time. Another is not over yet.');
    expect(words([look('b1', 'flat', 120), look('b2', 'flat', 96, { gaveUp: true })])).toBe(
      'Never turned: tried 2 times, given up after 5 days. Likely works 0–45 % of the time.',
    );
  });

  test('is a warning where it refused', () => {
    const record = recordOf([look('b1', 'flat', 120), look('b2', 'flat', 120)]);
    expect(warnOfCarton('Blue carton', record)).toBe(
      '“Blue carton” did not ferment either time it was tried. Take another carton, or a homemade milk.',
    );
    expect(warnOfCarton('Blue carton', recordOf([look('b1', 'flat', 120)]))).toContain('the one time it was tried');
    const thrice = recordOf(['b1', 'b2', 'b3'].map((batch) => look(batch, 'flat', 120)));
    expect(warnOfCarton('Blue carton', thrice)).toContain('any of the 3 times it was tried');
    const most = recordOf([look('b1', 'flat', 120), look('b2', 'flat', 120), look('b3', 'ready', 30)]);
    expect(warnOfCarton('Blue carton', most)).toContain('2 of the 3 times it was tried');
    expect(askWhichCarton(['Blue', 'Green', 'Red'])).toContain('“Blue” and 2 more did not ferment.');
  });
});
