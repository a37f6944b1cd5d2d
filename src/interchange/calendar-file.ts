import type { TimelineEvent } from '../formula/time/event';

export type CalendarFile =
  | { readonly text: string; readonly problem: null }
  /** Why there is none, and what to do. */
  | { readonly text: null; readonly problem: string };

/** How long before a step its alarm goes off: time to come to the kitchen. */
export const alarmMinutes = 5;

/** A calendar shows nothing of an event that takes no time, so a mark is given the least that is seen and tapped. */
const markMinutes = 5;

const millisecondsInMinute = 60_000;
const afterLast = Date.UTC(10_000, 0, 1);
/** Where this browser keeps its mark. */
const markKey = 'jarwright.calendar';
const markBytes = 16;
const mostOctets = 75;

// A file that is only opened is sent by nobody, and METHOD would ask for an organiser (RFC 5546).
const opening = ['BEGIN:VCALENDAR', 'VERSION:2.0', 'CALSCALE:GREGORIAN', 'PRODID:-//Jarwright//Plan of batches//EN'];

/**
 * The steps of one or many batches as a calendar file (RFC 5545): an event a step, in UTC, with an alarm; text for a
 * file named .ics. `now` is the moment it is written. The UID of a step is of its batch, its id, what its batch was
 * planned for, and the mark of this browser: so a later file of the same plan moves the steps of an earlier one, and
 * another plan, or another cook’s, has others. Nothing to write, or a time before 1970 or after 9999, gives a problem in
 * words.
 */
export function calendarFile(events: readonly TimelineEvent[], now: Date, mark = markOfBrowser()): CalendarFile {
  if (events.length === 0) return refuse('There is no step to put in a calendar. Plan a batch first.');
  const misplaced = events.find((event) => !isPlaced(event));
  if (misplaced !== undefined) {
    return refuse(`“${cleanLine(misplaced.title)}” has no time that a calendar can hold. Plan it again.`);
  }
  const lines = [...opening, ...events.flatMap((event) => linesOf(event, now, mark)), 'END:VCALENDAR'];
  return { text: lines.map((line) => `${foldLine(line)}\r\n`).join(''), problem: null };
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

function linesOf(
  { id, batch, batchName, plannedFor, title, text, at, minutes, hands }: TimelineEvent,
  now: Date,
  mark: string,
): readonly string[] {
  const name = cleanLine(batchName);
  const summary = escapeText(name === '' ? cleanLine(title) : `${cleanLine(title)} (${name})`);
  const description = escapeText(cleanText(text));
  return [
    'BEGIN:VEVENT',
    `UID:${plainId(batch)}.${plannedFor}.${plainId(id)}.${plainId(mark)}@jarwright.invalid`,
    `DTSTAMP:${writeUtc(now.getTime())}`,
    `DTSTART:${writeUtc(at * millisecondsInMinute)}`,
    `DTEND:${writeUtc(endOf(at, minutes))}`,
    `SUMMARY:${summary}`,
    ...(description === '' ? [] : [`DESCRIPTION:${description}`]),
    `TRANSP:${hands ? 'OPAQUE' : 'TRANSPARENT'}`,
    'BEGIN:VALARM',
    'ACTION:DISPLAY',
    `DESCRIPTION:${summary}`,
    `TRIGGER:-PT${alarmMinutes}M`,
    'END:VALARM',
    'END:VEVENT',
  ];
}

/** A time in milliseconds since 1970, to the second (RFC 5545 § 3.3.5). */
function writeUtc(at: number): string {
  return new Date(at).toISOString().replaceAll(/[-:]|\.\d+/g, '');
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

/** RFC 5545 § 3.3.11. */
function escapeText(text: string): string {
  return text.replaceAll(/[\\;,]/g, '\\$&').replaceAll('\n', '\\n');
}

/** Lines of at most 75 octets (RFC 5545 § 3.1), no character cut in two. */
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
