import { useState } from 'preact/hooks';
import type { Batch } from '../../batch/document/document';
import { cellProblem, cellRemark, cellWaysOut, type Meant } from '../../batch/reading/cell-problem';
import type { Store } from '../../batch/store/store';
import type { MeasuredRowId } from '../../formula/recipe/order';
import { labelOf } from '../../formula/words/labels';
import { leading } from '../../formula/words/leading';
import { writeNumeric } from '../../formula/words/write-row';
import { findMeasured } from '../../formula/working/keep-measured';
import { writeTrimmed } from '../../measure/write-quantity';
import { Refusal, Typed } from '../page/Typed';
import { WaysOut } from '../sheet/WaysOut';

interface Props {
  readonly id: MeasuredRowId;
  readonly batch: Batch;
  readonly store: Store;
}

const places = 3;

/** The second entry of a row: what the scale, the jug or the strip said. It never resizes the batch. */
export function Measuring({ id, batch, store }: Props) {
  const kitchen = store.settings.value;
  const cell = batch.measured[id] ?? null;
  const [text, setText] = useState(cell?.text ?? '');
  const problem = cell === null ? null : cellProblem(id, cell, kitchen);
  const formulation = store.formulationOf(batch);
  const remark = cell === null ? null : cellRemark(id, cell, kitchen);
  const asked = cell === null ? [] : cellWaysOut(id, cell, kitchen, formulation);
  const { planned } = formulation.rows[id];
  const found = findMeasured(id, formulation);
  const keep = (event: Event) => {
    event.preventDefault();
    store.measureCell(batch.id, id, text);
  };
  const take = (meant: Meant) => {
    setText(meant.text);
    store.measureCell(batch.id, id, meant.text);
  };
  return (
    <form class="correct" onSubmit={keep}>
      <label>
        Measured: what it really was <Typed aria-label={`Measured: ${labelOf(id)}`} value={text} onText={setText} />
      </label>
      <button type="submit" class="button">
        Measured
      </button>
      {cell !== null && (
        <button
          type="button"
          class="follow"
          onClick={() => {
            setText('');
            store.clearMeasured(batch.id, id);
          }}
        >
          Forget the measurement
        </button>
      )}
      {planned !== null && (
        <p>Planned: {leading(writeNumeric(formulation, id, planned, kitchen), kitchen.leads).first}</p>
      )}
      {found !== null && (
        <button type="button" class="button" onClick={() => store.keepMeasured(found.key, found.value, found.label)}>
          Keep as yours: {found.label} {writeTrimmed(found.value, places, kitchen.decimalComma)}
        </button>
      )}
      {remark !== null && <p class="second">{remark}</p>}
      <Refusal why={problem}>
        <WaysOut ways={asked} onTake={take} />
      </Refusal>
    </form>
  );
}
