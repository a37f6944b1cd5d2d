import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import type { Kitchen, SheetDocument } from '../../../src/batch/document/document';
import { addClass, addKitchens, changeKitchen, planClass } from '../../../src/batch/edits/class-edits';
import { choose } from '../../../src/batch/edits/edits';
import { instantOf, wallOf } from '../../../src/batch/reading/local-time';
import { planClassroom, soonestTogether, workOutClass } from '../../../src/batch/store/class-sheet';

const kitchen = (name: string, temperature: number | null): Kitchen => ({
  name,
  vessel: 'quartWide',
  temperature,
  leads: 'metric',
  grains: 'water',
});
const three = addKitchens(addClass(demo, 'b1'), 'k1', [kitchen('Ana', 26), kitchen('Ben', null), kitchen('Cleo', 21)]);
const worked = (document: SheetDocument) => {
  const kept = document.classes?.[0] ?? expect.fail('there is no class');
  return workOutClass(document, kept) ?? expect.fail('it can’t be worked out');
};
const at = '2026-12-05T16:00';

beforeEach(() => {
  vi.useFakeTimers({ now: new Date('2026-12-01T10:00') });
});
afterEach(() => {
  vi.useRealTimers();
});

describe('a class that is worked out', () => {
  test('leaves the kitchens that an edit is not about as they are', () => {
    const before = worked(three).kitchens;
    const after = worked(changeKitchen(three, 'k1', 0, { vessel: 'pint' })).kitchens;
    expect(after[0]?.formulation).not.toBe(before[0]?.formulation);
    expect(after[1]).toBe(before[1]);
    const other = worked(choose(three, 'b1', 'source', 'hazelnut')).kitchens;
    expect(other[1]?.batch.source).toBe('hazelnut');
  });

  test('drinks together: the first to start first, those of one room share a line, and no work is at night', () => {
    const planned = planClass(three, 'k1', { by: 'drink', at });
    const groups = planClassroom(worked(planned), planned.settings);
    expect(groups.map(({ names }) => names.join(' ')).sort()).toEqual(['Ana', 'Ben Cleo']);
    const starts = groups.map(({ plan }) => plan.schedule.start);
    expect(starts).toEqual([...starts].sort((one, other) => one - other));
    for (const { plan, isInNight, isPast } of groups) {
      expect(plan.schedule.drink).toBe(instantOf(at));
      expect([isInNight, isPast]).toEqual([false, false]);
    }
  });

  test('starts together: the warmer room is likely ready first, within its range', () => {
    const planned = planClass(three, 'k1', { by: 'start', at });
    const groups = planClassroom(worked(planned), planned.settings);
    expect(groups.map(({ names }) => names)).toEqual([['Ana'], ['Ben', 'Cleo']]);
    for (const { plan, ready } of groups) {
      expect(wallOf(plan.schedule.start)).toBe(at);
      expect(ready?.soonest).toBeLessThan(ready?.likely ?? 0);
      expect(ready?.likely).toBeLessThan(ready?.latest ?? 0);
    }
  });

  test('is told that a start is past', () => {
    const planned = planClass(three, 'k1', { by: 'drink', at: '2026-12-01T12:00' });
    expect(planClassroom(worked(planned), planned.settings).every(({ isPast }) => isPast)).toBe(true);
  });

  test('is offered a time to drink that every kitchen can keep, begun awake', () => {
    vi.setSystemTime(new Date('2026-12-01T23:30'));
    const { start, at: glass } = soonestTogether(worked(three), three.settings);
    expect(wallOf(start)).toBe(`2026-12-02T${three.settings.quiet.to}`);
    const planned = planClass(three, 'k1', { by: 'drink', at: wallOf(glass), from: wallOf(start) });
    for (const { plan } of planClassroom(worked(planned), planned.settings)) {
      expect(plan.schedule.start).toBeGreaterThanOrEqual(start);
      expect(plan.schedule.drink).toBe(glass);
    }
  });
});
