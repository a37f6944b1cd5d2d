import type { ComponentChildren } from 'preact';
import { isRow } from '../../formula/engine/evaluate';
import type { Formulation } from '../../formula/engine/formulate';
import { type ChoiceRowId, type NumericRowId, type RowId, sections } from '../../formula/recipe/order';
import { copyCell } from '../../formula/words/copy-cell';
import { labelOf } from '../../formula/words/labels';
import { leading } from '../../formula/words/leading';
import { type Kitchen, type Written, writeRow } from '../../formula/words/write-row';

interface Props {
  readonly formulation: Formulation;
  readonly kitchen: Kitchen;
}

/** What is weighed and poured, in the order of the work, and which choice says what it is. */
const ingredients: readonly { readonly row: NumericRowId; readonly of: ChoiceRowId | null }[] = [
  { row: 'sourceMass', of: 'source' },
  { row: 'soakWater', of: null },
  { row: 'blendWater', of: null },
  { row: 'sweetenerMass', of: 'sweetener' },
  { row: 'grainMass', of: 'grains' },
];

/** What goes into the batch, to be read at arm's length. */
export function PrintIngredients({ formulation, kitchen }: Props) {
  return (
    <table class="print-ingredients">
      <caption>What goes in</caption>
      <tbody>
        {ingredients.map(({ row, of }) => (
          <Amount key={row} id={row} formulation={formulation} kitchen={kitchen}>
            {of !== null && <span class="print-of">{copyCell(formulation, of, kitchen)}</span>}
          </Amount>
        ))}
      </tbody>
    </table>
  );
}

/** Every other number of the batch, a table a section; the unit that leads stands first. */
export function PrintFigures({ formulation, kitchen }: Props) {
  const [first, second] = kitchen.leads === 'us' ? ['US kitchen', 'Metric'] : ['Metric', 'US kitchen'];
  // No bottle is spoken of where none is sealed.
  const shown = sections.filter(({ id }) => id !== 'bottle' || formulation.rows.bottleTime.value !== 0);
  return (
    <div class="print-figures">
      {shown.map(({ id, label, rows }) => (
        <table key={id}>
          <thead>
            <tr>
              <th scope="rowgroup">
                {label}
                {rows.map((row) => (
                  <Choice key={row} id={row} formulation={formulation} kitchen={kitchen} />
                ))}
              </th>
              <th scope="col">{first}</th>
              <th scope="col">{second}</th>
            </tr>
          </thead>
          <tbody>
            {rows
              .filter((row) => !ingredients.some((one) => one.row === row))
              .map((row) => (
                <Amount key={row} id={row} formulation={formulation} kitchen={kitchen} />
              ))}
          </tbody>
        </table>
      ))}
    </div>
  );
}

interface OfRow extends Props {
  readonly id: RowId;
  /** What stands under the label. */
  readonly children?: ComponentChildren;
}

/** What was chosen in a section stands beside its name: a line less for each. */
function Choice({ id, formulation, kitchen }: OfRow) {
  return isRow(id) ? null : <span>: {copyCell(formulation, id, kitchen)}</span>;
}

/** A line of a table, and one of each jar where there are several; a quantity that this batch does not have is left out. */
function Amount({ id, formulation, kitchen, children }: OfRow) {
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
          {children}
        </th>
        <Both
          written={
            written === null || range === null ? written : { ...written, metric: `${range}, likely ${written.metric}` }
          }
          kitchen={kitchen}
        />
      </tr>
      {each !== null && (
        <tr class="each">
          <th scope="row">in each jar</th>
          <Both written={each} kitchen={kitchen} />
        </tr>
      )}
    </>
  );
}

/** An amount in both units, the one that leads first. */
function Both({ written, kitchen }: { readonly written: Written | null; readonly kitchen: Kitchen }) {
  const { first, second } = written === null ? { first: '–', second: null } : leading(written, kitchen.leads);
  return (
    <>
      <td>{first}</td>
      <td>{second ?? ''}</td>
    </>
  );
}
