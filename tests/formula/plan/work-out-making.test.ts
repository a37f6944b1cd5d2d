import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import { planBatch } from '../../../src/formula/plan/plan-batch';
import { makingOf } from '../../../src/formula/plan/work-out-making';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import type { WallClock } from '../../../src/formula/time/span';
import { usualScoopSet } from '../../../src/measure/scoops';
import { grainIds, bottledRecipe as recipeOf, sourceIds, typed } from '../../batches';
import { at, clocks, starts, usualClock } from './makings';

const kitchen = { leads: 'metric', cups: 'us', scoops: usualScoopSet, decimalComma: false } as const;

function makingFor(changes: Partial<Recipe> = {}, opened?: { readonly days: number }) {
  const batch = { id: 'b1', name: 'Almond', ...(opened === undefined ? {} : { opened }) };
  return makingOf(formulate(recipeOf(changes)), batch, kitchen);
}

/** From filling the jar to the last check, and to straining, in minutes; null without a check. */
function checkOf(making: ReturnType<typeof makingFor>, start: number, clock: WallClock) {
  const { steps, waits } = planBatch(making, { by: 'start', at: start }, clock).schedule;
  const jarred = waits.find(({ kind }) => kind === 'ferment')?.from ?? expect.fail('no ferment');
  const check = steps.findLast(({ kind }) => kind === 'check');
  const strain = steps.find(({ kind }) => kind === 'strain') ?? expect.fail('no straining');
  return { check: check === undefined ? null : check.at - jarred, strain: strain.at - jarred };
}

function fermentOf(changes: Partial<Recipe>) {
  const { ferment } = makingFor(changes);
  if ('why' in ferment) expect.fail(ferment.why);
  return ferment.wait;
}

describe('what a plan has to know of a batch', () => {
  test('takes the soak from the table, within its range', () => {
    // Almonds soak 8 to 12 h.
    expect(makingFor().soak?.wait).toEqual({ low: 480, likely: 600, high: 720 });
  });

  test('takes a typed soak and a typed second ferment exactly', () => {
    const making = makingFor({ given: [typed('soakTime', 9), typed('bottleTime', 5)] });
    expect(making.soak?.wait).toEqual({ low: 540, likely: 540, high: 540 });
    expect(making.second?.wait).toEqual({ low: 300, likely: 300, high: 300 });
  });

  test('lets the usual second ferment be as long as is usual, and leaves out one of no time', () => {
    // Common practice: 6 to 10 h.
    expect(makingFor().second?.wait).toEqual({ low: 360, likely: 480, high: 600 });
    expect(makingFor({ given: [typed('bottleTime', 0)] }).second).toBeNull();
  });

  test('soaks neither what is not soaked nor what steeps in its blending water', () => {
    expect(makingFor({ source: 'hemp' }).soak).toBeNull();
    const coconut = makingFor({ source: 'coconutDried' });
    expect(coconut.soak).toBeNull();
    expect(coconut.make).toBeGreaterThan(makingFor({ source: 'hemp' }).make);
  });

  test('takes the first ferment from the room, in steps of five minutes', () => {
    const cool = fermentOf({ given: [typed('roomTemperature', 19)] });
    const warm = fermentOf({ given: [typed('roomTemperature', 25)] });
    expect(warm.likely).toBeLessThan(cool.likely);
    for (const { low, likely, high } of [cool, warm]) {
      expect([low % 5, likely % 5, high % 5]).toEqual([0, 0, 0]);
      expect(low).toBeLessThan(likely);
      expect(likely).toBeLessThan(high);
    }
  });

  test('says why there is no time for a first ferment that is too cold', () => {
    const { ferment } = makingFor({ given: [typed('roomTemperature', 8)] });
    expect('why' in ferment && ferment.why).toContain('8 °C'.replace(' ', '\u00A0'));
  });

  test('never plans a homemade milk to stand over 24 hours unless it is likely slower, and then tests its pH', () => {
    const slow = fermentOf({ given: [typed('grainRate', 25)] });
    expect(slow.high).toBe(24 * 60);
    const slower = makingFor({ given: [typed('grainRate', 8)] });
    expect('wait' in slower.ferment && slower.ferment.wait.high).toBeGreaterThan(24 * 60);
    expect(slower.checks).toBe(1);
    expect(makingFor().checks).toBeNull();
  });

  test('tests the pH of a milk that is likely in time and may be slower, though it is never planned so', () => {
    // 17 °C: likely 21 h, and up to 28 h.
    const { ferment, checks } = makingFor({ given: [typed('roomTemperature', 17)] });
    expect('wait' in ferment && ferment.wait.likely).toBeLessThan(24 * 60);
    expect('wait' in ferment && ferment.wait.high).toBe(24 * 60);
    expect(checks).toBe(1);
  });

  test('leaves the test of a slow milk to its straining where that comes before the line', () => {
    const slow = makingFor({ given: [typed('roomTemperature', 16.1)] });
    const wanted = { by: 'drink', at: at(10, 18) } as const;
    const { steps, waits } = planBatch(slow, wanted, usualClock).schedule;
    const ferment = waits.find(({ kind }) => kind === 'ferment') ?? expect.fail('no ferment');
    expect(slow.checks).toBe(1);
    expect(ferment.to - ferment.from).toBeLessThan(24 * 60);
    expect(steps.filter(({ kind }) => kind === 'check')).toEqual([]);
  });

  test('tests the pH of a slow milk within its 24 hours, whatever the quiet hours and the start', () => {
    // 16 °C and 20 g/L: in the jar at night, and the check is due at night.
    const example = makingFor({ given: [typed('roomTemperature', 16), typed('grainRate', 20)] });
    expect(example.checks).toBe(1);
    expect(checkOf(example, at(0, 16), usualClock).check).toBeLessThanOrEqual(24 * 60);
    const slow = fc.record({
      ...{ source: fc.constantFrom(...sourceIds), grains: fc.constantFrom(...grainIds) },
      ...{ room: fc.integer({ min: 15, max: 30 }), rate: fc.integer({ min: 5, max: 60 }) },
      days: fc.integer({ min: 1, max: 5 }),
    });
    let tried = 0;
    fc.assert(
      fc.property(slow, starts, clocks, ({ source, grains, room, rate, days }, start, clock) => {
        const given = [typed('roomTemperature', room), typed('grainRate', rate)];
        const making = makingFor({ source, grains, given }, { days });
        if (making.checks === null || 'why' in making.ferment) return;
        tried += 1;
        const { check, strain } = checkOf(making, start, clock);
        // A homemade milk that is strained before its line is tested then, and never after it.
        expect(check === null).toBe(making.turnsBy !== null && strain < making.turnsBy);
        if (check === null) return;
        expect(check).toBeLessThanOrEqual(making.turnsBy ?? making.checks * 24 * 60);
        expect(check).toBeGreaterThanOrEqual(0);
        if (making.turnsBy !== null) expect(check + making.taste).toBeLessThanOrEqual(strain);
      }),
    );
    expect(tried).toBeGreaterThan(0);
  });

  test('checks a carton daily where it was opened for this batch, and nothing else', () => {
    expect(makingFor({ source: 'cartonPlain' }, { days: 3 }).checks).toBe(3);
    expect(makingFor({ source: 'cartonPlain' }).checks).toBeNull();
    expect(makingFor({}, { days: 3 }).checks).toBeNull();
  });

  test('takes longer by hand to strain, bottle and chill with more jars and bottles', () => {
    const usual = makingFor();
    expect([usual.strain, usual.second?.bottle, usual.second?.fridge]).toEqual([15, 15, 5]);
    // 40 jars make 64 bottles: 10 and 4 min each, 10 and 2 min each, 3 and ½ min each.
    const many = makingFor({ given: [typed('vesselCount', 40)] });
    expect([many.strain, many.second?.bottle, many.second?.fridge]).toEqual([170, 140, 35]);
  });

  test('takes longer by hand with more blender loads, jars and a heat step', () => {
    const usual = makingFor().make;
    expect(makingFor({ given: [typed('vesselCount', 6)] }).make).toBeGreaterThan(usual);
    expect(makingFor({ heat: { what: 'milk', temperature: 72, minutes: 10 } }).make).toBe(usual + 40);
  });

  test('knows what there is of grains and jars', () => {
    const onHand = {
      grains: { amount: 60, kind: 'mass', text: '60 g' },
      jars: { amount: 3, kind: 'count', text: '3' },
    } as const;
    const { grains, jars } = makingFor({ onHand });
    expect([grains?.have, jars.have]).toEqual([60, 3]);
    expect(grains?.need).toBeGreaterThan(0);
    expect(makingFor().grains?.have).toBeNull();
  });

  test('wants no grains again of a starter, which is only stirred', () => {
    for (const grains of ['powder', 'kefir'] as const) {
      expect(makingFor({ grains }).grains).toBeNull();
      expect(makingFor({ grains }).strain).toBeLessThan(makingFor().strain);
    }
  });

  test('holds for every source and both kinds of grains', () => {
    for (const source of sourceIds) {
      for (const grains of grainIds) {
        const making = makingFor({ source, grains });
        const waits = [making.soak?.wait, 'wait' in making.ferment ? making.ferment.wait : undefined, making.chill];
        for (const wait of waits) {
          if (wait === undefined) continue;
          expect(wait.low).toBeLessThanOrEqual(wait.likely);
          expect(wait.likely).toBeLessThanOrEqual(wait.high);
          expect(Number.isInteger(wait.low + wait.likely + wait.high)).toBe(true);
        }
        expect(Number.isInteger(making.make)).toBe(true);
      }
    }
  });
});
