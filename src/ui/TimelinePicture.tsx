import { writeDay } from '../batch/write-time';
import type { DrawnBatch, Picture, Place } from '../formula/timeline/picture';

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
        {picture.rows.map((row) => (
          <Row key={row.batch} row={row} nights={picture.nights} days={picture.days} />
        ))}
        <ul class="timeline-key">
          {keys.map(({ kind, name }) => (
            <li key={kind}>
              <span class={`timeline-swatch ${kind}`} /> {name}
            </li>
          ))}
        </ul>
      </div>
      {far !== '' && <p class="timeline-far">Too far ahead to be drawn beside the first, only told: {far}.</p>}
    </>
  );
}

const keys = [
  { kind: 'work', name: 'hands needed' },
  { kind: 'soak', name: 'soak' },
  { kind: 'ferment', name: 'first ferment' },
  { kind: 'ripe', name: 'ready, soonest to latest' },
  { kind: 'second', name: 'second ferment' },
  { kind: 'fridge', name: 'fridge' },
  { kind: 'night', name: 'quiet hours' },
] as const;

function styleOf({ left, width }: Place) {
  return { left: `${left}%`, width: `${width}%` };
}

interface RowProps {
  readonly row: DrawnBatch;
  readonly nights: readonly Place[];
  readonly days: Picture['days'];
}

function Row({ row, nights, days }: RowProps) {
  return (
    <>
      <p class="timeline-name">{row.name}</p>
      <div class="timeline-row">
        {nights.map((night) => (
          <span key={night.left} class="night" style={styleOf(night)} />
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
      </div>
    </>
  );
}
