import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Making } from '../../../src/formula/plan/making';
import { firstGlassFrom, planBatch, replanner } from '../../../src/formula/plan/plan-batch';
import { nightWork } from '../../../src/formula/plan/schedule';
import { at, clocks, day, makings, makingWith, starts, steadyClock, usualClock, wait } from './makings';

describe('a batch back from its first glass', () => {
  test('is begun as late as the quiet hours allow', () => {
    const { schedule } = planBatch(makingWith(), { by: 'drink', at: at(2, 12) }, usualClock);
    // In the fridge by 8:00, so strained by 7:45: a ferment of 12 h from 19:45 on, made from 19:05 on.
    expect(schedule.cold).toBe(at(2, 8));
    expect(schedule.start).toBe(at(1, 8, 55));
    expect(schedule.drink).toBe(at(2, 12));
    expect(nightWork(schedule)).toEqual([]);
  });

  test('is begun as late as it can be where no start keeps out of the quiet hours', () => {
    const busy = makingWith({ soak: null, ferment: { wait: wait(12, 12, 12) } });
    const plan = planBatch(busy, { by: 'drink', at: at(2, 12) }, steadyClock(12 * 60, 11 * 60));
    expect(plan.schedule.cold).toBe(at(2, 8));
    expect(nightWork(plan.schedule).length).toBeGreaterThan(0);
    expect(plan.offers).toEqual([]);
  });

  test('is not planned where the first ferment has no time', () => {
    const cold = makingWith({ ferment: { why: 'It is too cold.' } });
    const { schedule, offers } = planBatch(cold, { by: 'drink', at: at(2, 12) }, usualClock);
    expect(schedule.steps).toEqual([]);
    expect(schedule.stopped).toBe('It is too cold.');
    expect(offers).toEqual([]);
  });

  test('is found for a ferment of weeks and a plan a day of quiet long', () => {
    const slow = makingWith({ ferment: { wait: wait(100, 900, 9000) } });
    const { schedule } = planBatch(slow, { by: 'drink', at: at(80, 12) }, usualClock);
    expect(nightWork(schedule)).toEqual([]);
    expect(schedule.drink).toBe(at(80, 12));
  });

  test('that was planned forwards is begun at the same time or later', () => {
    fc.assert(
      fc.property(makings, starts, clocks, (making, start, clock) => {
        const forwards = planBatch(making, { by: 'start', at: start }, clock).schedule;
        fc.pre(nightWork(forwards).length === 0);
        const drink = forwards.drink ?? expect.fail('there is no first glass');
        const backwards = planBatch(making, { by: 'drink', at: drink }, clock).schedule;
        expect(backwards.start).toBeGreaterThanOrEqual(start);
        expect(backwards.drink).toBe(drink);
      }),
      { numRuns: 20 },
    );
  });

  const quarters = Array.from({ length: 96 }, (_, quarter) => at(5, 0, 15 * quarter));
  const kitchens: readonly (readonly [string, Partial<Making>])[] = [
    ['soaked almonds', {}],
    ['a milk that is not soaked', { soak: null }],
    ['a second ferment', { second: { bottle: 20, wait: wait(12, 24, 48), fridge: 5 } }],
    ['times that were typed', { soak: { minutes: 10, wait: wait(8, 8, 8) }, ferment: { wait: wait(24, 24, 24) } }],
    ['a kefir that keeps for the day', { keep: { best: 0, last: 0 }, chill: wait(4, 4, 4) }],
    ['a kefir that keeps for two days', { keep: { best: 1, last: 2 }, chill: wait(4, 4, 24) }],
  ];

  test.each(kitchens)(
    'accepts whatever first glass planning forwards finds, at every quarter of a day: %s',
    (_, changes) => {
      const making = makingWith(changes);
      for (const clock of [usualClock, steadyClock(8 * 60, 18 * 60)]) {
        for (const from of quarters) {
          const glass = firstGlassFrom(making, from, clock) ?? expect.fail(`none from ${from % day}`);
          expect(glass.start).toBeGreaterThanOrEqual(from);
          const { schedule } = planBatch(making, { by: 'drink', at: glass.at, from: glass.start }, clock);
          const asked = `from ${from % day} for ${glass.at - from}`;
          expect(schedule.start, asked).toBeGreaterThanOrEqual(glass.start);
          expect([schedule.drink, schedule.stopped], asked).toEqual([glass.at, null]);
        }
      }
    },
  );

  test('accepts whatever first glass planning forwards finds, of any batch and quiet hours', () => {
    fc.assert(
      fc.property(makings, starts, clocks, (making, from, clock) => {
        const glass = firstGlassFrom(making, from, clock) ?? expect.fail('there is no first glass');
        const { schedule } = planBatch(making, { by: 'drink', at: glass.at, from: glass.start }, clock);
        expect(schedule.start).toBeGreaterThanOrEqual(from);
        expect(schedule.drink).toBe(glass.at);
      }),
      { numRuns: 40 },
    );
  });

  test('is cold in time, and begun no later than its shortest waits allow', () => {
    fc.assert(
      fc.property(makings, starts, clocks, (making, wanted, clock) => {
        const { schedule } = planBatch(making, { by: 'drink', at: wanted }, clock);
        expect(schedule.drink).toBe(wanted);
        expect((schedule.cold ?? wanted) + making.chill.low).toBeLessThanOrEqual(wanted);
        const again = planBatch(making, { by: 'start', at: schedule.start }, clock).schedule;
        expect(again.cold).toBe(schedule.cold);
      }),
      { numRuns: 20 },
    );
  });
});

describe('a batch that is too long to be placed', () => {
  const far = wait(1e6, 1e6, 1e6);
  test.each([
    ['the heat step', { make: 1e300 }],
    ['the heat step', { make: Number.POSITIVE_INFINITY }],
    ['the heat step', { make: Number.NaN }],
    ['the soak', { soak: { minutes: 10, wait: far } }],
    ['the first ferment', { ferment: { wait: far } }],
    ['the second ferment', { second: { bottle: 15, wait: far, fridge: 5 } }],
    ['how long it keeps', { keep: { best: 6, last: 1e9 } }],
    ['the days of waiting', { checks: 1e9 }],
  ])('is refused at once, in words that name %s', (part, changes) => {
    for (const by of ['start', 'drink'] as const) {
      const plan = planBatch(makingWith(changes), { by, at: at(80, 12) }, usualClock);
      expect(plan.schedule).toMatchObject({ start: at(80, 12), steps: [], waits: [], cold: null, drink: null });
      expect(plan.schedule.stopped).toContain('more than 1000 days');
      expect(plan.schedule.stopped).toContain(`Look at ${part}`);
      expect(plan.offers).toEqual([]);
    }
  });
});

describe('a batch from its start on', () => {
  const stuck = makingWith({ soak: null, ferment: { wait: wait(11, 12, 13) } });

  test('is offered the nearest starts before and after that keep out of the night', () => {
    const plan = planBatch(stuck, { by: 'start', at: at(1, 14, 20) }, usualClock);
    // The jar stands from 15:00 on. Strained from 21:45 back: from 10:45 or before; from 7:00 on: from 18:00 or after.
    expect(plan.offers).toEqual([at(1, 10, 5), at(1, 17, 20)]);
    for (const start of plan.offers) expect(nightWork(replanner(plan, day, usualClock)(start))).toEqual([]);
  });

  test('is offered nothing where it keeps out of the night already', () => {
    expect(planBatch(makingWith(), { by: 'start', at: at(1, 8) }, usualClock).offers).toEqual([]);
  });

  test('is offered only starts that mend it', () => {
    fc.assert(
      fc.property(makings, starts, clocks, (making, start, clock) => {
        const plan = planBatch(making, { by: 'start', at: start }, clock);
        for (const offer of plan.offers) {
          expect(nightWork(replanner(plan, 2 * day, clock)(offer))).toEqual([]);
          expect(Math.abs(offer - start)).toBeLessThanOrEqual(2 * day);
        }
      }),
      { numRuns: 20 },
    );
  });
});
