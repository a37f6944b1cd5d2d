/**
 * Desruisseaux, B. (ed.): Internet Calendaring and Scheduling Core Object Specification (iCalendar), RFC 5545, 2009.
 *
 * Published: lines of at most 75 octets ended by CRLF (§ 3.1), text and its escapes (§ 3.3.11), what an event and an
 * alarm must hold (§§ 3.6.1, 3.6.6), UTC times (§ 3.3.5). Computed: every file here, read back by ical.js, a reader
 * that shares nothing with what writes it; lines and octets are counted by hand. Times of the zones are those of
 * `Intl`, which takes them from the time zone database.
 */
import fc from 'fast-check';
import ICAL from 'ical.js';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { TimelineEvent } from '../../src/formula/time/event';
import { alarmMinutes, calendarFile } from '../../src/interchange/calendar-file';

const now = new Date('2026-03-20T08:15:30Z');

function minutesAt(moment: string): number {
  return Date.parse(moment) / 60_000;
}

function eventOf(changes: Partial<TimelineEvent> = {}): TimelineEvent {
  return {
    id: 'strain',
    batch: 'b1',
    batchName: 'Saturday almond',
    plannedFor: minutesAt('2026-03-27T07:00:00Z'),
    title: 'Strain the grains out',
    text: 'Pour it through a sieve; keep the grains, all of them.',
    at: minutesAt('2026-03-28T07:30:00Z'),
    minutes: 15,
    hands: true,
    ...changes,
  };
}

async function write(events: readonly TimelineEvent[]): Promise<string> {
  const { text, problem } = calendarFile(events, now, 'mine');
  if (text === null) throw new Error(problem);
  return text;
}

function read(text: string): ICAL.Component {
  return new ICAL.Component(ICAL.parse(text));
}

function eventsIn(text: string): readonly ICAL.Event[] {
  return read(text)
    .getAllSubcomponents('vevent')
    .map((component) => new ICAL.Event(component));
}

async function readBack(event: TimelineEvent): Promise<ICAL.Event> {
  const [found, ...others] = eventsIn(await write([event]));
  if (found === undefined || others.length > 0) throw new Error('the file does not hold one event');
  return found;
}

const minutesOf = (time: ICAL.Time): number => time.toUnixTime() / 60;
const octets = (line: string): number => new TextEncoder().encode(line).length;

/** What § 3.1 asks of the lines of any file. */
function expectGoodLines(text: string): void {
  expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
  expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  expect(text.split('\r\n').filter((line) => octets(line) > 75)).toEqual([]);
  expect(text.replaceAll('\r\n', '')).not.toMatch(/(?!\t)\p{Cc}/u);
  // Each line by itself is whole UTF-8: no character is cut in two by a fold.
  expect(new TextDecoder('utf-8', { fatal: true }).decode(new TextEncoder().encode(text))).toBe(text);
}

describe('the calendar', () => {
  test('is one of version 2.0 that says what wrote it, and is sent by nobody', async () => {
    const calendar = read(await write([eventOf()]));
    expect(calendar.name).toBe('vcalendar');
    expect(calendar.getFirstPropertyValue('version')).toBe('2.0');
    expect(calendar.getFirstPropertyValue('prodid')).toBe('-//Jarwright//Plan of batches//EN');
    expect(calendar.getFirstProperty('method')).toBeNull();
    expect(calendar.getAllProperties().map(({ name }) => name)).toEqual(['version', 'calscale', 'prodid']);
  });

  test('holds one event a step of every batch, in the order given, each with one alarm on the screen', async () => {
    const ids = ['soak', 'make', 'strain', 'chill', 'last'];
    const events = ['b1', 'b2'].flatMap((batch) =>
      ids.map((id, place) => eventOf({ batch, id, title: `Step ${place}` })),
    );
    const found = eventsIn(await write(events));
    expect(found.map(({ summary }) => summary)).toEqual(events.map(({ title }) => `${title} (Saturday almond)`));
    expect(new Set(found.map(({ uid }) => uid)).size).toBe(events.length);
    for (const { component, summary } of found) {
      const [alarm, ...others] = component.getAllSubcomponents('valarm');
      expect(others).toEqual([]);
      expect(alarm?.getFirstPropertyValue('action')).toBe('DISPLAY');
      expect(alarm?.getFirstPropertyValue('description')).toBe(summary);
      expect(alarm?.getFirstPropertyValue('trigger')?.toString()).toBe(`-PT${alarmMinutes}M`);
    }
  });

  test('is stamped with the moment it was written, to the second', async () => {
    const { component } = await readBack(eventOf());
    expect(component.getFirstPropertyValue('dtstamp')?.toString()).toBe('2026-03-20T08:15:30Z');
  });

  test('leaves the hours of what needs no hands free', async () => {
    const busy = async (hands: boolean) =>
      (await readBack(eventOf({ hands }))).component.getFirstPropertyValue('transp');
    expect(await busy(true)).toBe('OPAQUE');
    expect(await busy(false)).toBe('TRANSPARENT');
  });
});

describe('a step', () => {
  test('keeps its UID when its time, its text and the moment of writing change', async () => {
    const before = await readBack(eventOf());
    const { text } = calendarFile([eventOf({ at: 1, text: '', title: 'Other' })], new Date(0), 'mine');
    const [after] = eventsIn(text ?? '');
    expect(after?.uid).toBe(before.uid);
    expect(before.uid).toBe('b1.29576580.strain.mine@jarwright.invalid');
  });

  test('of a batch planned for another time has another UID, so that it is another event', async () => {
    const { plannedFor } = eventOf();
    const [one, other] = await Promise.all([eventOf(), eventOf({ plannedFor: plannedFor + 1 })].map(readBack));
    expect(one?.uid).not.toBe(other?.uid);
  });

  test('has a UID of its own, whatever characters its batch and id are of', async () => {
    const anyId = fc.oneof(
      fc.string(),
      fc.string({ unit: 'binary' }),
      fc.constantFrom('b1', 'a.b', 'a_2e_b', '😀', '\uD83D'),
    );
    await fc.assert(
      fc.asyncProperty(
        fc.uniqueArray(fc.tuple(anyId, anyId), { minLength: 2, maxLength: 5, selector: String }),
        async (pairs) => {
          // Lone halves of a character are told apart too: they are written by their number.
          const text = await write(pairs.map(([batch, id]) => eventOf({ batch, id })));
          const keys = new Set(pairs.map(([batch, id]) => JSON.stringify([batch, id])));
          expect(new Set(eventsIn(text).map(({ uid }) => uid)).size).toBe(keys.size);
          expectGoodLines(text);
        },
      ),
      { numRuns: 100 },
    );
  });

  test('ends when hands are free again; a mark lasts long enough to be seen, as § 3.8.2.2 wants an end after the start', async () => {
    const at = minutesAt('2026-03-28T07:30:00Z');
    const ended = async (minutes: number) => minutesOf((await readBack(eventOf({ at, minutes }))).endDate) - at;
    expect(await ended(15)).toBe(15);
    expect(await ended(24 * 60)).toBe(1440);
    expect(await ended(0)).toBe(5);
  });
});

describe.each([
  // Clocks go forward and back on other days, or never.
  ['Europe/Berlin', '2026-03-29T01:00:00Z', '2026-10-25T01:00:00Z'],
  ['America/New_York', '2026-03-08T07:00:00Z', '2026-11-01T06:00:00Z'],
  ['Asia/Kathmandu', '2026-03-29T01:00:00Z', '2026-10-25T01:00:00Z'],
])('in %s', (timeZone, spring, autumn) => {
  const clock = new Intl.DateTimeFormat('en-GB', { timeZone, dateStyle: 'short', timeStyle: 'short' });
  const { TZ: usual } = process.env;

  beforeAll(() => {
    process.env.TZ = timeZone;
  });

  afterAll(() => {
    if (usual === undefined) delete process.env.TZ;
    else process.env.TZ = usual;
  });

  test('the file is written by a machine of that zone', () => {
    const local = new Date(spring);
    expect(local.getHours()).toBe(Number(clock.format(local).slice(-5, -3)));
  });

  test.each([
    ['spring', spring],
    ['autumn', autumn],
  ])('twelve hours over the change of %s are twelve hours that pass, right to the minute', async (_, change) => {
    const start = minutesAt(change) - 5 * 60 - 17;
    const found = eventsIn(
      await write([
        eventOf({ id: 'make', at: start, minutes: 40 }),
        eventOf({ id: 'strain', at: start + 12 * 60, minutes: 15 }),
      ]),
    );
    const [make, strain] = found.map(({ startDate }) => startDate);
    if (make === undefined || strain === undefined) throw new Error('two events were written');
    expect(make.zone?.tzid).toBe('UTC');
    expect(minutesOf(strain) - minutesOf(make)).toBe(720);
    expect(clock.format(make.toJSDate())).toBe(clock.format(new Date(start * 60_000)));
    expect(clock.format(strain.toJSDate())).toBe(clock.format(new Date((start + 720) * 60_000)));
  });

  test('the clock on the wall skips or repeats an hour where there is one to change', () => {
    const shift = (change: string) => {
      const [before, after] = [-1, 1].map((side) =>
        clock.format(new Date(Date.parse(change) + side * 60_000)).slice(-5),
      );
      return `${before} ${after}`;
    };
    const expected: Readonly<Record<string, readonly string[]>> = {
      'Europe/Berlin': ['01:59 03:01', '02:59 02:01'],
      'America/New_York': ['01:59 03:01', '01:59 01:01'],
      'Asia/Kathmandu': ['06:44 06:46', '06:44 06:46'],
    };
    expect([shift(spring), shift(autumn)]).toEqual(expected[timeZone]);
  });
});

test('any whole minute from 1970 to 9999 comes back as the same minute', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.integer({ min: 0, max: minutesAt('9999-12-01T00:00Z') }),
      fc.integer({ min: 1, max: 600 }),
      async (at, minutes) => {
        const { startDate, endDate } = await readBack(eventOf({ at, minutes }));
        expect(minutesOf(startDate)).toBe(at);
        expect(minutesOf(endDate)).toBe(at + minutes);
      },
    ),
    { numRuns: 200 },
  );
});

describe('text', () => {
  const pieces = [
    ',',
    ';',
    ':',
    '\\',
    '\\n',
    '"',
    'é',
    'ß',
    '中',
    '😀',
    '👩‍🍳',
    '🇫🇷',
    'e\u0301',
    'שלום',
    '½',
    '²',
    'word',
    ' and ',
    '=',
    '<b>',
    '%0A',
  ];
  const anyLine = fc
    .array(fc.constantFrom(...pieces), { minLength: 1, maxLength: 80 })
    .map((some) => `a${some.join('')}z`);
  const anyText = fc.array(anyLine, { minLength: 1, maxLength: 4 }).map((lines) => lines.join('\n'));

  test('comes back as it was, on several lines and in any script, in the event and in its alarm', async () => {
    await fc.assert(
      fc.asyncProperty(anyLine, anyLine, anyText, async (title, batchName, text) => {
        const written = await write([eventOf({ title, batchName, text })]);
        expectGoodLines(written);
        const [event] = eventsIn(written);
        expect(event?.summary).toBe(`${title} (${batchName})`);
        expect(event?.description).toBe(text);
        const alarm = event?.component.getFirstSubcomponent('valarm');
        expect(alarm?.getFirstPropertyValue('description')).toBe(`${title} (${batchName})`);
      }),
      { numRuns: 200 },
    );
  });

  test('of any characters whatever gives one event with one alarm and good lines', async () => {
    const anyString = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 200 }),
      fc.string({ unit: 'grapheme', maxLength: 200 }),
      fc.array(fc.integer({ min: 0, max: 0xffff }), { maxLength: 100 }).map((units) => String.fromCharCode(...units)),
      fc.constantFrom('a\r\nEND:VCALENDAR\r\nb', '\u202Eevil', '\u0000', 'x\r\n\ty', '\uD800', 'é'.repeat(500)),
    );
    await fc.assert(
      fc.asyncProperty(anyString, anyString, anyString, async (title, batchName, text) => {
        const written = await write([eventOf({ title, batchName, text })]);
        expectGoodLines(written);
        expect(written).not.toMatch(/[\u202A-\u202E\u2066-\u2069]/);
        const found = eventsIn(written);
        expect(found).toHaveLength(1);
        expect(found[0]?.component.getAllSubcomponents('valarm')).toHaveLength(1);
      }),
      { numRuns: 300 },
    );
  });

  test('that tries to end the event stays text', async () => {
    const { summary, description } = await readBack(
      eventOf({ batchName: 'x\r\nEND:VEVENT\r\nBEGIN:VEVENT', text: 'one\r\ntwo\rthree\u2028four' }),
    );
    expect(summary).toBe('Strain the grains out (x END:VEVENT BEGIN:VEVENT)');
    expect(description).toBe('one\ntwo\nthree\nfour');
  });
});

describe('no file', () => {
  test('is written of no step', async () => {
    expect(calendarFile([], now)).toEqual({ text: null, problem: expect.stringMatching(/Plan a batch first/) });
  });

  test.each([NaN, Infinity, -1, 0.5, 1e12])('is written where a step is at %d minutes', async (at) => {
    const { text, problem } = calendarFile([eventOf(), eventOf({ id: 'last', title: 'Last day', at })], now);
    expect(text).toBeNull();
    expect(problem).toMatch(/^“Last day” has no time/);
  });
});
