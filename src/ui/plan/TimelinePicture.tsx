import { writeDay, writeHour } from '../../batch/reading/write-time';
import type { Instant } from '../../formula/time/event';
import type { DrawnBatch, Picture, Place } from './timeline-picture';

/** All planned batches over one line of time, to scale. The lists beside it say the same in words. */
export function TimelinePicture({ picture }: { picture: Picture }) {
  const far = picture.leftOut.map((name) => `“${name}”`).join(', ');
  return (
    <>
      <div class="timeline-picture" aria-hidden="true">
        <div class="timeline-days">
          {picture.days.map((day) => (
            <span key={day.at} class="timeline-day" style={styleOf(day)}>
              {day.isNamed ? writeDay(day.at) : ''}
            </span>
          ))}
        </div>
        {(picture.hours.length > 0 || picture.present !== null) && (
          <div class={picture.days.length > mostRoomy ? 'timeline-hours dense' : 'timeline-hours'}>
            {picture.hours
              .filter(({ isNamed }) => isNamed)
              .map(({ at, left }) => (
                <Hour key={at} at={at} left={left} />
              ))}
            {picture.present !== null && (
              <b class="timeline-now" style={{ left: `${picture.present}%` }}>
                now
              </b>
            )}
          </div>
        )}
        {picture.rows.map((row) => (
          <Row key={row.batch} row={row} picture={picture} />
        ))}
        <ul class="timeline-key">
          {keys.map(({ kind, name }) => (
            <li key={kind}>
              <span class={`timeline-swatch ${kind}`} /> {name}
            </li>
          ))}
          {dots.map(({ kind, name }) => (
            <li key={kind}>
              <span class={`timeline-dot ${kind}`} /> {name}
            </li>
          ))}
        </ul>
      </div>
      {far !== '' && <p class="timeline-far">Too far ahead to be drawn beside the first, only told: {far}.</p>}
    </>
  );
}

/** In so many days there is room for am and pm beside the hours. */
const mostRoomy = 4;

const keys = [
  { kind: 'work', name: 'hands needed' },
  { kind: 'soak', name: 'soak' },
  { kind: 'ferment', name: 'first ferment' },
  { kind: 'ripe', name: 'ready, soonest to latest' },
  { kind: 'second', name: 'second ferment' },
  { kind: 'fridge', name: 'fridge' },
  { kind: 'night', name: 'quiet hours' },
] as const;

const dots = [
  { kind: 'taste', name: 'taste or test' },
  { kind: 'drink', name: 'first glass' },
] as const;

function styleOf({ left, width }: Place) {
  return { left: `${left}%`, width: `${width}%` };
}

function Hour({ at, left }: { readonly at: Instant; readonly left: number }) {
  const { hour, half } = writeHour(at);
  return (
    <span style={{ left: `${left}%` }}>
      {hour}
      {half !== '' && <i> {half}</i>}
    </span>
  );
}

interface RowProps {
  readonly row: DrawnBatch;
  readonly picture: Picture;
}

function Row({ row, picture: { nights, days, hours, present } }: RowProps) {
  return (
    <>
      <p class="timeline-name">
        {row.name}
        {row.until !== null && <span class="timeline-until">until {writeDay(row.until)} →</span>}
      </p>
      <div class="timeline-row">
        {nights.map((night) => (
          <span key={night.left} class="night" style={styleOf(night)} />
        ))}
        {hours.map(({ at, left }) => (
          <span key={at} class="hour" style={{ left: `${left}%` }} />
        ))}
        {days.map((day) => (
          <span key={day.at} class="midnight" style={styleOf(day)} />
        ))}
        {row.spans.map((span) => (
          <span
            key={`${span.kind} ${span.left}`}
            class={span.isOpen ? `${span.kind} open` : span.kind}
            style={styleOf(span)}
          />
        ))}
        {row.marks.map(({ step, left }) => (
          <span
            key={step.id}
            class={step.inNight ? `mark ${step.kind} in-night` : `mark ${step.kind}`}
            style={{ left: `${left}%` }}
          />
        ))}
        {present !== null && <span class="present" style={{ left: `${present}%` }} />}
      </div>
    </>
  );
}
