import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { Store } from '../../batch/store';
import { isRow } from '../../formula/evaluate';
import type { Formulation } from '../../formula/formulate';
import type { NumericRowId } from '../../formula/order';
import { describeCoefficient, describeOrigin } from '../../formula/origin-words';
import { type Working, type WorkingInput, workingOf } from '../../formula/working';
import { inNumbers, inSymbols, writeInput } from '../../formula/working-text';
import { Correct } from './Correct';

interface Props {
  readonly working: Working;
  readonly formulation: Formulation;
  readonly store: Store;
  readonly onFollow: (row: NumericRowId) => void;
}

/** A working's arithmetic, in symbols and with the numbers put in, and what its tables are from. */
export function Arithmetic({ working, store }: Pick<Props, 'working' | 'store'>) {
  const { decimalComma } = store.settings.value;
  return (
    <>
      {working.formula !== '' && (
        <p class="arithmetic">
          {inSymbols(working)}
          <br />
          {inNumbers(working, decimalComma)}
        </p>
      )}
      {working.origins.map((origin) => (
        <span class="origin" key={describeOrigin(origin)}>
          {describeOrigin(origin)}
        </span>
      ))}
    </>
  );
}

/** The quantities that went into a number: rows can be followed, intermediates opened, coefficients corrected. */
export function Inputs({ working, formulation, store, onFollow }: Props) {
  return (
    <ul class="inputs">
      {working.inputs.map((input) => (
        <li key={input.id}>
          <Input input={input} formulation={formulation} store={store} onFollow={onFollow} />
        </li>
      ))}
    </ul>
  );
}

interface InputProps extends Omit<Props, 'working'> {
  readonly input: WorkingInput;
}

function Input({ input, formulation, store, onFollow }: InputProps) {
  const amount = <span class="amount">{writeInput(input, store.settings.value.decimalComma)}</span>;
  const { id } = input;
  if (input.from === 'coefficient') {
    return (
      <>
        <span class="symbol">{input.symbol}</span> {input.label}: {amount}
        <span class="origin">{describeCoefficient(input.coefficient)}</span>
        <Correct id={input.id} at={input.key} label={input.label} coefficient={input.coefficient} store={store} />
      </>
    );
  }
  if (isRow(id)) {
    return (
      <>
        <span class="symbol">{input.symbol}</span>{' '}
        <button type="button" class="follow" onClick={() => onFollow(id)}>
          {input.label}
        </button>
        : {amount}
      </>
    );
  }
  return (
    <Intermediate input={input} formulation={formulation} store={store} onFollow={onFollow}>
      {amount}
    </Intermediate>
  );
}

type IntermediateProps = InputProps & { readonly children: ComponentChildren };

/** A quantity without a row of its own: its working opens in place. */
function Intermediate({ input, formulation, store, onFollow, children }: IntermediateProps) {
  const [open, setOpen] = useState(false);
  if (input.from === 'coefficient') return null;
  const working = open ? workingOf(input.id, formulation.evaluation) : null;
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span class="symbol">{input.symbol}</span> {input.label}: {children}
      </summary>
      {working !== null && (
        <div class="nested">
          <p class="in-words">{working.words}</p>
          <Arithmetic working={working} store={store} />
          <Inputs working={working} formulation={formulation} store={store} onFollow={onFollow} />
        </div>
      )}
    </details>
  );
}
