// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { TimelineEvent } from '../../src/formula/time/event';

const event: TimelineEvent = {
  id: 'strain',
  batch: 'b1',
  batchName: 'Saturday almond',
  plannedFor: 29_576_580,
  title: 'Strain the grains out',
  text: '',
  at: 29_578_050,
  minutes: 15,
  hands: true,
};

/** The module as a page that has just opened has it. */
async function openPage() {
  vi.resetModules();
  return import('../../src/interchange/calendar-file');
}

async function write(changes: Partial<TimelineEvent> = {}, page = openPage()): Promise<string> {
  const { text, problem } = (await page).calendarFile([{ ...event, ...changes }], new Date(0));
  return text ?? expect.fail(problem);
}

async function uid(changes: Partial<TimelineEvent> = {}, page = openPage()): Promise<string> {
  const unfolded = (await write(changes, page)).replaceAll('\r\n ', '');
  return /^UID:(.+)\r$/m.exec(unfolded)?.[1] ?? expect.fail('there is no UID');
}

beforeEach(() => localStorage.clear());
afterEach(() => vi.unstubAllGlobals());

describe('the UID of a step', () => {
  test('is the same from file to file and from visit to visit of one browser', async () => {
    const before = await uid();
    expect(await uid({ at: event.at + 30, title: 'Other' })).toBe(before);
    expect(await uid({ plannedFor: event.plannedFor + 1 })).not.toBe(before);
  });

  test('is another in another browser, though its batch, time and step are the same', async () => {
    const mine = await uid();
    localStorage.clear();
    expect(await uid()).not.toBe(mine);
  });

  test('is of chance anew where what is kept is no mark', async () => {
    localStorage.setItem('jarwright.calendar', 'b1\r\nX-EVIL:1');
    expect(await uid()).toMatch(/^b1\.29576580\.strain\.[0-9a-f]{32}@jarwright\.invalid$/);
  });

  test('stays for as long as the page is open where nothing can be kept', async () => {
    const refuse = () => {
      throw new DOMException('no', 'SecurityError');
    };
    vi.stubGlobal('localStorage', { getItem: refuse, setItem: refuse });
    const page = openPage();
    const mine = await uid({}, page);
    expect(await uid({}, page)).toBe(mine);
    expect(await uid()).not.toBe(mine);
  });
});

describe('a time', () => {
  const lastMinute = Date.UTC(9999, 11, 31, 23, 59) / 60_000;

  test('of the last day of 9999 is written, up to its last minute', async () => {
    expect(await write({ at: lastMinute - 15 })).toContain('DTEND:99991231T235900Z');
  });

  test.each([
    ['that ends in the year after', { at: lastMinute, minutes: 1 }],
    ['whose mark would be drawn into it', { at: lastMinute - 3, minutes: 0 }],
    ['before 1970', { at: -1 }],
  ])('%s is refused in words', async (_, changes) => {
    const { calendarFile } = await openPage();
    const { text, problem } = calendarFile([{ ...event, ...changes }], new Date(0));
    expect([text, problem]).toEqual([null, expect.stringContaining('no time that a calendar can hold')]);
  });
});
