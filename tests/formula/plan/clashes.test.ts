import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Clashes, findClashes } from '../../../src/formula/plan/clashes';
import type { Making } from '../../../src/formula/plan/making';
import { type BatchPlan, planBatch } from '../../../src/formula/plan/plan-batch';
import { nightWork } from '../../../src/formula/plan/schedule';
import { at, makings, makingWith, starts, steadyClock, usualClock, wait } from './makings';

function planned(start: number, changes: Partial<Making> = {}): BatchPlan {
  return planBatch(makingWith({ soak: null, ...changes }), { by: 'start', at: start }, usualClock);
}

const none: Clashes = { told: [], more: 0 };

const first = planned(at(1, 18, 20));
const oat = (changes: Partial<Making> = {}): Partial<Making> => ({
  ...{ batch: 'b2', name: 'Oat', grains: { kind: 'milk', name: 'Milk kefir grains', need: 20, have: null } },
  ...{ jars: { kind: 'litre', name: 'Litre jar', need: 1, have: null } },
  ...changes,
});

function kindsOf({ told }: Clashes) {
  return told.map(({ kind }) => kind);
}

describe('two batches', () => {
  test('that share nothing do not clash', () => {
    expect(findClashes([first, planned(at(1, 20), oat())], usualClock)).toEqual(none);
  });

  test('that need hands at the same time clash, and a later start mends it', () => {
    const second = planned(at(1, 18, 40), oat());
    const [clash, ...others] = findClashes([first, second], usualClock).told;
    expect(others).toEqual([]);
    if (clash?.kind !== 'hands') expect.fail('no hands clash');
    expect([clash.from, clash.to]).toEqual([at(1, 18, 40), at(1, 19)]);
    expect(clash.steps.map(({ id }) => id)).toEqual(['make', 'make']);
    // A quarter of an hour is not enough; after half an hour the first jar stands.
    expect(clash.remedy).toMatchObject({ batch: 'b2', name: 'Oat', start: at(1, 19, 10), wish: null });
  });

  test('that need the same grains clash, with what they need in all', () => {
    const second = planned(
      at(1, 20),
      oat({ grains: { kind: 'water', name: 'Water kefir grains', need: 30, have: null } }),
    );
    const [clash] = findClashes([first, second], usualClock).told;
    if (clash?.kind !== 'grains') expect.fail('no clash of grains');
    expect(clash).toMatchObject({ names: ['Almond', 'Oat'], need: 70, have: null, from: at(1, 20), to: at(2, 7, 15) });
    const later = clash.remedy?.start ?? expect.fail('no remedy');
    expect(later).toBeGreaterThanOrEqual(at(2, 7, 15));
  });

  test.each([
    [69, ['grains']],
    [70, []],
  ])('with %d g of grains on hand clash over %j', (have, expected) => {
    const grains = { kind: 'water', name: 'Water kefir grains', need: 30, have } as const;
    expect(kindsOf(findClashes([first, planned(at(1, 20), oat({ grains }))], usualClock))).toEqual(expected);
  });

  test('that need the same jars clash unless there are enough of them', () => {
    const jars = (have: number | null) => ({ kind: 'quartWide', name: 'Quart, wide mouth', need: 2, have }) as const;
    const clashes = (have: number | null) =>
      findClashes([first, planned(at(1, 20), oat({ jars: jars(have) }))], usualClock).told;
    expect(clashes(2)).toMatchObject([{ kind: 'jars', need: 3, have: 2 }]);
    expect(clashes(null)).toMatchObject([{ kind: 'jars', need: 3, have: null }]);
    expect(clashes(3)).toEqual([]);
  });

  test('one after the other share grains and jars without a clash', () => {
    const next = { batch: 'b2', name: 'Next', ferment: { wait: wait(10, 12, 14) } };
    expect(findClashes([first, planned(at(2, 17), next)], usualClock)).toEqual(none);
  });

  test('of which one has no time for its ferment hold nothing', () => {
    const stuck = planned(at(1, 20), { batch: 'b2', ferment: { why: 'It is too cold.' } });
    expect(findClashes([first, stuck], usualClock)).toEqual(none);
  });
});

describe('three batches with the same grains', () => {
  test('clash once where all three are in the jar at the same time', () => {
    const others = [at(1, 19, 30), at(1, 20, 30)].map((start, place) =>
      planned(start, oat({ batch: `b${place}`, name: `Oat ${place}`, grains: first.making.grains })),
    );
    const clashes = findClashes([first, ...others], usualClock).told.filter(({ kind }) => kind === 'grains');
    expect(clashes).toMatchObject([{ names: ['Almond', 'Oat 0', 'Oat 1'], need: 120 }]);
  });
});

describe('many batches at one time', () => {
  const many = Array.from({ length: 120 }, (_, place) =>
    planned(at(1, 18, 20), { batch: `b${place}`, name: `Batch ${place}` }),
  );

  test('clash in each pair, of which few are told, and a later start is looked for only where it is asked for', () => {
    let asked = 0;
    const nights = (from: number, to: number) => {
      asked += 1;
      return usualClock.nights(from, to);
    };
    const { told, more } = findClashes(many, { ...usualClock, nights }, 0, 5);
    expect(told).toMatchObject([
      { kind: 'grains', need: 4800 },
      { kind: 'jars', need: 120 },
      // The making and the straining of each pair.
      ...['Batch 1', 'Batch 2', 'Batch 3'].map((name) => {
        return { kind: 'hands', names: ['Batch 0', name], times: 2, from: at(1, 18, 20) };
      }),
    ]);
    expect(more).toBe(7140 - 3);
    expect(asked).toBe(0);
    expect(told[2]?.remedy).toEqual(told[2]?.remedy);
    expect(asked).toBe(1);
  });

  test('are found out quickly, a thousand of them too', () => {
    const thousand = Array.from({ length: 1000 }, (_, place) => many[place % many.length] ?? first);
    const { told, more } = findClashes(thousand, usualClock, 0, 8);
    expect([told.length, more]).toEqual([8, (1000 * 999) / 2 - 6]);
  });

  test('are told the same whether they are listed or counted', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(makings, starts), { minLength: 2, maxLength: 6 }), starts, (all, present) => {
        const plans = all.map(([making, start], place) =>
          planBatch({ ...making, batch: `b${place}` }, { by: 'start', at: start }, usualClock),
        );
        const { told, more } = findClashes(plans, usualClock, present);
        expect(more).toBe(0);
        for (const most of [0, 1, 3]) {
          const few = findClashes(plans, usualClock, present, most);
          expect(few.told.length + few.more).toBe(told.length);
          expect(few.told.map(({ names, from }) => [names, from])).toEqual(
            told.slice(0, most).map(({ names, from }) => [names, from]),
          );
        }
      }),
      { numRuns: 30 },
    );
  });
});

describe('two batches to drink at the same time', () => {
  const wish = at(4, 18);
  const toDrink = (batch: string, changes: Partial<Making> = {}) =>
    planBatch(makingWith({ batch, name: batch, ...changes }), { by: 'drink', at: wish }, usualClock);
  const pair = (changes: Partial<Making> = {}) => [toDrink('b1', changes), toDrink('b2', changes)];
  const remedyOf = (plans: readonly BatchPlan[], present = 0) =>
    findClashes(plans, usualClock, present).told[0]?.remedy ?? expect.fail('no remedy');

  test('are mended by an earlier start that is still in time and still keeps', () => {
    const plans = pair();
    const remedy = remedyOf(plans);
    const [one, other] = plans;
    expect(remedy).toMatchObject({ batch: 'b2', wish: { at: wish, isKept: true } });
    expect(remedy.start).toBeLessThan(other?.schedule.start ?? 0);
    expect(remedy.glass).toBeLessThanOrEqual(wish);
    const moved = planBatch(makingWith({ batch: 'b2' }), { by: 'start', at: remedy.start }, usualClock);
    expect(moved.schedule.drink).toBe(remedy.glass);
    expect((moved.schedule.cold ?? 0) + moved.making.chill.high).toBeGreaterThanOrEqual(wish);
    expect(findClashes([one ?? moved, moved], usualClock)).toEqual(none);
  });

  test('are mended by a later start where the earlier are past, which says that it is too late', () => {
    const plans = pair();
    const present = plans[1]?.schedule.start ?? 0;
    const remedy = remedyOf(plans, present);
    expect(remedy).toMatchObject({ batch: 'b2', wish: { at: wish, isKept: false } });
    expect(remedy.start).toBeGreaterThan(present);
    expect(remedy.glass).toBeGreaterThan(wish);
  });

  test('are mended by a later start where an earlier one would not keep until then', () => {
    expect(remedyOf(pair({ chill: wait(4, 4, 8) }))).toMatchObject({ wish: { isKept: false } });
  });
});

describe('a remedy', () => {
  test('leaves the moved batch in nobody’s way and out of the night', () => {
    const clock = steadyClock(22 * 60, 7 * 60);
    fc.assert(
      fc.property(makings, makings, starts, fc.integer({ min: 0, max: 600 }), (one, other, start, later) => {
        const plans = [
          planBatch({ ...one, batch: 'b1', name: 'One' }, { by: 'start', at: start }, clock),
          planBatch({ ...other, batch: 'b2', name: 'Other' }, { by: 'start', at: start + later }, clock),
        ];
        for (const { remedy } of findClashes(plans, clock).told) {
          if (remedy === null) continue;
          const moved = plans.map((plan) =>
            plan.making.batch === remedy.batch
              ? planBatch(plan.making, { by: 'start', at: remedy.start }, clock)
              : plan,
          );
          expect(findClashes(moved, clock)).toEqual(none);
          const mended = moved.find(({ making }) => making.batch === remedy.batch) ?? expect.fail('it is gone');
          expect(nightWork(mended.schedule)).toEqual([]);
        }
      }),
      { numRuns: 10 },
    );
  });
});

describe('what is past', () => {
  const second = planned(at(1, 18, 40), oat());

  test('is no clash any more', () => {
    expect(findClashes([first, second], usualClock, at(1, 18, 59)).told).toHaveLength(1);
    expect(findClashes([first, second], usualClock, at(1, 19))).toEqual(none);
  });

  test('is not moved: a batch that is begun stays where it is', () => {
    const shared = planned(at(1, 19), oat({ grains: first.making.grains }));
    const remedies = (present: number) =>
      findClashes([first, shared], usualClock, present)
        .told.filter(({ kind }) => kind === 'grains')
        .map(({ remedy }) => remedy?.batch ?? null);
    expect(remedies(at(1, 19))).toEqual(['b2']);
    expect(remedies(at(1, 19, 1))).toEqual([null]);
  });
});
