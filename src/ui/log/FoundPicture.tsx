import { useMemo, useState } from 'preact/hooks';
import { latestFirst, type teachersByEntry } from '../../batch/edits/log-edits';
import { linesAtOnce, notShown, oneMorePress } from '../../batch/edits/log-search';
import { foundWords, writeWhen } from '../../batch/edits/log-words';
import { type Kitchen, writeValue } from '../../formula/words/write-row';
import { drawFound } from './found-picture';

interface Props {
  readonly teachers: ReturnType<typeof teachersByEntry>;
  readonly kitchen: Kitchen;
}

const kinds = ['flat', 'ready', 'sour'] as const;

/** Each look at a jar, the hours of it against those that the sheet expected at the usual pace, drawn and as a table. */
export function FoundPicture({ teachers, kitchen }: Props) {
  const [most, setMost] = useState(linesAtOnce);
  const looks = useMemo(() => [...teachers.values()], [teachers]);
  const entries = useMemo(() => [...teachers].sort(([one], [other]) => latestFirst(one, other)), [teachers]);
  const picture = useMemo(() => drawFound(looks, kitchen.decimalComma), [looks, kitchen.decimalComma]);
  if (picture === null) return <p>Nothing to draw yet.</p>;
  const write = (hours: number | null): string =>
    hours === null ? '' : writeValue(hours, 'time', null, kitchen).metric;
  const counts = kinds.map(
    (kind) => `${looks.filter(({ found }) => found === kind).length} ${foundWords[kind].toLowerCase()}`,
  );
  const words = `Hours when looked at, upward, against hours expected at the usual pace: ${counts.join(', ')}. On the line a jar was looked at just when it was expected to be ready; ready below the line is sooner than usual.`;
  return (
    <figure class="ripening-figure found-figure">
      <div class="ripening-chart" role="img" aria-label={words}>
        <p class="ripening-hours">hours when looked at</p>
        <div class="ripening-plot">
          <svg viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
            <path class="grid" d={picture.grid} />
            <path class="end" d={picture.expected} />
            {kinds.map((kind) => (
              <path key={kind} class={`found-${kind}`} d={picture[kind]} />
            ))}
          </svg>
          {picture.upward.map(({ at, text }) => (
            <span key={text} class="hour" style={{ top: `${at}%` }}>
              {text}
            </span>
          ))}
        </div>
        <div class="ripening-axis">
          <span class="unit">h</span>
          {picture.across.map(({ at, text }) => (
            <span key={text} class="tick" style={{ left: `${at}%` }}>
              {text}
            </span>
          ))}
        </div>
        <p class="ripening-hours">hours expected at the usual pace</p>
      </div>
      <figcaption>
        <ul class="ripening-key">
          {kinds.map((kind) => (
            <li key={kind}>
              <svg class="ripening-swatch" viewBox="0 0 24 12" aria-hidden="true">
                <path class={`found-${kind}`} d="M12 6h0" />
              </svg>{' '}
              {foundWords[kind].toLowerCase()}
            </li>
          ))}
          <li>
            <svg class="ripening-swatch" viewBox="0 0 24 12" aria-hidden="true">
              <path class="end" d="M1 6H23" />
            </svg>{' '}
            as expected
          </li>
        </ul>
        {picture.beyond > 0 && <p class="hint">{picture.beyond} at the upper edge lie beyond it.</p>}
        <p class="hint">Ready below the line: this kitchen is sooner than usual. Not sour yet above it: later.</p>
      </figcaption>
      <details class="ripening-table">
        <summary>The same as a table</summary>
        <table>
          <caption class="unseen">What was found, after how many hours, and what was expected</caption>
          <thead>
            <tr>
              <th scope="col">When</th>
              <th scope="col">Found</th>
              <th scope="col">After</th>
              <th scope="col">Expected</th>
            </tr>
          </thead>
          <tbody>
            {entries.slice(0, most).map(([entry], at) => (
              <tr key={at}>
                <th scope="row">{writeWhen(entry)}</th>
                <td>{foundWords[entry.found]}</td>
                <td>{write(entry.hours)}</td>
                <td>{write(entry.expected)}</td>
              </tr>
            ))}
          </tbody>
        </table>
        {notShown(entries.length, most) > 0 && (
          <button type="button" class="follow" onClick={() => setMost(oneMorePress(most))}>
            Show more
          </button>
        )}
      </details>
    </figure>
  );
}
