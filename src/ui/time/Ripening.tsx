import type { Formulation } from '../../formula/engine/formulate';
import { type RipeningPoint, ripeningAgainstRoom } from '../../formula/time/ripening-chart';
import { describeChart, describeReady, ripeningLines } from '../../formula/time/ripening-words';
import type { Kitchen } from '../../formula/words/write-row';
import { Whose } from '../page/Whose';
import { drawRipening, type RipeningPicture, type Tick } from './ripening-picture';
import { waitingPlace } from './Waiting';

interface Props {
  readonly formulation: Formulation;
  readonly kitchen: Kitchen;
  readonly name: string;
  /** Whether it is of a carton that was opened for this batch. */
  readonly isOpened: boolean;
}

/** When it is ready, drawn against the temperature of the room, and the same in words and as a table. */
export function Ripening({ formulation, kitchen, name, isOpened }: Props) {
  const points = ripeningAgainstRoom(formulation);
  const picture = points === null ? null : drawRipening(points, formulation, kitchen.decimalComma);
  return (
    <section class="time-card ripening" aria-label={`Time for ${name}`}>
      <h2>
        Time
        <Whose />
      </h2>
      <p role="status">{describeReady(formulation, kitchen)}</p>
      {formulation.choices.source.slower !== undefined && (
        <p>
          A carton can take days, or never turn.{' '}
          {isOpened ? (
            <>
              This one was opened for the batch: <a href={`#${waitingPlace}`}>taste it and test its pH each day</a>.
            </>
          ) : (
            <>
              <a href={`#${waitingPlace}`}>Say that it was opened for this batch</a>, and there are days to wait, with a
              taste and a pH on each.
            </>
          )}
        </p>
      )}
      {points !== null && picture !== null && (
        <>
          <Chart picture={picture} words={describeChart(points, kitchen)} />
          <Table points={points} kitchen={kitchen} />
        </>
      )}
    </section>
  );
}

/** Curves in a square that stretches to its room; what is written stays as big as all else on the page. */
function Chart({ picture, words }: { picture: RipeningPicture; words: string }) {
  const { point } = picture;
  return (
    <figure class="ripening-figure">
      <div class="ripening-chart" role="img" aria-label={words}>
        <p class="ripening-hours">hours</p>
        <div class="ripening-plot">
          <svg viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
            <path class="grid" d={picture.grid} />
            <path class="band" d={picture.band} />
            <path class="end" d={picture.soonest} />
            <path class="end" d={picture.latest} />
            <path class="likely" d={picture.likely} />
            {point !== null && (
              <>
                <path class="reach" d={point.reach} />
                <path class="dot-edge" d={point.dot} />
                <path class="dot" d={point.dot} />
              </>
            )}
          </svg>
          {picture.hours.map(({ at, text }) => (
            <span key={text} class="hour" style={{ top: `${at}%` }}>
              {text}
            </span>
          ))}
          {point !== null && (
            <b class={`point-text ${point.side}`} style={{ left: `${point.left}%`, top: `${point.top}%` }}>
              {point.text}
            </b>
          )}
        </div>
        <Axis unit="°C" ticks={picture.celsius} />
        <Axis unit="°F" ticks={picture.fahrenheit} />
      </div>
      <figcaption>
        <ul class="ripening-key">
          {point !== null && (
            <li>
              <Swatch kind="dot" /> this batch
            </li>
          )}
          <li>
            <Swatch kind="likely" /> likely
          </li>
          <li>
            <Swatch kind="end" /> soonest and latest
          </li>
        </ul>
      </figcaption>
    </figure>
  );
}

function Axis({ unit, ticks }: { unit: string; ticks: readonly Tick[] }) {
  return (
    <div class="ripening-axis">
      <span class="unit">{unit}</span>
      {ticks.map(({ at, text }) => (
        <span key={text} class="tick" style={{ left: `${at}%` }}>
          {text}
        </span>
      ))}
    </div>
  );
}

function Swatch({ kind }: { kind: 'dot' | 'likely' | 'end' }) {
  return (
    <svg class="ripening-swatch" viewBox="0 0 24 12" aria-hidden="true">
      {kind === 'dot' && <path class="dot-edge" d="M12 6h0" />}
      <path class={kind} d={kind === 'dot' ? 'M12 6h0' : 'M1 6H23'} />
    </svg>
  );
}

function Table({ points, kitchen }: { points: readonly RipeningPoint[]; kitchen: Kitchen }) {
  return (
    <details class="ripening-table">
      <summary>The chart as a table</summary>
      <table>
        <caption class="unseen">Hours until ready to taste, by room temperature</caption>
        <thead>
          <tr>
            <th scope="col">Room</th>
            <th scope="col">Soonest</th>
            <th scope="col">Likely</th>
            <th scope="col">Latest</th>
          </tr>
        </thead>
        <tbody>
          {ripeningLines(points, kitchen).map(({ room, soonest, likely, latest }) => (
            <tr key={room}>
              <th scope="row">{room}</th>
              <td>{soonest}</td>
              <td>
                <b>{likely}</b>
              </td>
              <td>{latest}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
