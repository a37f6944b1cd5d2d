import type { Batch } from '../../batch/document';
import type { Store } from '../../batch/store';
import { allergensOf, cautionsAtFoot } from '../../formula/cautions';
import { copyCell } from '../../formula/copy-cell';
import { drawJar } from '../../formula/drawing';
import { isRow } from '../../formula/evaluate';
import type { Formulation } from '../../formula/formulate';
import { labelOfBatch } from '../../formula/label-text';
import { labelOf } from '../../formula/labels';
import { type RowId, sections } from '../../formula/order';
import { stepsOf } from '../../formula/steps';
import { type Kitchen, writeRow } from '../../formula/write-row';
import { describeJar } from '../jar/describe-jar';
import { JarDrawing } from '../jar/JarDrawing';
import { stepAmounts } from '../steps/step-amounts';
import { LinkCode } from './LinkCode';
import { PrintDates, PrintFound } from './PrintDates';
import { PrintProblems } from './PrintProblems';

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
          <p>{whatItIs(formulation)}</p>
        </div>
        <PrintDates batch={batch} store={store} />
      </header>
      <PrintProblems batch={batch} store={store} />
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
                  {rows.map((row) => (
                    <Choice key={row} id={row} formulation={formulation} kitchen={kitchen} />
                  ))}
                </th>
              </tr>
              {rows.map((row) => (
                <Amount key={row} id={row} formulation={formulation} kitchen={kitchen} />
              ))}
            </tbody>
          ))}
        </table>
        <div class="print-side">
          <JarDrawing
            drawing={drawJar(formulation)}
            words={describeJar(formulation, kitchen)}
            headspace={writeRow(formulation, 'headspaceDepth', kitchen)?.metric ?? ''}
          />
          <p class="print-fill">{fillLine(formulation, kitchen)}</p>
          <LinkCode batch={batch} store={store} />
          <PrintFound />
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
          {cautionsAtFoot(formulation)
            .filter(({ id }) => !id.startsWith('allergen:'))
            .map(({ id, text }) => (
              <li key={id}>{text}</li>
            ))}
        </ul>
      </section>
    </article>
  );
}

/** What the batch is, as its label says it. */
function whatItIs(formulation: Formulation): string {
  const days = { made: null, tasteBy: null, useBy: null };
  return labelOfBatch(formulation, { name: '', days }).find(({ id }) => id === 'what')?.text ?? '';
}

interface OfRow {
  readonly id: RowId;
  readonly formulation: Formulation;
  readonly kitchen: Kitchen;
}

/** What was chosen in a section stands beside its name: a line less for each. */
function Choice({ id, formulation, kitchen }: OfRow) {
  return isRow(id) ? null : <span>: {copyCell(formulation, id, kitchen)}</span>;
}

/** A line of the table, and one of each jar where there are several; a quantity that this batch does not have is left out. */
function Amount({ id, formulation, kitchen }: OfRow) {
  const { status } = formulation.rows[id];
  if (status === 'absent' || !isRow(id)) return null;
  const written = writeRow(formulation, id, kitchen);
  const { range = null, each = null } = written ?? {};
  return (
    <>
      <tr>
        <th scope="row">
          {labelOf(id)}
          {status === 'given' || status === 'measured' ? <small> {status}</small> : null}
        </th>
        <td>{written === null ? '–' : range === null ? written.metric : `${range}, likely ${written.metric}`}</td>
        <td>{written?.us ?? ''}</td>
      </tr>
      {each !== null && (
        <tr class="each">
          <th scope="row">in each jar</th>
          <td>{each.metric}</td>
          <td>{each.us ?? ''}</td>
        </tr>
      )}
    </>
  );
}

/** Where to fill to, in words with both units. */
function fillLine(formulation: Formulation, kitchen: Kitchen): string {
  const depth = writeRow(formulation, 'headspaceDepth', kitchen);
  if (depth === null) return '';
  const { value: jars } = formulation.rows.vesselCount;
  const what = typeof jars === 'number' && jars > 1 ? `Fill each of ${jars} jars` : 'Fill';
  return `${what} to ${depth.metric} (${depth.us ?? ''}) below the rim, grains in.`;
}
