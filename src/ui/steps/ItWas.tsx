import { useEffect, useRef, useState } from 'preact/hooks';
import { cellProblem } from '../../batch/cell-problem';
import type { Batch } from '../../batch/document';
import { bareUnitOf, isBlank } from '../../batch/read-cell';
import type { Store } from '../../batch/store';
import { labelOf } from '../../formula/labels';
import { movedBy } from '../../formula/measured-effect';
import type { MeasuredRowId } from '../../formula/order';
import { writeNumeric } from '../../formula/write-row';
import { units } from '../../measure/units';
import { leading } from '../jar/leading';

interface Props {
  readonly row: MeasuredRowId;
  readonly batch: Batch;
  readonly store: Store;
}

/** What is measured, where it is measured. */
const things: Readonly<Partial<Record<MeasuredRowId, string>>> = {
  soakedMass: 'soaked',
  milkVolume: 'milk',
  pulpMass: 'pulp',
};

/** “It was …”: a press, and what the scale or the jug said can be typed; then what it was, and which amounts move with it. */
export function ItWas({ row, batch, store }: Props) {
  const cell = batch.measured[row] ?? null;
  const problem = cell === null ? null : cellProblem(row, cell, store.settings.value);
  const [isOpen, setOpen] = useState(false);
  const button = useRef<HTMLButtonElement>(null);
  const wasOpen = useRef(false);
  const isAsked = isOpen || problem !== null;
  // The field goes with the press that keeps it; what is pressed next is where the focus stays.
  useEffect(() => {
    if (wasOpen.current && !isAsked) button.current?.focus();
    wasOpen.current = isAsked;
  }, [isAsked]);
  const thing = things[row] ?? labelOf(row);
  if (isAsked)
    return <Asked row={row} batch={batch} store={store} thing={thing} problem={problem} close={() => setOpen(false)} />;
  return (
    <div class="it-was">
      {cell !== null && <Found row={row} batch={batch} store={store} thing={thing} />}
      <button type="button" class="button" ref={button} aria-label={`${thing}: it was …`} onClick={() => setOpen(true)}>
        {cell === null ? `${thing}: it was …` : 'change'}
      </button>
    </div>
  );
}

interface AskedProps extends Props {
  readonly thing: string;
  readonly problem: string | null;
  readonly close: () => void;
}

function Asked({ row, batch, store, thing, problem, close }: AskedProps) {
  const cell = batch.measured[row] ?? null;
  const [text, setText] = useState(cell?.text ?? '');
  const input = useRef<HTMLInputElement>(null);
  useEffect(() => input.current?.focus(), []);
  const keep = (event: Event) => {
    event.preventDefault();
    if (!isBlank(text)) store.measureCell(batch.id, row, text);
    else if (cell !== null) store.clearMeasured(batch.id, row);
    close();
  };
  return (
    <form class="it-was asked" onSubmit={keep}>
      <label>
        {thing}: it was{' '}
        <input
          ref={input}
          value={text}
          inputMode="decimal"
          autocomplete="off"
          aria-label={`Measured: ${labelOf(row)}`}
          aria-invalid={problem !== null}
          onInput={({ currentTarget: { value } }) => setText(value)}
          onKeyDown={({ key }) => key === 'Escape' && problem === null && close()}
        />{' '}
        {units[bareUnitOf(row, store.settings.value)].symbol}
      </label>
      <button type="submit" class="button next">
        Keep
      </button>
      {cell !== null && (
        <button
          type="button"
          class="button"
          onClick={() => {
            store.clearMeasured(batch.id, row);
            close();
          }}
        >
          Forget it
        </button>
      )}
      {problem !== null && (
        <div class="problem refusal" role="alert">
          <p>{problem}</p>
        </div>
      )}
    </form>
  );
}

/** What it was, what was expected, and what is weighed out otherwise for it. */
function Found({ row, batch, store, thing }: Props & { readonly thing: string }) {
  const kitchen = store.settings.value;
  const formulation = store.formulationOf(batch);
  const { value, planned } = formulation.rows[row];
  const moved = movedBy(row, formulation, kitchen);
  const write = (amount: number): string =>
    leading(writeNumeric(formulation, row, amount, kitchen), kitchen.leads).first;
  return (
    <p>
      {thing}: it was <b>{typeof value === 'number' ? write(value) : batch.measured[row]?.text}</b>
      {planned !== null && `, expected ${write(planned)}`}.{' '}
      {moved.length === 0 ? (
        'No other amount changes.'
      ) : (
        <>
          So now:{' '}
          {moved.map(({ row: id, from, to }, place) => (
            <span key={id}>
              {place > 0 && '; '}
              {labelOf(id)} <b>{to}</b> (was {from})
            </span>
          ))}
          .
        </>
      )}
    </p>
  );
}
