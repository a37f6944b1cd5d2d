import type { Store } from '../batch/store';
import { isRow } from '../formula/evaluate';
import type { NumericRowId } from '../formula/order';
import { describeCoefficient } from '../formula/origin-words';
import type { WorkingInput } from '../formula/working';
import { writeInput } from '../formula/working-text';
import { Correct } from './Correct';

interface Props {
  readonly inputs: readonly WorkingInput[];
  readonly decimalComma: boolean;
  readonly store: Store;
  readonly onFollow: (row: NumericRowId) => void;
}

/** The quantities that went into a number: rows can be followed, coefficients corrected. */
export function Inputs({ inputs, decimalComma, store, onFollow }: Props) {
  return (
    <ul class="inputs">
      {inputs.map((input) => (
        <li key={input.id}>
          <span class="symbol">{input.symbol}</span> <Name input={input} onFollow={onFollow} />:{' '}
          <span class="amount">{writeInput(input, decimalComma)}</span>
          {input.from === 'coefficient' && (
            <>
              <span class="origin">{describeCoefficient(input.coefficient)}</span>
              <Correct id={input.id} at={input.key} label={input.label} coefficient={input.coefficient} store={store} />
            </>
          )}
        </li>
      ))}
    </ul>
  );
}

function Name({ input, onFollow }: { input: WorkingInput; onFollow: Props['onFollow'] }) {
  const { id } = input;
  if (input.from !== 'row' || !isRow(id)) return <span>{input.label}</span>;
  return (
    <button type="button" class="follow" onClick={() => onFollow(id)}>
      {input.label}
    </button>
  );
}
