import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import type { Look } from '../../../src/formula/time/looks';
import { daysOffered, waitingOf } from '../../../src/formula/time/waiting';
import { describeWaiting } from '../../../src/formula/time/waiting-words';
import { sources } from '../../../src/reference/sources';
import { recipeOf, sourceIds, typed } from '../../batches';

const almond = formulate(recipeOf());
const carton = formulate(recipeOf({ source: 'cartonPlain' }));

function measured(amount: number) {
  return formulate(recipeOf({ measured: { finalPH: { amount, kind: 'acidity' } } }));
}

/** Looks at one make whose grains went in at hour 1000. */
function look(hours: number | null, acidity: number | null = null, found: Look['found'] = 'looked'): Look {
  return { batch: 'b1', found, at: 1000 + (hours ?? 0), hours, expected: 12, acidity };
}

function judge(of: typeof almond, looks: readonly Look[], opened: { days: number } | null = null, elapsed = 0) {
  const waiting = waitingOf(of, looks, opened, 1000 + elapsed);
  return `${waiting.verdict}: ${waiting.reason}`;
}

describe('a homemade milk', () => {
  test('may not be waited for, whatever is said to have been opened', () => {
    const waiting = waitingOf(almond, [], { days: 14 }, null);
    expect(waiting).toMatchObject({ allowed: false, milk: 'homemade', days: 1, start: null });
    expect(waiting.cautions.map(({ id }) => id)).toEqual(['acidityLine', 'howToTest', 'waitOnlyCartons']);
  });

  test('that was not measured nobody can tell, in time and after it', () => {
    expect(judge(almond, [])).toBe('cannotTell: noReading');
    expect(judge(almond, [look(9, null, 'ready')])).toBe('cannotTell: noReading');
    expect(judge(almond, [look(9, null, 'ready')], null, 24.1)).toBe('cannotTell: noReadingInTime');
    expect(judge(almond, [look(30)])).toBe('cannotTell: noReadingInTime');
  });

  test('is acid enough at pH 4.6 within 24 h, both included', () => {
    expect(judge(almond, [look(14, 4.4)])).toBe('ready: acidEnough');
    expect(judge(almond, [look(24, 4.6)])).toBe('ready: acidEnough');
    expect(judge(almond, [look(14, 4.4)], null, 500)).toBe('ready: acidEnough');
  });

  test('above the line waits before 24 h and is thrown out from then on', () => {
    expect(judge(almond, [look(14, 4.61)])).toBe('wait: notYet');
    expect(judge(almond, [look(24, 4.61)])).toBe('throwOut: notInTime');
    expect(judge(almond, [look(14, 5)], null, 24.1)).toBe('throwOut: notInTime');
  });

  test('read acid only after 24 h nobody can tell', () => {
    expect(judge(almond, [look(14, 5), look(30, 4.4)])).toBe('cannotTell: readingTooLate');
  });

  test('goes by the last reading', () => {
    expect(judge(almond, [look(20, 4.9), look(12, 4.5)])).toBe('wait: notYet');
    expect(judge(almond, [look(12, 4.5), look(30, 4.9)])).toBe('throwOut: notInTime');
  });

  test('goes by its latest make alone', () => {
    const next = { ...look(2), at: 1100 };
    expect(judge(almond, [look(14, 4.4), next])).toBe('cannotTell: noReading');
    expect(judge(almond, [look(14, 5), { ...next, acidity: 4.5 }], null, 99)).toBe('ready: acidEnough');
  });

  test('dates a look without hours by when the grains went in', () => {
    expect(judge(almond, [look(2), { ...look(null, 4.4), at: 1010 }])).toBe('ready: acidEnough');
    expect(judge(almond, [look(2), { ...look(null, 4.4), at: 1040 }])).toBe('cannotTell: readingTooLate');
  });

  test('takes the measured pH of the sheet where the log has none', () => {
    expect(judge(measured(5), [])).toBe('wait: notYet');
    expect(judge(measured(5), [look(10)], null, 40)).toBe('throwOut: notInTime');
    expect(judge(measured(4.4), [look(10, 5)])).toBe('wait: notYet');
  });

  test('can’t be told from a pH at the line of which nobody says when it was taken', () => {
    for (const acidity of [4.4, 4.6]) {
      expect(judge(measured(acidity), [])).toBe('cannotTell: undatedReading');
      expect(judge(measured(acidity), [look(10)], null, 12)).toBe('cannotTell: undatedReading');
      expect(judge(measured(acidity), [look(10)], null, 40)).toBe('cannotTell: undatedAfter');
      expect(judge(almond, [look(null, acidity)])).toBe('cannotTell: undatedReading');
    }
    expect(judge(almond, [look(null, 4.61)])).toBe('wait: notYet');
    // Of two that nobody dated the more careful one counts.
    expect(judge(measured(5.2), [look(null, 4.3)])).toBe('wait: notYet');
    const later = { ...look(null, 4.9), at: 1010 };
    expect(judge(almond, [later, look(null, 4.4)])).toBe('wait: notYet');
    expect(judge(almond, [look(null)])).toBe('cannotTell: noReading');
  });

  const inRoom = (celsius: number) => formulate(recipeOf({ given: [typed('roomTemperature', celsius)] }));

  test('has less time in the warmth', () => {
    const warm = inRoom(26);
    expect(waitingOf(warm, [], null, null).turn).toEqual({ plain: 13, falling: 20 });
    expect(judge(warm, [look(13, 4.6)])).toBe('ready: acidEnough');
    expect(judge(warm, [look(14, 4.6)])).toBe('cannotTell: readingTooLate');
    expect(judge(warm, [look(6, 5.4), look(12, 5.1)], null, 13.1)).toBe('throwOut: notInTime');
    expect(judge(warm, [look(6, 5.4), look(12, 4.8)], null, 13.1)).toBe('wait: stillFalling');
    expect(judge(warm, [look(6, 5.4), look(12, 4.8)], null, 20.1)).toBe('throwOut: notInTime');
  });

  test('has up to 36 h in the cold, past 24 h only once it was seen to fall to 5.0 or less by then', () => {
    const cold = inRoom(17);
    const falling = [look(12, 5.4), look(22, 5)];
    expect(waitingOf(cold, [], null, null).turn).toEqual({ plain: 24, falling: 36 });
    expect(judge(cold, falling, null, 23)).toBe('wait: notYet');
    expect(judge(cold, falling, null, 30)).toBe('wait: stillFalling');
    expect(judge(cold, falling, null, 36.1)).toBe('throwOut: notInTime');
    expect(judge(cold, [...falling, look(36, 4.6)])).toBe('ready: acidEnough');
    expect(judge(cold, [...falling, look(37, 4.6)])).toBe('cannotTell: readingTooLate');
    expect(judge(cold, [...falling, look(36, 4.7)])).toBe('throwOut: notInTime');
    // It rose again, was never low enough, did not fall, or was read once only.
    expect(judge(cold, [...falling, look(30, 5.2)])).toBe('throwOut: notInTime');
    expect(judge(cold, [look(12, 5.6), look(22, 5.1)], null, 30)).toBe('throwOut: notInTime');
    expect(judge(cold, [look(12, 5), look(22, 5)], null, 30)).toBe('throwOut: notInTime');
    expect(judge(cold, [look(22, 4.8)], null, 30)).toBe('throwOut: notInTime');
    expect(judge(cold, [look(22, 4.8), look(30, 4.5)])).toBe('cannotTell: readingTooLate');
    expect(judge(cold, [look(12, 5.6), look(30, 4.5)])).toBe('cannotTell: readingTooLate');
  });

  test('counts as in the usual room where its own is not known', () => {
    expect(waitingOf(inRoom(-300), [], null, null).turn).toEqual({ plain: 24, falling: 24 });
  });

  test('read in time stays ready however long the clock runs on', () => {
    for (const elapsed of [14, 24, 25, 5000]) {
      expect(judge(measured(4.4), [look(14, 4.4)], null, elapsed)).toBe('ready: acidEnough');
      expect(judge(measured(4.4), [look(10, 5), look(14, 4.4)], null, elapsed)).toBe('ready: acidEnough');
      expect(judge(measured(4.4), [look(2), { ...look(null, 4.4), at: 1010 }], null, elapsed)).toBe(
        'ready: acidEnough',
      );
    }
  });
});

describe('a carton', () => {
  const opened = { days: 3 };

  test('has no longer than a homemade milk until it was opened for this batch', () => {
    const waiting = waitingOf(carton, [], null, null);
    expect(waiting).toMatchObject({ allowed: false, milk: 'cartonNotOpened', days: 1 });
    expect(judge(carton, [look(14, 5)], null, 25)).toBe('throwOut: notInTime');
  });

  test('opened for it may be waited for so many days', () => {
    expect(waitingOf(carton, [], opened, null)).toMatchObject({ allowed: true, milk: 'cartonOpened', days: 3 });
    expect(judge(carton, [look(40, 5)], opened, 71)).toBe('wait: notYet');
    expect(judge(carton, [look(40, 5), look(60, 4.5)], opened, 71)).toBe('ready: acidEnough');
  });

  test('is thrown out after the stop, unless it was read acid or tasted ready', () => {
    expect(judge(carton, [look(40, 5)], opened, 72.1)).toBe('throwOut: notInTime');
    expect(judge(carton, [look(20), look(40)], opened, 72.1)).toBe('throwOut: noSign');
    expect(judge(carton, [look(80, null, 'ready')], opened)).toBe('throwOut: noSign');
    expect(judge(carton, [look(72, 4.6)], opened, 100)).toBe('ready: acidEnough');
  });

  test('that tastes ready without a reading nobody can tell', () => {
    expect(judge(carton, [look(40, null, 'ready')], opened, 50)).toBe('cannotTell: tasteOnly');
    expect(judge(carton, [look(40, 5, 'ready')], opened, 80)).toBe('throwOut: notInTime');
  });

  test('has no line for the millennia until a look that is dated in the year 9999', () => {
    const late = { ...look(null), at: 70_000_000 };
    expect(waitingOf(almond, [look(9), late], null, null).lines.map(({ day }) => day)).toEqual([1, 2_916_625]);
  });

  test('has a line a day with what was found, and days after the stop only where something was', () => {
    const { lines } = waitingOf(carton, [look(20), look(24), look(25), look(100)], opened, null);
    expect(lines.map(({ day, looks }) => [day, looks.map(({ hours }) => hours)])).toEqual([
      [1, [20, 24]],
      [2, [25]],
      [3, []],
      [5, [100]],
    ]);
  });
});

test('days are waited for with cartons and neat cans only, of all sources', () => {
  for (const source of sourceIds) {
    const formulation = formulate(recipeOf({ source }));
    const { allowed } = waitingOf(formulation, [], { days: 3 }, null);
    expect(allowed, source).toBe(sources[source].heated && formulation.rows.waterRatio.value === 0);
  }
});

test('no order of the looks changes a verdict, and none is ready above the line', () => {
  const anyLook = fc.record({
    hours: fc.option(fc.integer({ min: 0, max: 120 })),
    acidity: fc.option(fc.constantFrom(4.2, 4.6, 4.7, 5.5)),
    found: fc.constantFrom('flat', 'ready', 'sour', 'looked'),
  });
  const anyLooks = fc.uniqueArray(anyLook, { maxLength: 6, selector: ({ hours }) => hours });
  fc.assert(
    fc.property(anyLooks, fc.constantFrom(almond, carton), fc.option(fc.constant({ days: 2 })), (all, of, opened) => {
      const looks = all.map(({ hours, acidity, found }) => look(hours, acidity, found));
      const { verdict } = waitingOf(of, looks, opened, 1050);
      expect(waitingOf(of, [...looks].reverse(), opened, 1050).verdict).toBe(verdict);
      if (looks.every(({ acidity }) => acidity === null || acidity > 4.6)) expect(verdict).not.toBe('ready');
    }),
  );
});

describe('describeWaiting', () => {
  const say = (of: typeof almond, looks: readonly Look[], opened: { days: number } | null = null) =>
    describeWaiting(waitingOf(of, looks, opened, null), false).replaceAll('\u00A0', ' ');

  test('says what to do, with the line and the time there is', () => {
    expect(say(almond, [])).toBe(
      'No pH yet, so nobody can tell. Measure by strip or meter before 24 h are over; if you have neither, buy strips first.',
    );
    expect(say(almond, [look(14, 4.4)])).toBe('It reached pH 4.6 within 24 h: acid enough by the usual line.');
    expect(say(almond, [look(26, 5)])).toBe('It did not reach pH 4.6 within 24 h: throw it out.');
    expect(say(carton, [look(26, 5)], { days: 3 })).toBe('Not at pH 4.6 yet. Measure again before 3 days are over.');
    expect(say(carton, [look(26)], { days: 1 })).toBe(
      'Over after 1 day, with no reading of pH 4.6 and no “ready”: throw it out.',
    );
    expect(say(carton, [look(26, null, 'ready')], { days: 3 })).toMatch(/tastes ready.*Measure now\.$/);
  });

  test('says the risk where nothing was measured in time, and to buy strips, and how long a falling one has', () => {
    expect(say(almond, [look(30)])).toMatch(/^No pH was measured within 24 h.*leave no taste.*pregnant.*Buy strips/);
    expect(say(almond, [look(30)])).not.toContain('throw');
    const cold = formulate(recipeOf({ given: [typed('roomTemperature', 17)] }));
    expect(say(cold, [look(12, 5.4), look(24, 4.9)])).toContain('it may stand until 36 h are over, no longer');
  });

  test('says of a reading without its time to log when it was taken', () => {
    expect(say(measured(4.4), [])).toBe(
      'It reads pH 4.6 or less, but the sheet does not know when it got there. Log when the reading was taken.',
    );
  });

  test('says to measure now where a day is over and nothing was measured', () => {
    expect(judge(carton, [look(24)], { days: 3 })).toBe('cannotTell: noReading');
    expect(say(carton, [look(26)], { days: 3 })).toBe('No pH in 24 h, so nobody can tell. Measure now.');
  });

  test('writes the line with the cook’s comma', () => {
    expect(describeWaiting(waitingOf(almond, [look(26, 5)], null, null), true)).toContain('pH\u00A04,6');
  });
});

test('a carton is given up after 5 days at most, or after what an older sheet says', () => {
  expect(daysOffered(3)).toEqual([1, 2, 3, 4, 5]);
  expect(daysOffered(14)).toEqual([1, 2, 3, 4, 5, 14]);
});
