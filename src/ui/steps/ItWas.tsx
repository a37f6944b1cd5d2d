import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Batch } from '../../batch/document/document';
import { cellProblem } from '../../batch/reading/cell-problem';
import { bareUnitOf, isBlank } from '../../batch/reading/read-cell';
import type { Store } from '../../batch/store/store';
import { movedBy } from '../../formula/advice/measured-effect';
import type { MeasuredRowId } from '../../formula/recipe/order';
import { labelOf } from '../../formula/words/labels';
import { leading } from '../../formula/words/leading';
import { writeNumeric } from '../../formula/words/write-row';
import { units } from '../../measure/units';
import { Refusal, Typed } from '../page/Typed';

interface Props {
  readonly row: MeasuredRowId;
  readonly batch: Batch;
  readonly store: Store;
  /** Whether it is asked what it was: by a press, or because what was typed can’t be taken. */
  readonly isAsked: boolean;
  readonly ask: (isAsked: boolean) => void;
}

/** What is measured, as the cook at the step calls it. */
const things: Readonly<Partial<Record<MeasuredRowId, string>>> = {
  soakedMass: 'it was',
  milkVolume: 'milk was',
  pulpMass: 'pulp was',
};

function wordsOf(row: MeasuredRowId): string {
  return things[row] ?? `${labelOf(row)} was`;
}

/** Why what was typed can’t be taken; null where it can, or nothing was. */
export function problemOf({ row, batch, store }: Pick<Props, 'row' | 'batch' | 'store'>): string | null {
  const cell = batch.measured[row];
  return cell === undefined ? null : cellProblem(row, cell, store.settings.value);
}

/** “Milk was …”: a press, and what the jug said can be typed. Not there once it was said. */
export function itWasButton({ row, batch, isAsked, ask }: Props) {
  if (isAsked || batch.measured[row] !== undefined) return null;
  return (
    <button type="button" class="button" key={row} data-asks={row} title={labelOf(row)} onClick={() => ask(true)}>
      {wordsOf(row)} …
    </button>
  );
}

/** The field for what it was, or what it was and which amounts move with it; nothing until one of them is wanted. */
export function ItWas(props: Props) {
  if (props.isAsked) return <Asked {...props} />;
  return props.batch.measured[props.row] === undefined ? null : <Found {...props} />;
}

function Asked({ row, batch, store, ask }: Props) {
  const problem = problemOf({ row, batch, store });
  const cell = batch.measured[row] ?? null;
  const [text, setText] = useState(cell?.text ?? '');
  const input = useRef<HTMLInputElement>(null);
  // Before the next key, which would go elsewhere.
  useLayoutEffect(() => input.current?.focus(), []);
  const keep = (event: Event) => {
    event.preventDefault();
    if (!isBlank(text)) store.measureCell(batch.id, row, text);
    else if (cell !== null) store.clearMeasured(batch.id, row);
    ask(false);
  };
  const forget = () => {
    store.clearMeasured(batch.id, row);
    ask(false);
  };
  return (
    <form class="it-was" onSubmit={keep}>
      <label>
        {wordsOf(row)}{' '}
        <Typed
          field={input}
          value={text}
          inputMode="decimal"
          aria-label={`Measured: ${labelOf(row)}`}
          isRefused={problem !== null}
          onText={setText}
          onKeyDown={({ key }) => key === 'Escape' && problem === null && ask(false)}
        />{' '}
        {units[bareUnitOf(row, store.settings.value)].symbol}
      </label>
      <button type="submit" class="button next">
        Keep
      </button>
      {cell !== null && (
        <button type="button" class="button" onClick={forget}>
          Forget it
        </button>
      )}
      <Refusal why={problem} />
    </form>
  );
}

/** What it was, what was expected, and what is weighed out otherwise for it. */
function Found({ row, batch, store, ask }: Props) {
  const kitchen = store.settings.value;
  const formulation = store.formulationOf(batch);
  const { value, planned } = formulation.rows[row];
  const moved = movedBy(row, formulation, kitchen);
  const write = (amount: number): string =>
    leading(writeNumeric(formulation, row, amount, kitchen), kitchen.leads).first;
  return (
    <div class="it-was">
      <p>
        {wordsOf(row)} <b>{typeof value === 'number' ? write(value) : batch.measured[row]?.text}</b>
        {planned !== null && `, expected ${write(planned)}`}. {moved.length === 0 && 'No other amount changes.'}
        {moved.map(({ row: id, from, to }, place) => (
          <span key={id}>
            {place === 0 ? 'So now: ' : '; '}
            {labelOf(id)} <b>{to}</b> (was {from})
          </span>
        ))}
        {moved.length > 0 && '.'}
      </p>
      <button type="button" class="button" data-asks={row} onClick={() => ask(true)}>
        change
      </button>
    </div>
  );
}
