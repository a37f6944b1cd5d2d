import { useState } from 'preact/hooks';
import type { Batch, Settings, Stock, StockLine } from '../../batch/document/document';
import { now, wallOf } from '../../batch/reading/local-time';
import { readGrains } from '../../batch/reading/read-stock-line';
import type { Formulation } from '../../formula/engine/formulate';
import { askedBy } from '../../formula/stock/carries';
import type { Ledger } from '../../formula/stock/ledger';
import { writeGrains } from '../../formula/stock/line-words';
import { kindName } from '../../formula/stock/stock-words';
import { Typed } from '../page/Typed';
import { Field } from './Field';

interface Props {
  readonly stock: Stock;
  readonly ledger: Ledger;
  readonly kitchen: Settings;
  readonly batch: Batch;
  readonly formulation: Formulation;
  readonly write: (line: StockLine) => void;
}

/** Grains out for the open batch: what it asks for stands there, so that one press will do. */
export function StockOut({ stock, ledger, kitchen, batch, formulation, write }: Props) {
  const [typed, setTyped] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  if (ledger.away.some(({ out }) => out.batch === batch.id)) return null;
  if (batch.grains !== stock.grains)
    return (
      <p class="hint">
        {batch.name} is made with {formulation.choices.grain.name.toLowerCase()}. Open a batch with{' '}
        {kindName(stock.grains)}, and its weight stands here.
      </p>
    );
  const asked = askedBy(stock.grains, formulation);
  const text = typed ?? (asked === null ? '' : writeGrains(asked, kitchen));
  const out = (event: Event) => {
    event.preventDefault();
    const read = readGrains(text, true, kitchen);
    setProblem(read.ok ? null : read.why);
    if (!read.ok) return;
    // What stands there unchanged is the batch’s own weight, not its rounding.
    const grams = typed === null ? asked : read.grams;
    const { id, name, source } = batch;
    write({ at: wallOf(now()), did: 'out', grams, batch: id, name, source });
    setTyped(null);
  };
  return (
    <form class="stock-act" noValidate onSubmit={out}>
      <Field
        label={`Out for ${batch.name}`}
        problem={problem}
        hint={asked !== null && ledger.rest < asked ? `At rest there are ${writeGrains(ledger.rest, kitchen)}.` : ''}
      >
        {(about) => <Typed {...about} value={text} inputMode="decimal" placeholder="such as 54 g" onText={setTyped} />}
      </Field>
      <button type="submit" class="button next">
        Out
      </button>
    </form>
  );
}
