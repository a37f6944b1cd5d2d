import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { readDocument } from '../../../src/batch/document/read-document';
import { instantOf, isPlannable } from '../../../src/batch/reading/local-time';
import { clearWhen, drinkAt, setQuiet, setWhen, startAt } from '../../../src/batch/store/plan-edits';

const when = { by: 'drink', at: '2026-11-28T18:00' } as const;
const planned = setWhen(demo, 'b1', when);

describe('planning a batch', () => {
  test('is kept in a document that can be saved', () => {
    expect(planned.batches[0]?.when).toEqual(when);
    expect(readDocument(JSON.parse(JSON.stringify(planned)))).toEqual({ ok: true, document: planned });
  });

  test('the same again, in a batch that is not there or with no time changes nothing', () => {
    expect(setWhen(planned, 'b1', when)).toBe(planned);
    expect(setWhen(planned, 'b9', when)).toBe(planned);
    for (const at of ['', 'Saturday', '0202-11-28T18:00', '9999-11-28T18:00', '2026-11-28']) {
      expect(setWhen(planned, 'b1', { by: 'drink', at })).toBe(planned);
      expect(isPlannable(at)).toBe(false);
    }
  });

  test('for an instant takes the time that the clock shows then', () => {
    const at = instantOf('2026-12-01T07:05') ?? expect.fail('no such time');
    expect(startAt(demo, 'b1', at).batches[0]?.when).toEqual({ by: 'start', at: '2026-12-01T07:05' });
  });

  test('to drink at an instant keeps the earliest start that could be made, and asked later another one', () => {
    const at = instantOf('2026-12-01T18:00') ?? expect.fail('no such time');
    const asked = drinkAt(planned, 'b1', at, at - 24 * 60);
    expect(asked.batches[0]?.when).toEqual({ by: 'drink', at: '2026-12-01T18:00', from: '2026-11-30T18:00' });
    expect(readDocument(JSON.parse(JSON.stringify(asked)))).toEqual({ ok: true, document: asked });
    expect(drinkAt(asked, 'b1', at, at - 24 * 60)).toBe(asked);
    expect(drinkAt(asked, 'b1', at, at - 20 * 60).batches[0]?.when?.from).toBe('2026-11-30T22:00');
    expect(startAt(asked, 'b1', at).batches[0]?.when).toEqual({ by: 'start', at: '2026-12-01T18:00' });
  });

  test('is taken back, once', () => {
    const cleared = clearWhen(planned, 'b1');
    expect(cleared).toEqual(demo);
    expect(clearWhen(cleared, 'b1')).toBe(cleared);
  });
});

describe('the quiet hours', () => {
  test('are changed at either end', () => {
    expect(setQuiet(demo, { from: '23:30' }).settings.quiet).toEqual({ ...demo.settings.quiet, from: '23:30' });
    expect(setQuiet(demo, { to: '06:00' }).settings.quiet).toEqual({ ...demo.settings.quiet, to: '06:00' });
  });

  test('stay where no time of day was typed', () => {
    for (const from of ['', '24:00', '7:00', 'late']) expect(setQuiet(demo, { from })).toBe(demo);
  });
});
