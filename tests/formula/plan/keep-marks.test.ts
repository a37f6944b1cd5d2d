import fc from 'fast-check';
import { afterEach, describe, expect, test } from 'vitest';
import { dayAfter } from '../../../src/batch/document/calendar-day';
import { instantOf, wallClock, wallOf } from '../../../src/batch/reading/local-time';
import { formulate } from '../../../src/formula/engine/formulate';
import type { Making } from '../../../src/formula/plan/making';
import { overAt, planBatch } from '../../../src/formula/plan/plan-batch';
import { type Schedule, strainedAt } from '../../../src/formula/plan/schedule';
import { makingOf } from '../../../src/formula/plan/work-out-making';
import { endOfDay } from '../../../src/formula/time/span';
import { usualScoopSet } from '../../../src/measure/scoops';
import { recipeOf, typed } from '../../batches';
import { at, clocks, makings, makingWith, starts, usualClock, wait } from './makings';

const kitchen = { leads: 'metric', cups: 'us', scoops: usualScoopSet, decimalComma: false } as const;
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

  test('is never longer for a late first glass: none is planned after the last day', () => {
    fc.assert(
      fc.property(makings, starts, clocks, fc.integer({ min: 0, max: 2 }), (making, start, clock, last) => {
        const keep = { best: 0, last };
        const { schedule } = planBatch({ ...making, keep }, { by: 'start', at: start }, clock);
        const strained = strainedAt(schedule) ?? expect.fail('not strained');
        expect(when(schedule, 'last')).toBe(clock.later(strained, last));
        const end = endOfDay(when(schedule, 'last'), clock);
        const { drink } = planBatch({ ...making, keep: null }, { by: 'start', at: start }, clock).schedule;
        expect(schedule.drink).toBe((drink ?? end) < end ? drink : null);
        expect(schedule.stopped === null).toBe(schedule.drink !== null);
        if (schedule.drink === null) for (const { at } of schedule.steps) expect(at).toBeLessThan(end);
      }),
      { numRuns: 100 },
    );
  });

  test('ends a plan whose second ferment is longer, and says how to mend it', () => {
    const second = { bottle: 15, wait: wait(300, 300, 300), fridge: 5 };
    const plan = planned(at(0, 8), { second });
    expect(plan.schedule.steps.map(({ kind }) => kind).slice(-4)).toEqual(['strain', 'bottle', 'best', 'last']);
    expect([when(plan.schedule, 'best'), when(plan.schedule, 'last')]).toEqual([at(7, 7), at(9, 7)]);
    expect(plan.schedule).toMatchObject({ cold: null, drink: null });
    expect(plan.schedule.stopped).toBe(
      'The first glass would come after the last day to drink it: it keeps no longer than 8 days from straining. Shorten the second ferment.',
    );
    expect(plan.schedule.waits.map(({ kind }) => kind)).toEqual(['soak', 'ferment', 'second']);
    expect(overAt(plan, usualClock)).toBe(at(10, 0));
  });

  test('has a first glass on its last day, whatever the hour', () => {
    // Strained at 7:00, cold at 11:15.
    const { schedule } = planned(at(0, 8), { keep: { best: 0, last: 0 } });
    expect(schedule.drink).toBe(at(1, 11, 15));
    expect(when(schedule, 'last')).toBe(at(1, 7));
    // Strained at 21:30, cold at 1:45.
    const late = planned(at(0, 8), {
      ...{ soak: null, ferment: { wait: wait(12.5, 12.5, 12.5) }, make: 60 },
      keep: { best: 0, last: 0 },
    });
    expect(late.schedule.drink).toBeNull();
    expect(late.schedule.stopped).toContain('no longer than the day it is strained. Plan it so that');
  });

  test('of almonds with a second ferment of 300 h ends on the day that label and card name', () => {
    process.env.TZ = 'Europe/Berlin';
    const clock = wallClock({ from: '22:00', to: '07:00' });
    const formulation = formulate(recipeOf({ given: [typed('bottleTime', 300)] }));
    const making = makingOf(formulation, { id: 'b1', name: 'Almond' }, kitchen);
    const from = instantOf('2026-11-28T08:00') ?? expect.fail('no time');
    const { schedule } = planBatch(making, { by: 'start', at: from }, clock);
    expect(wallOf(strainedAt(schedule) ?? expect.fail('not strained')).slice(0, 10)).toBe('2026-11-29');
    expect(wallOf(when(schedule, 'last')).slice(0, 10)).toBe('2026-12-07');
    expect(schedule.drink).toBeNull();
    expect(schedule.stopped).toContain('Shorten the second ferment.');
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
