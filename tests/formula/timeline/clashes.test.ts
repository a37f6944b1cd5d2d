import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Clash, findClashes } from '../../../src/formula/timeline/clashes';
import type { Making } from '../../../src/formula/timeline/making';
import { type BatchPlan, planBatch } from '../../../src/formula/timeline/plan-batch';
import { nightWork } from '../../../src/formula/timeline/schedule';
import { at, makings, makingWith, starts, steadyClock, usualClock, wait } from './makings';

function planned(start: number, changes: Partial<Making> = {}): BatchPlan {
  return planBatch(makingWith({ soak: null, ...changes }), { by: 'start', at: start }, usualClock);
}

const first = planned(at(1, 18, 20));
const oat = (changes: Partial<Making> = {}): Partial<Making> => ({
  ...{ batch: 'b2', name: 'Oat', grains: { kind: 'milk', name: 'Milk kefir grains', need: 20, have: null } },
  ...{ jars: { kind: 'litre', name: 'Litre jar', need: 1, have: null } },
  ...changes,
});

function kindsOf(clashes: readonly Clash[]) {
  return clashes.map(({ kind }) => kind);
}

describe('two batches', () => {
  test('that share nothing do not clash', () => {
    expect(findClashes([first, planned(at(1, 20), oat())], usualClock)).toEqual([]);
  });

  test('that need hands at the same time clash, and a later start mends it', () => {
    const second = planned(at(1, 18, 40), oat());
    const [clash, ...others] = findClashes([first, second], usualClock);
    expect(others).toEqual([]);
    if (clash?.kind !== 'hands') expect.fail('no hands clash');
    expect([clash.from, clash.to]).toEqual([at(1, 18, 40), at(1, 19)]);
    expect(clash.steps.map(({ id }) => id)).toEqual(['make', 'make']);
    // A quarter of an hour is not enough; after half an hour the first jar stands.
    expect(clash.remedy).toEqual({ batch: 'b2', name: 'Oat', start: at(1, 19, 10) });
  });

  test('that need the same grains clash, with what they need in all', () => {
    const second = planned(
      at(1, 20),
      oat({ grains: { kind: 'water', name: 'Water kefir grains', need: 30, have: null } }),
    );
    const [clash] = findClashes([first, second], usualClock);
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
      findClashes([first, planned(at(1, 20), oat({ jars: jars(have) }))], usualClock);
    expect(clashes(2)).toMatchObject([{ kind: 'jars', need: 3, have: 2 }]);
    expect(clashes(null)).toMatchObject([{ kind: 'jars', need: 3, have: null }]);
    expect(clashes(3)).toEqual([]);
  });

  test('one after the other share grains and jars without a clash', () => {
    const next = { batch: 'b2', name: 'Next', ferment: { wait: wait(10, 12, 14) } };
    expect(findClashes([first, planned(at(2, 17), next)], usualClock)).toEqual([]);
  });

  test('of which one has no time for its ferment hold nothing', () => {
    const stuck = planned(at(1, 20), { batch: 'b2', ferment: { why: 'It is too cold.' } });
    expect(findClashes([first, stuck], usualClock)).toEqual([]);
  });
});

describe('three batches with the same grains', () => {
  test('clash once where all three are in the jar at the same time', () => {
    const others = [at(1, 19, 30), at(1, 20, 30)].map((start, place) =>
      planned(start, oat({ batch: `b${place}`, name: `Oat ${place}`, grains: first.making.grains })),
    );
    const clashes = findClashes([first, ...others], usualClock).filter(({ kind }) => kind === 'grains');
    expect(clashes).toMatchObject([{ names: ['Almond', 'Oat 0', 'Oat 1'], need: 120 }]);
  });
});

describe('many batches at one time', () => {
  const many = Array.from({ length: 120 }, (_, place) =>
    planned(at(1, 18, 20), { batch: `b${place}`, name: `Batch ${place}` }),
  );

  test('clash in each pair, and a later start is looked for only where it is asked for', () => {
    let asked = 0;
    const nights = (from: number, to: number) => {
      asked += 1;
      return usualClock.nights(from, to);
    };
    const counting = { ...usualClock, nights };
    const clashes = findClashes(many, counting);
    // Of each of 7140 pairs the making and the straining; then the grains and the jars of all.
    expect(clashes).toHaveLength(2 * 7140 + 2);
    expect(asked).toBe(0);
    const [first, again] = [clashes[0]?.remedy, clashes[0]?.remedy];
    expect(first).toEqual(again);
    expect(asked).toBe(1);
    expect(clashes.slice(-2)).toMatchObject([
      { kind: 'grains', need: 4800 },
      { kind: 'jars', need: 120 },
    ]);
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
        for (const { remedy } of findClashes(plans, clock)) {
          if (remedy === null) continue;
          const moved = plans.map((plan) =>
            plan.making.batch === remedy.batch
              ? planBatch(plan.making, { by: 'start', at: remedy.start }, clock)
              : plan,
          );
          expect(findClashes(moved, clock)).toEqual([]);
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
    expect(findClashes([first, second], usualClock, at(1, 18, 59))).toHaveLength(1);
    expect(findClashes([first, second], usualClock, at(1, 19))).toEqual([]);
  });

  test('is not moved: a batch that is begun stays where it is', () => {
    const shared = planned(at(1, 19), oat({ grains: first.making.grains }));
    const remedies = (present: number) =>
      findClashes([first, shared], usualClock, present)
        .filter(({ kind }) => kind === 'grains')
        .map(({ remedy }) => remedy?.batch ?? null);
    expect(remedies(at(1, 19))).toEqual(['b2']);
    expect(remedies(at(1, 19, 1))).toEqual([null]);
  });
});
