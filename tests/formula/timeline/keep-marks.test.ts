import fc from 'fast-check';
import { afterEach, describe, expect, test } from 'vitest';
import { dayAfter } from '../../../src/batch/calendar-day';
import { instantOf, wallClock, wallOf } from '../../../src/batch/local-time';
import type { Making } from '../../../src/formula/timeline/making';
import { overAt, planBatch } from '../../../src/formula/timeline/plan-batch';
import { type Schedule, strainedAt } from '../../../src/formula/timeline/schedule';
import { at, clocks, makings, makingWith, starts, usualClock } from './makings';

const home = process.env.TZ;

afterEach(() => {
  if (home === undefined) delete process.env.TZ;
  else process.env.TZ = home;
});

function when(schedule: Schedule, kind: string): number {
  return schedule.steps.find((step) => step.kind === kind)?.at ?? expect.fail(`there is no ${kind}`);
}

function planned(start: number, changes: Partial<Making> = {}) {
  return planBatch(makingWith(changes), { by: 'start', at: start }, usualClock);
}

describe('how long a batch keeps', () => {
  test('is counted from straining, to the day to taste and the day to use it up', () => {
    const { schedule } = planned(at(0, 8));
    expect(strainedAt(schedule)).toBe(at(1, 7));
    expect([when(schedule, 'best'), when(schedule, 'last')]).toEqual([at(7, 7), at(9, 7)]);
  });

  test('is one day where both are the same, and none where it is not known', () => {
    const kinds = (keep: Making['keep']) => planned(at(0, 8), { keep }).schedule.steps.map(({ kind }) => kind);
    expect(kinds({ best: 7, last: 7 }).slice(-2)).toEqual(['drink', 'last']);
    expect(kinds(null).at(-1)).toBe('drink');
  });

  test('never ends before the first glass', () => {
    fc.assert(
      fc.property(makings, starts, clocks, (making, start, clock) => {
        const { schedule } = planBatch({ ...making, keep: { best: 1, last: 2 } }, { by: 'start', at: start }, clock);
        expect(when(schedule, 'best')).toBeGreaterThanOrEqual(schedule.drink ?? expect.fail('no glass'));
        expect(when(schedule, 'last')).toBeGreaterThanOrEqual(when(schedule, 'best'));
      }),
      { numRuns: 40 },
    );
  });

  // Strained within an hour of midnight, with clocks changing in the week after.
  test.each([
    ['Europe/Berlin', '2026-03-24T10:40'],
    ['Europe/Berlin', '2026-10-20T11:45'],
    ['America/New_York', '2026-10-29T10:55'],
    ['Australia/Lord_Howe', '2026-04-01T11:40'],
    ['Asia/Kolkata', '2026-11-28T11:00'],
  ])('in %s from %s on ends on the day that a label names', (zone, start) => {
    process.env.TZ = zone;
    const clock = wallClock({ from: '03:00', to: '03:00' });
    const from = instantOf(start) ?? expect.fail('no time');
    const { schedule } = planBatch(makingWith({ soak: null }), { by: 'start', at: from }, clock);
    const made = wallOf(strainedAt(schedule) ?? expect.fail('not strained')).slice(0, 10);
    expect(wallOf(when(schedule, 'best')).slice(0, 10)).toBe(dayAfter(made, 6));
    expect(wallOf(when(schedule, 'last')).slice(0, 10)).toBe(dayAfter(made, 8));
  });
});

describe('a batch is over', () => {
  test('when its last day is', () => {
    expect(overAt(planned(at(0, 8)), usualClock)).toBe(at(10, 0));
  });

  test('as long after its jar was filled, where no one knows when it ferments', () => {
    const stuck = planned(at(0, 8), { soak: null, ferment: { why: 'It is too cold.' } });
    expect(overAt(stuck, usualClock)).toBe(at(9, 0));
  });
});
