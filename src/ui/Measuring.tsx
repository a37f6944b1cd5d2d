import { useState } from 'preact/hooks';
import { cellProblem } from '../batch/cell-problem';
import type { Batch } from '../batch/document';
import type { Store } from '../batch/store';
import { labelOf } from '../formula/labels';
import type { MeasuredRowId } from '../formula/order';

interface Props {
  readonly id: MeasuredRowId;
  readonly batch: Batch;
  readonly store: Store;
}

/** The second entry of a row: what the scale, the jug or the strip said. It never resizes the batch. */
export function Measuring({ id, batch, store }: Props) {
  const cell = batch.measured[id] ?? null;
  const [text, setText] = useState(cell?.text ?? '');
  const problem = cell === null ? null : cellProblem(id, cell, store.settings.value);
  const keep = (event: Event) => {
    event.preventDefault();
    store.measureCell(batch.id, id, text);
  };
  return (
    <form class="correct" onSubmit={keep}>
      <label>
        What it really was{' '}
        <input
          aria-label={`Measured: ${labelOf(id)}`}
          value={text}
          autocomplete="off"
          onInput={(event) => setText(event.currentTarget.value)}
        />
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
      {problem !== null && (
        <p class="problem refusal" role="alert">
          <span>{problem}</span>
        </p>
      )}
    </form>
  );
}
