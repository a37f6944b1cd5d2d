import { useState } from 'preact/hooks';
import type { Store } from '../../batch/store/store';
import type { Formulation } from '../../formula/engine/formulate';
import type { NumericRowId } from '../../formula/recipe/order';
import { describeOrigin } from '../../formula/words/origin-words';
import { type Working, type WorkingInput, workingOfInput } from '../../formula/working/working';
import { inNumbers, inSymbols, originOf, writeInput } from '../../formula/working/working-text';
import { Correct } from './Correct';

interface Props {
  readonly inputs: readonly WorkingInput[];
  readonly formulation: Formulation;
  readonly store: Store;
  readonly onFollow: (row: NumericRowId) => void;
}

/** A working's arithmetic, in symbols and with the numbers put in. */
export function Arithmetic({ working, store }: { working: Working; store: Store }) {
  return (
    <>
      {working.formula !== '' && (
        <p class="arithmetic">
          {inSymbols(working)}
          <br />
          {inNumbers(working, store.settings.value.decimalComma)}
        </p>
      )}
      {working.by !== null && <span class="origin">{describeOrigin(working.by)}</span>}
    </>
  );
}

/** The quantities that went into a number: rows can be followed, others opened, coefficients corrected. */
export function Inputs({ inputs, formulation, store, onFollow }: Props) {
  return (
    <ul class="inputs">
      {inputs.map((input) => (
        <li key={input.id}>
          <Input input={input} formulation={formulation} store={store} onFollow={onFollow} />
        </li>
      ))}
    </ul>
  );
}

interface InputProps extends Omit<Props, 'inputs'> {
  readonly input: WorkingInput;
}

function Input(props: InputProps) {
  const { input, store, onFollow } = props;
  const { decimalComma } = store.settings.value;
  const amount = <span class="amount">{writeInput(input, decimalComma)}</span>;
  const origin = originOf(input, decimalComma);
  if (origin !== null) {
    return (
      <>
        <span class="symbol">{input.symbol}</span> {input.label}: {amount}
        <span class="origin">{origin}</span>
        {input.from === 'coefficient' && (
          <Correct id={input.id} at={input.key} label={input.label} coefficient={input.coefficient} store={store} />
        )}
      </>
    );
  }
  if (input.from === 'row') {
    return (
      <>
        <span class="symbol">{input.symbol}</span>{' '}
        <button type="button" class="follow" onClick={() => onFollow(input.id)}>
          {input.label}
        </button>
        : {amount}
      </>
    );
  }
  return <Opened {...props} />;
}

/** A quantity without a row of its own: its working opens in place. */
function Opened({ input, formulation, store, onFollow }: InputProps) {
  const [open, setOpen] = useState(false);
  const working = open ? workingOfInput(input, formulation.evaluation) : null;
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span class="symbol">{input.symbol}</span> {input.label}:{' '}
        <span class="amount">{writeInput(input, store.settings.value.decimalComma)}</span>
      </summary>
      {working !== null && (
        <div class="nested">
          <p class="in-words">{working.words}</p>
          <Arithmetic working={working} store={store} />
          <Inputs inputs={working.inputs} formulation={formulation} store={store} onFollow={onFollow} />
        </div>
      )}
    </details>
  );
}
