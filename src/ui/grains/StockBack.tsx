import { useState } from 'preact/hooks';
import type { Batch, Settings, Stock, StockLine } from '../../batch/document/document';
import { now, wallOf } from '../../batch/reading/local-time';
import { readGrains } from '../../batch/reading/read-stock-line';
import type { Store } from '../../batch/store/store';
import type { Away, Ledger } from '../../formula/stock/ledger';
import { mediumWords, writeGrains } from '../../formula/stock/line-words';
import { describeAway } from '../../formula/stock/stock-words';
import { labelOf } from '../../formula/words/labels';
import type { PageState } from '../page/page-state';
import { Typed } from '../page/Typed';
import { Field } from './Field';
import { StockTrouble } from './StockTrouble';

interface Props {
  readonly stock: Stock;
  readonly ledger: Ledger;
  readonly kitchen: Settings;
  readonly away: Away;
  readonly batch: Batch;
  readonly store: Store;
  readonly page: PageState;
  readonly write: (line: StockLine) => void;
}

/** Grains that are in a jar: back with one number, or thrown out with what went wrong. */
export function StockBack({ stock, ledger, kitchen, away, batch, store, page, write }: Props) {
  const [typed, setTyped] = useState('');
  const [isFed, setFed] = useState(true);
  const [isWrong, setWrong] = useState(false);
  const [problem, setProblem] = useState<string | null>(null);
  const { out } = away;
  const medium = stock.grains === 'milk' ? 'dairy' : 'sugarWater';
  const of = {
    ...(out.batch === undefined ? {} : { batch: out.batch }),
    ...(out.name === undefined ? {} : { name: out.name }),
  };
  const back = (event: Event) => {
    event.preventDefault();
    const read = readGrains(typed, false, kitchen);
    setProblem(read.ok ? null : read.why);
    if (!read.ok) return;
    write({
      ...{ at: wallOf(now()), did: 'back', grams: read.grams, ...of },
      ...(isFed ? { medium } : {}),
      ...(isFed && ledger.place !== null ? { place: ledger.place } : {}),
    });
  };
  const { rows } = store.formulationOf(batch);
  const { value } = rows.grainMass;
  const weight = writeGrains(away.grams ?? 0, kitchen);
  const isTold = typeof value === 'number' && writeGrains(value, kitchen) === weight;
  const isMeasured = out.batch !== batch.id || away.grams === null || isTold;
  return (
    <form class="stock-act stock-back" noValidate onSubmit={back}>
      <Field
        label={`Back from ${out.name ?? 'a batch'}`}
        hint={`${describeAway(away, now(), kitchen)}. Empty: not weighed.`}
        problem={problem}
      >
        {(about) => <Typed {...about} value={typed} inputMode="decimal" onText={setTyped} />}
      </Field>
      <button type="submit" class="button next">
        Back
      </button>
      <label class="pick">
        <input type="checkbox" checked={isFed} onChange={(event) => setFed(event.currentTarget.checked)} />
        into fresh {mediumWords[medium]}
      </label>
      {!isMeasured && (
        <button type="button" class="follow" onClick={() => store.measureCell(batch.id, 'grainMass', weight)}>
          Take {weight} as “{labelOf('grainMass')}”
        </button>
      )}
      <button type="button" class="follow" aria-expanded={isWrong} onClick={() => setWrong(!isWrong)}>
        It went wrong
      </button>
      {isWrong && (
        <StockTrouble
          grains={stock.grains}
          onLook={() => page.goTo('trouble')}
          onThrow={() => write({ at: wallOf(now()), did: 'failed', grams: null, ...of })}
        />
      )}
    </form>
  );
}
