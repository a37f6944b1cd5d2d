import { writeDay } from '../batch/calendar-day';
import type { Batch } from '../batch/document';
import type { Store } from '../batch/store';
import { allergensOf, cautionsAtFoot } from '../formula/cautions';
import { copyCell } from '../formula/copy-cell';
import { isRow } from '../formula/evaluate';
import type { Formulation } from '../formula/formulate';
import { labelOf } from '../formula/labels';
import { type RowId, sections } from '../formula/order';
import { stepsOf } from '../formula/steps';
import { type Kitchen, writeRow } from '../formula/write-row';
import { JarOf } from './JarOf';
import { LinkCode } from './LinkCode';
import { stepAmounts } from './step-amounts';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
}

/** A batch on paper: amounts in both units, its jar, steps, allergens, cautions, dates, and a link to scan. */
export function PrintCard({ batch, store }: Props) {
  const formulation = store.formulationOf(batch);
  const kitchen = store.settings.value;
  return (
    <article class="print-card" aria-label={`Card of ${batch.name}`}>
      <header>
        <div>
          <h2>{batch.name}</h2>
          <p>
            Plant-milk kefir of {formulation.choices.source.name.toLowerCase()}, with{' '}
            {formulation.choices.grain.name.toLowerCase()}
          </p>
        </div>
        <dl>
          <dt>{batch.when?.by === 'drink' ? 'To drink at' : 'To start at'}</dt>
          <dd>
            {batch.when === undefined ? (
              <Blank />
            ) : (
              `${writeDay(batch.when.at.slice(0, 10))}, ${batch.when.at.slice(11)}`
            )}
          </dd>
          <dt>Made on</dt>
          <dd>
            <Blank />
          </dd>
          <dt>Taste by</dt>
          <dd>
            <Blank />
          </dd>
        </dl>
      </header>
      <div class="print-halves">
        <table>
          <caption class="unseen">Amounts</caption>
          <thead>
            <tr>
              <th scope="col">What</th>
              <th scope="col">Metric</th>
              <th scope="col">US kitchen</th>
            </tr>
          </thead>
          {sections.map(({ id, label, rows }) => (
            <tbody key={id}>
              <tr>
                <th scope="rowgroup" colSpan={3}>
                  {label}
                </th>
              </tr>
              {rows.map((row) => (
                <Amount key={row} id={row} formulation={formulation} kitchen={kitchen} />
              ))}
            </tbody>
          ))}
        </table>
        <div class="print-side">
          <JarOf formulation={formulation} kitchen={kitchen} />
          <p class="print-fill">{fillLine(formulation, kitchen)}</p>
          <LinkCode batch={batch} store={store} />
        </div>
      </div>
      <section>
        <h3>Steps</h3>
        <ol>
          {stepsOf(formulation, stepAmounts(formulation, kitchen), kitchen).map((step) => (
            <li key={step.id}>
              <b>{step.title}.</b> {step.text} {step.perJar}
            </li>
          ))}
        </ol>
      </section>
      <section>
        <h3>Take care</h3>
        <p>{allergensOf(formulation).sentence}</p>
        <ul>
          {cautionsAtFoot(formulation).map(({ id, text }) => (
            <li key={id}>{text}</li>
          ))}
        </ul>
      </section>
    </article>
  );
}

function Blank() {
  return <span class="blank" />;
}

/** A line of the table; a quantity that this batch does not have is left out. */
function Amount({ id, formulation, kitchen }: { id: RowId; formulation: Formulation; kitchen: Kitchen }) {
  const { status } = formulation.rows[id];
  if (status === 'absent') return null;
  const written = writeRow(formulation, id, kitchen);
  if (!isRow(id)) {
    return (
      <tr>
        <th scope="row">{labelOf(id)}</th>
        <td colSpan={2}>{copyCell(formulation, id, kitchen)}</td>
      </tr>
    );
  }
  const range = written?.range ?? null;
  return (
    <tr>
      <th scope="row">
        {labelOf(id)}
        {status === 'given' || status === 'measured' ? <small> {status}</small> : null}
      </th>
      <td>{written === null ? '–' : range === null ? written.metric : `${range}, likely ${written.metric}`}</td>
      <td>{written?.us ?? ''}</td>
    </tr>
  );
}

/** Where to fill to, in words with both units. */
function fillLine(formulation: Formulation, kitchen: Kitchen): string {
  const depth = writeRow(formulation, 'headspaceDepth', kitchen);
  return depth === null ? '' : `Fill to ${depth.metric} (${depth.us ?? ''}) below the rim, grains in.`;
}
