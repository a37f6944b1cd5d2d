import { describe, expect, test } from 'vitest';
import { type Formulation, formulate } from '../../../src/formula/engine/formulate';
import { describeClash, describeOutcome } from '../../../src/formula/plan/clash-words';
import { findClashes } from '../../../src/formula/plan/clashes';
import { eventsOf } from '../../../src/formula/plan/events';
import { planBatch } from '../../../src/formula/plan/plan-batch';
import { makingOf } from '../../../src/formula/plan/work-out-making';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import { writeElapsed } from '../../../src/formula/time/elapsed-words';
import { writeRow } from '../../../src/formula/words/write-row';
import { usualScoopSet } from '../../../src/measure/scoops';
import type { SourceId } from '../../../src/reference/sources';
import { grainIds, bottledRecipe as recipeOf, sourceIds, typed } from '../../batches';
import { at, usualClock } from './makings';

const kitchen = { leads: 'metric', cups: 'us', scoops: usualScoopSet, decimalComma: false } as const;
const plain = (text: string): string => text.replaceAll('\u00A0', ' ');

function planOf(formulation: Formulation, id: string, name: string, days?: number) {
  const batch = { id, name, ...(days === undefined ? {} : { opened: { days } }) };
  return planBatch(makingOf(formulation, batch, kitchen), { by: 'start', at: at(100, 20) }, usualClock);
}

function eventsFor(changes: Partial<Recipe> = {}, days?: number) {
  const formulation = formulate(recipeOf(changes));
  const plan = planOf(formulation, 'b1', 'Almond', days);
  const { schedule } = plan;
  const events = eventsOf(plan, formulation, (id) => writeRow(formulation, id, kitchen)?.metric ?? '', kitchen);
  return { formulation, schedule, events };
}

describe('the events of a plan', () => {
  test.each(sourceIds)('say the amounts of %s in letters that every page and calendar can show', (source) => {
    const { events } = eventsFor({ source });
    expect(events.filter(({ title, text }) => /\p{Private_Use}|\p{Control}/u.test(title + text))).toEqual([]);
  });

  test('are its steps, with their times', () => {
    const { schedule, events } = eventsFor();
    expect(events.map(({ id, at, minutes, hands }) => ({ id, at, minutes, hands }))).toEqual(
      schedule.steps.map(({ id, at, minutes, hands }) => ({ id, at, minutes, hands })),
    );
    expect(new Set(events.map(({ id }) => id)).size).toBe(events.length);
    expect(events[0]).toMatchObject({
      batch: 'b1',
      batchName: 'Almond',
      plannedFor: at(100, 20),
      title: 'Put it to soak',
    });
  });

  test('say where a wait is planned otherwise than the sheet has it, and bottle only what is sour enough', () => {
    const { schedule, events } = eventsFor();
    const texts = new Map(events.map(({ id, text }) => [id, plain(text)]));
    const told = { soak: 'soak', second: 'bottle' } as const;
    let otherwise = 0;
    for (const { kind, from, to, range } of schedule.waits) {
      if (kind !== 'soak' && kind !== 'second') continue;
      const isOther = to - from !== range.likely;
      if (isOther) otherwise += 1;
      expect(texts.get(told[kind])?.includes('to keep out of the quiet hours')).toBe(isOther);
    }
    expect(otherwise).toBeGreaterThan(0);
    expect(texts.get('bottle')).toMatch(/^Only at pH 4\.6 or less/);
  });

  test('have the amounts in their words', () => {
    const { formulation, events } = eventsFor();
    const make = events.find(({ id }) => id === 'make')?.text ?? '';
    for (const row of ['blendWater', 'milkVolume', 'sweetenerMass', 'grainMass'] as const) {
      expect(make).toContain(writeRow(formulation, row, kitchen)?.metric);
    }
  });

  test('say that a homemade milk has a day to turn sour, and a carton its stop', () => {
    const strain = eventsFor().events.find(({ id }) => id === 'strain')?.text ?? '';
    expect(plain(strain)).toContain('Not there within 24 h of the grains going in: throw it out');
    const { events } = eventsFor({ source: 'cartonPlain' }, 3);
    const checks = events.filter(({ id }) => id.startsWith('check-'));
    expect(checks.map(({ id }) => id)).toEqual(['check-1', 'check-2', 'check-3']);
    expect(checks.map(({ text }) => text.includes('throw it out'))).toEqual([false, false, true]);
    expect(events.find(({ id }) => id === 'make')?.title).toBe('Pour the milk and set up the jar');
  });

  test('say to measure at the first taste, and how long a falling one may stand where it is not the usual room', () => {
    const textsAt = (room: number, source: SourceId = 'almond') => {
      const { events } = eventsFor({ source, given: [typed('roomTemperature', room)] });
      return (kind: string) => plain(events.find(({ id }) => id === kind)?.text ?? '');
    };
    expect(textsAt(21)('taste')).toContain('Measure its pH too: at pH 5.0 or less and falling, let it go on.');
    expect(textsAt(21)('strain')).not.toContain('unless');
    expect(textsAt(18)('strain')).toContain(
      'Not there within 24 h of the grains going in, unless it is at pH 5.0 or less and falling, then within 36 h: throw it out',
    );
    expect(textsAt(26)('strain')).toContain('Not there within 13 h');
    expect(textsAt(21, 'cartonPlain')('taste')).not.toContain('Measure its pH');
  });

  test('say that a milk that may be slow is tested again by its line, where it is strained before that', () => {
    const strainAt = (room: number) => {
      const { schedule, events } = eventsFor({ given: [typed('roomTemperature', room)] });
      const ferment = schedule.waits.find(({ kind }) => kind === 'ferment') ?? expect.fail('no ferment');
      const left = writeElapsed(24 * 60 - (ferment.to - ferment.from), false);
      return { left: plain(left), text: plain(events.find(({ id }) => id === 'strain')?.text ?? '') };
    };
    const slow = strainAt(17);
    expect(slow.text).toContain(`test it again, the last time ${slow.left} later. Not there within 24 h`);
    expect(strainAt(21).text).toContain('let it stand and test it again. Not there within 24 h');
  });

  test('say that much milk is made in turns, and in a hot room sooner', () => {
    const makeOf = (jars: number, room = 21) =>
      eventsFor({ given: [typed('vesselCount', jars), typed('roomTemperature', room)] });
    const textOf = ({ events }: ReturnType<typeof makeOf>) => plain(events.find(({ id }) => id === 'make')?.text ?? '');
    const said = 'make it in turns, or chill each load. Until the grains are in, milk stays out of the cold for';
    expect(textOf(makeOf(40))).toMatch(new RegExp(`^This takes over 2 h: ${said} 2 h at most`));
    expect(textOf(makeOf(1))).not.toContain('in turns');
    // An hour in a pot is no hour on the bench.
    const heated = eventsFor({ heat: { what: 'milk', temperature: 90, minutes: 180 } });
    expect(textOf(heated)).not.toContain('in turns');
    expect(textOf(makeOf(8))).not.toContain(`${said} 1 h`);
    expect(textOf(makeOf(8, 33))).toContain(`This takes over 1 h: ${said} 1 h at most`);
  });

  test('are in words without a gap for every source, also where a cell can’t be read', () => {
    for (const source of sourceIds) {
      for (const grains of grainIds) {
        for (const given of [[], [typed('sourceMass', null)], [typed('headspaceDepth', 90)]]) {
          for (const { title, text } of eventsFor({ source, grains, given }).events) {
            expect(title).not.toBe('');
            expect(text, `${source} ${title}`).not.toMatch(/NaN|Infinity|undefined|null| {2}|: \.|\(\)/);
          }
        }
      }
    }
  });
});

describe('a clash in words', () => {
  test('names the batches, what they share and how much of it', () => {
    const formulation = formulate(recipeOf({ given: [typed('grainMass', 40)] }));
    const plans = [planOf(formulation, 'b1', 'Almond'), planOf(formulation, 'b2', 'Cashew')];
    const said = findClashes(plans, usualClock).told.map((clash) =>
      plain(describeClash(clash, { full: (time) => `T${time}` }, formulation, kitchen)),
    );
    expect(
      said.some((text) => /^“Almond” and “Cashew” need hands at the same time: 5 times, first T\d+\.$/.test(text)),
    ).toBe(true);
    expect(
      said.some((text) =>
        /^“Almond” and “Cashew” need 80 g of water kefir grains in all at the same time, T\d+ to T\d+\.$/.test(text),
      ),
    ).toBe(true);
    expect(said.some((text) => text.includes('need 2 jars (Quart, wide mouth) in all'))).toBe(true);
  });
});

describe('what comes of another start', () => {
  const times = { full: (at: number) => `day ${at}`, short: (at: number) => `D${at}` };
  test.each([
    [{ glass: 7, wish: null }, ''],
    [{ glass: 7, wish: { at: 8, isKept: true } }, ', still ready for D8'],
    [{ glass: 9, wish: { at: 8, isKept: false } }, ', first glass day 9 instead of D8'],
    [{ glass: null, wish: { at: 8, isKept: false } }, ', and no glass by D8'],
  ])('of %j is said: %s', (remedy, said) => {
    expect(describeOutcome(remedy, times)).toBe(said);
  });
});

describe('elapsed time', () => {
  test.each([
    [0, '0 min'],
    [45, '45 min'],
    [60, '1 h'],
    [615, '10 h 15 min'],
    [4320, '72 h'],
    [11466, '8 days'],
  ])('of %d minutes is %s', (minutes, text) => {
    expect(plain(writeElapsed(minutes, false))).toBe(text);
  });
});
