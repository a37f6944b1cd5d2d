import type { TimelineEvent } from '../formula/timeline/event';

export type CalendarFile =
  | { readonly text: string; readonly problem: null }
  /** Why there is none, and what to do. */
  | { readonly text: null; readonly problem: string };

/** How long before a step its alarm goes off: time to come to the kitchen. */
export const alarmMinutes = 5;

/** A calendar shows nothing of an event that takes no time, so a mark is given the least that is seen and tapped. */
const markMinutes = 5;

const productId = '-//Jarwright//Plan of batches//EN';
const millisecondsInMinute = 60_000;
const afterLast = Date.UTC(10_000, 0, 1);
/** Where this browser keeps its mark. */
const markKey = 'jarwright.calendar';
const markBytes = 16;
const mostOctets = 75;

/**
 * The steps of one or many batches as a calendar file (RFC 5545): an event a step, in UTC, with an alarm; text for a
 * file named .ics. `now` is the moment it is written. The UID of a step is of its batch, its id, what its batch was
 * planned for, and the mark of this browser: so a later file of the same plan moves the steps of an earlier one, and
 * another plan, or another cook’s, has others. Nothing to write, or a time before 1970 or after 9999, gives a problem in
 * words. Rejects only where the library can't be loaded.
 */
export async function calendarFile(
  events: readonly TimelineEvent[],
  now: Date,
  mark = markOfBrowser(),
): Promise<CalendarFile> {
  if (events.length === 0) return refuse('There is no step to put in a calendar. Plan a batch first.');
  const misplaced = events.find((event) => !isPlaced(event));
  if (misplaced !== undefined) {
    return refuse(`“${cleanLine(misplaced.title)}” has no time that a calendar can hold. Plan it again.`);
  }
  const { createEvents } = await import('ics');
  // A file that is only opened is sent by nobody, and METHOD would ask for an organiser (RFC 5546); blank leaves it out.
  const { value } = createEvents(
    events.map((event) => describeEvent(event, now, mark)),
    { productId, method: '' },
  );
  return value === null
    ? refuse('The calendar file could not be written. Rename the batch in plain letters and try again.')
    : { text: foldByOctets(value), problem: null };
}

function refuse(problem: string): CalendarFile {
  return { text: null, problem };
}

function isPlaced({ at, minutes }: TimelineEvent): boolean {
  return Number.isSafeInteger(at) && at >= 0 && minutes >= 0 && endOf(at, minutes) < afterLast;
}

/** In milliseconds since 1970. */
function endOf(at: number, minutes: number): number {
  return (at + Math.ceil(minutes > 0 ? minutes : markMinutes)) * millisecondsInMinute;
}

let unkept: string | null = null;

/**
 * What tells the plans made in this browser from those of others in a calendar that several cooks share: batches are
 * only counted, so that everybody’s first has one id. Made by chance once, and kept; where nothing can be kept, it lasts
 * as long as the page is open, since two events for one are better than one that overwrites another’s.
 */
function markOfBrowser(): string {
  try {
    const kept = localStorage.getItem(markKey);
    if (kept !== null && /^[0-9a-f]{32}$/.test(kept)) return kept;
    unkept ??= newMark();
    localStorage.setItem(markKey, unkept);
  } catch {
    unkept ??= newMark();
  }
  return unkept;
}

function newMark(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(markBytes));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

function describeEvent(
  { id, batch, batchName, plannedFor, title, text, at, minutes, hands }: TimelineEvent,
  now: Date,
  mark: string,
) {
  const name = cleanLine(batchName);
  const summary = name === '' ? cleanLine(title) : `${cleanLine(title)} (${name})`;
  return {
    uid: `${plainId(batch)}.${plannedFor}.${plainId(id)}.${plainId(mark)}@jarwright.invalid`,
    timestamp: now.getTime(),
    title: summary,
    description: cleanText(text),
    start: at * millisecondsInMinute,
    end: endOf(at, minutes),
    transp: hands ? ('OPAQUE' as const) : ('TRANSPARENT' as const),
    alarms: [
      {
        action: 'display' as const,
        // ics 3.12.0 escapes the text of an event and not that of its alarm.
        description: escapeText(summary),
        // In minutes: ics 3.12.0 writes a duration of nothing as PT, and one of whole days as P1DT, which are none.
        trigger: { before: true, minutes: alarmMinutes },
      },
    ],
  };
}

/** Letters, digits and hyphens stay; anything else is written by its number, so that two ids never become one. */
function plainId(id: string): string {
  return id.replaceAll(/[^A-Za-z0-9-]/gu, (character) => `_${(character.codePointAt(0) ?? 0).toString(16)}_`);
}

/**
 * The text without what RFC 5545 lets no value hold (control characters but tabs and line ends), without half
 * characters, and without controls that would turn the words of the calendar around it.
 */
function cleanText(text: string): string {
  return text
    .replaceAll(/\r\n?|[\u2028\u2029]/g, '\n')
    .replaceAll(/\p{Cs}/gu, '\uFFFD')
    .replaceAll(/(?![\t\n])\p{Cc}|[\u202A-\u202E\u2066-\u2069]/gu, '');
}

function cleanLine(text: string): string {
  return cleanText(text)
    .replaceAll(/[\t\n]+/g, ' ')
    .trim();
}

function escapeText(text: string): string {
  return text.replaceAll(/[\\;,]/g, '\\$&').replaceAll('\n', '\\n');
}

/**
 * Lines of at most 75 octets, no character cut in two. ics 3.12.0 counts characters instead, so that a line of accents
 * or emoji is too long. Its hint to fetch the calendar anew each hour is left out: a file is not fetched.
 */
function foldByOctets(calendar: string): string {
  return calendar
    .replaceAll('\r\n\t', '')
    .split('\r\n')
    .filter((line) => !line.startsWith('X-PUBLISHED-TTL:'))
    .map(foldLine)
    .join('\r\n');
}

function foldLine(line: string): string {
  const encoder = new TextEncoder();
  let folded = '';
  let room = mostOctets;
  for (const character of line) {
    const { length } = encoder.encode(character);
    if (length > room) {
      folded += '\r\n ';
      room = mostOctets - 1;
    }
    folded += character;
    room -= length;
  }
  return folded;
}
