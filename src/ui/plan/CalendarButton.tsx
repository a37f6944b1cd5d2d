import { useState } from 'preact/hooks';
import type { TimelineEvent } from '../../formula/time/event';
import { alarmMinutes, calendarFile } from '../../interchange/calendar-file';
import { downloadText, fileNameOf } from '../paper/download-text';

interface Props {
  readonly events: () => readonly TimelineEvent[];
  /** What the file is named for. */
  readonly name: string;
  /** What the button is called. */
  readonly label: string;
}

/** Makes a calendar file of a plan, and says what came of it. */
export function CalendarButton({ events, name, label }: Props) {
  const [said, setSaid] = useState<string | null>(null);
  const [made, setMade] = useState<string | null>(null);
  const hasMoved = made !== null && made !== timesOf(events());
  const make = () => {
    const all = events();
    const { text, problem } = calendarFile(all, new Date());
    setMade(text === null ? null : timesOf(all));
    if (text === null) return setSaid(problem);
    const file = `${fileNameOf(name, 'plan')}.ics`;
    downloadText(text, file, 'text/calendar;charset=utf-8');
    const steps = all.length === 1 ? '1 step' : `${all.length} steps`;
    setSaid(
      `“${file}” is made: ${steps}, with an alarm ${alarmMinutes} minutes before each. Open it in your calendar. Opened again it updates this plan; a plan for another time comes beside it.`,
    );
  };
  return (
    <p class="calendar-file correct">
      <button type="button" class="button" onClick={make}>
        {label}
      </button>
      <span role="status">
        {hasMoved ? 'The plan has changed since you made the calendar file. Make it again.' : said}
      </span>
    </p>
  );
}

/** What is when, to tell whether a plan has moved. */
function timesOf(events: readonly TimelineEvent[]): string {
  return events.map(({ batch, id, at, minutes }) => `${batch} ${id} ${at} ${minutes}`).join(', ');
}
