import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { instantOf, wallClock, wallOf } from '../../../src/batch/reading/local-time';
import type { Making } from '../../../src/formula/plan/making';
import {
  drinkAt,
  nightWork,
  planForwards,
  type Schedule,
  type StepKind,
  secondHoursOf,
} from '../../../src/formula/plan/schedule';
import { isInNight } from '../../../src/formula/time/span';
import { at, clocks, day, makings, makingWith, starts, usualClock, wait } from './makings';

const nights = usualClock.nights(at(-5, 0), at(20, 0));

function when(schedule: Schedule, id: string): number {
  return schedule.steps.find((step) => step.id === id)?.at ?? expect.fail(`there is no ${id}`);
}

describe('a batch from its start on', () => {
  test('waits as long as is likely where that keeps out of the night', () => {
    const plan = planForwards(makingWith(), at(0, 8, 0), nights);
    // Soak 8:10 to 18:10, make until 18:50, ferment until 6:50 the next day: in the night, so until 7:00.
    expect(when(plan, 'soak')).toBe(at(0, 8));
    expect(when(plan, 'make')).toBe(at(0, 18, 10));
    expect(when(plan, 'strain')).toBe(at(1, 7));
    expect(when(plan, 'drink')).toBe(at(1, 11, 15));
    expect(nightWork(plan)).toEqual([]);
  });

  test('shortens a wait where the evening is nearer than the morning', () => {
    // Likely until 23:00; the strainer is washed by 22:00 if it ends at 21:45.
    const plan = planForwards(makingWith({ soak: null }), at(0, 10, 20), nights);
    expect(when(plan, 'strain')).toBe(at(0, 21, 45));
  });

  test('keeps the likely time and marks the work where no time fits', () => {
    const plan = planForwards(makingWith({ soak: null, ferment: { wait: wait(11, 12, 13) } }), at(0, 14, 20), nights);
    expect(when(plan, 'strain')).toBe(at(1, 3));
    expect(nightWork(plan).map(({ id }) => id)).toEqual(['strain']);
  });

  test('strains so that the bottles can go into the fridge by day', () => {
    const bottled = (second: Making['second']) =>
      planForwards(makingWith({ soak: null, second }), at(0, 1, 20), nights);
    // Likely ready at 14:00; eight hours after bottling the fridge would be due at 22:30.
    const exact = bottled({ bottle: 15, wait: wait(8, 8, 8), fridge: 5 });
    expect([when(exact, 'strain'), when(exact, 'chill')]).toEqual([at(0, 13, 25), at(0, 21, 55)]);
    const flexible = bottled({ bottle: 15, wait: wait(6, 8, 10), fridge: 5 });
    expect([when(flexible, 'strain'), when(flexible, 'chill')]).toEqual([at(0, 14), at(0, 21, 55)]);
    // Strained from 14:00 and bottled from 14:15, each in a quarter of an hour.
    expect([secondHoursOf(flexible), secondHoursOf(bottled(null))]).toEqual([445 / 60, null]);
    const hopeless = bottled({ bottle: 15, wait: wait(12, 12, 12), fridge: 5 });
    expect(nightWork(hopeless).map(({ id }) => id)).toEqual(['make', 'chill']);
    expect(when(hopeless, 'strain')).toBe(at(0, 14));
  });

  test('tastes at the first time awake from which it may be ready', () => {
    const plan = planForwards(makingWith({ soak: null }), at(0, 20, 20), nights);
    // It may be ready from 5:00, likely at 9:00.
    expect(when(plan, 'taste')).toBe(at(1, 7));
    expect(when(plan, 'strain')).toBe(at(1, 9));
  });

  test('looks at an opened carton each day until its stop', () => {
    const plan = planForwards(makingWith({ soak: null, checks: 3 }), at(0, 8, 20), nights);
    expect(['check-1', 'check-2', 'check-3'].map((id) => when(plan, id))).toEqual([at(1, 9), at(2, 9), at(3, 9)]);
  });

  test('looks at it by day, the last time rather before its stop than after it', () => {
    // In the jar at 4:00, nearer to the morning; but at 4:00 on the third day is the stop.
    const plan = planForwards(makingWith({ soak: null, checks: 3 }), at(0, 3, 20), nights);
    expect(['check-1', 'check-2', 'check-3'].map((id) => when(plan, id))).toEqual([at(1, 7), at(2, 7), at(2, 21, 55)]);
  });

  test('looks at it at the stop itself where no time before it is free', () => {
    const always = [{ from: at(-9, 0), to: at(29, 0) }];
    const plan = planForwards(makingWith({ soak: null, checks: 1 }), at(0, 8, 20), always);
    const check = plan.steps.find(({ id }) => id === 'check-1');
    expect(check).toMatchObject({ at: at(1, 9), inNight: true });
  });

  test('tests a slow homemade milk before it is strained, by its line', () => {
    const slow = (likely: number) =>
      planForwards(
        makingWith({ ...{ soak: null, checks: 1, turnsBy: 24 * 60 }, ferment: { wait: wait(likely, likely, 36) } }),
        at(0, 9, 20),
        nights,
      );
    // In the jar at 10:00; the line is at 10:00 on the next day.
    expect(when(slow(26), 'check-1')).toBe(at(1, 10));
    expect(when(slow(24), 'check-1')).toBe(at(1, 9, 55));
    expect(slow(24).steps.map(({ kind }) => kind)).toEqual(['make', 'check', 'strain', 'drink']);
    expect(slow(23).steps.map(({ kind }) => kind)).toEqual(['make', 'strain', 'drink']);
  });

  test('says why it goes no further where the first ferment has no time', () => {
    const plan = planForwards(makingWith({ ferment: { why: 'It is too cold.' } }), at(0, 8), nights);
    expect(plan.steps.map(({ id }) => id)).toEqual(['soak', 'make']);
    expect(plan).toMatchObject({ stopped: 'It is too cold.', drink: null, cold: null });
  });
});

const order: readonly StepKind[] = ['soak', 'make', 'strain', 'bottle', 'chill', 'drink'];

function expectSound(making: Making, plan: Schedule): void {
  const found = order.flatMap((kind) => plan.steps.filter((step) => step.kind === kind));
  found.forEach((step, place) => {
    const before = found[place - 1];
    if (before !== undefined) expect(step.at).toBeGreaterThanOrEqual(before.at + before.minutes);
  });
  plan.steps.forEach((step, place) => {
    expect(step.at).toBeGreaterThanOrEqual(plan.steps[place - 1]?.at ?? step.at);
  });
  for (const { from, to, range } of plan.waits) {
    expect(to - from).toBeGreaterThanOrEqual(range.low);
    expect(to - from).toBeLessThanOrEqual(range.high);
  }
  const taste = plan.steps.find(({ kind }) => kind === 'taste');
  const ferment = plan.waits.find(({ kind }) => kind === 'ferment');
  if (taste !== undefined && ferment !== undefined) {
    expect(taste.at).toBeGreaterThanOrEqual(ferment.from + ferment.range.low);
    expect(taste.at + making.taste).toBeLessThanOrEqual(ferment.to);
  }
}

describe('any batch', () => {
  test('has its steps in order and its waits within their ranges', () => {
    fc.assert(
      fc.property(makings, starts, clocks, (making, start, clock) => {
        expectSound(making, planForwards(making, start, clock.nights(start - 3 * day, start + 30 * day)));
      }),
    );
  });

  test('needs no hands in the night that are not marked', () => {
    fc.assert(
      fc.property(makings, starts, clocks, (making, start, clock) => {
        const quiet = clock.nights(start - 3 * day, start + 30 * day);
        for (const step of planForwards(making, start, quiet).steps) {
          expect(step.inNight).toBe(
            step.hands && quiet.some((night) => step.at < night.to && step.at + step.minutes > night.from),
          );
        }
      }),
    );
  });

  test('is looked at for the last time by its stop, and in the night only where the day before has no free time', () => {
    fc.assert(
      fc.property(makings, starts, clocks, fc.integer({ min: 1, max: 5 }), (making, start, clock, checks) => {
        const quiet = clock.nights(start - 3 * day, start + 30 * day);
        const plan = planForwards({ ...making, checks }, start, quiet);
        const jarred = plan.waits.find(({ kind }) => kind === 'ferment')?.from ?? expect.fail('there is no ferment');
        const stop = jarred + checks * day;
        const all = Array.from({ length: checks }, (_, place) => when(plan, `check-${place + 1}`));
        expect(all).toEqual([...all].sort((one, other) => one - other));
        const last = all.at(-1) ?? expect.fail('there is no check');
        expect(last).toBeLessThanOrEqual(stop);
        if (!isInNight(last, making.taste, quiet)) return;
        expect(last).toBe(stop);
        for (let at = stop - day; at <= stop; at += 1) expect(isInNight(at, making.taste, quiet)).toBe(true);
      }),
    );
  });

  test('is marked only where no length of the wait before it, tried one by one, keeps it out of the night', () => {
    const short = makings.map((making) => ({ ...making, second: null }));
    fc.assert(
      fc.property(short, starts, clocks, (making, start, clock) => {
        const quiet = clock.nights(start - 3 * day, start + 30 * day);
        const plan = planForwards(making, start, quiet);
        const ferment = plan.waits.find(({ kind }) => kind === 'ferment') ?? expect.fail('there is no ferment');
        const free: number[] = [];
        for (let length = ferment.range.low; length <= ferment.range.high; length += 1) {
          if (!isInNight(ferment.from + length, making.strain, quiet))
            free.push(Math.abs(length - ferment.range.likely));
        }
        const away = Math.abs(ferment.to - ferment.from - ferment.range.likely);
        expect(away).toBe(free.length === 0 ? 0 : Math.min(...free));
      }),
      { numRuns: 60 },
    );
  });

  test('is drunk at another time without anything else moving', () => {
    fc.assert(
      fc.property(makings, starts, clocks, fc.integer({ min: 0, max: 2000 }), (making, start, clock, later) => {
        const plan = planForwards(making, start, clock.nights(start - 3 * day, start + 30 * day));
        const moved = drinkAt(plan, (plan.drink ?? 0) + later);
        const others = (schedule: Schedule) => schedule.steps.filter(({ kind }) => kind !== 'drink');
        expect(others(moved)).toEqual(others(plan));
        expect(moved.drink).toBe((plan.drink ?? 0) + later);
      }),
    );
  });
});

describe('a night in which clocks change', () => {
  const home = process.env.TZ;
  test.each([
    // Clocks go forward in the first two and back in the others.
    ['Europe/Berlin', '2026-03-28T19:20', '2026-03-29T09:00'],
    ['America/New_York', '2026-03-07T19:20', '2026-03-08T09:00'],
    ['Europe/Berlin', '2026-10-24T19:20', '2026-10-25T07:00'],
    ['Australia/Lord_Howe', '2026-04-04T19:20', '2026-04-05T07:30'],
  ])('in %s from %s on, a ferment of twelve hours is over at %s', (zone, start, over) => {
    process.env.TZ = zone;
    try {
      const from = instantOf(start) ?? expect.fail(start);
      const clock = wallClock({ from: '22:00', to: '07:00' });
      const plan = planForwards(makingWith({ soak: null }), from, clock.nights(from - day, from + 9 * day));
      expect(wallOf(when(plan, 'strain'))).toBe(over);
      expect(when(plan, 'strain') - from - 40).toBe(12 * 60);
    } finally {
      if (home === undefined) delete process.env.TZ;
      else process.env.TZ = home;
    }
  });
});
