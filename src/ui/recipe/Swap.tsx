import { useState } from 'preact/hooks';
import type { Batch } from '../../batch/document/document';
import { typePrice } from '../../batch/edits/package-edits';
import { stepNames } from '../../batch/edits/step-names';
import { swapSweetener } from '../../batch/edits/swap-sweetener';
import type { Store } from '../../batch/store/store';
import { blendMass } from '../../formula/advice/blend-mass';
import { type Swap as Swapped, swapsFor } from '../../formula/advice/swap';
import { currencyOf } from '../../formula/cost/money';
import { sweetenerCosts } from '../../formula/cost/sweetener-cost';
import { readShare, writeGrams } from '../../interchange/typed-texts';
import { type SweetenerId, sweeteners } from '../../reference/sweeteners';
import { Refusal, Typed } from '../page/Typed';
import { SwapTable } from './SwapTable';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
}

/** The sweetener of a batch swapped at equal fermentable sugar, or blended with another. */
export function Swap({ batch, store }: Props) {
  const settings = store.settings.value;
  const { packages = [] } = store.document.value;
  const swaps = swapsFor(store.formulationOf(batch), sweetenerCosts(packages));
  const use = ({ id, name, mass }: Swapped) => {
    if (mass === null) return;
    const text = writeGrams(mass.value, settings.decimalComma);
    store.takeEdit(
      swapSweetener(store.document.value, batch.id, [{ id, share: 1 }], text),
      `Swap the sweetener for ${name}`,
    );
  };
  return (
    <section class="panel" aria-label={`Swap the sweetener of ${batch.name}`}>
      <h2>Swap the sweetener</h2>
      {swaps === null ? (
        <p>This batch adds no fermentable sugar, so there is nothing to swap.</p>
      ) : (
        <>
          <p>
            Every line holds the same fermentable sugar as what <bdi>{batch.name}</bdi> uses now.
          </p>
          <Blend batch={batch} store={store} />
          <SwapTable
            swaps={swaps}
            used={new Set(batch.sweetener.map(({ id }) => id))}
            kitchen={settings}
            packages={packages}
            currency={currencyOf(settings.currency)}
            onUse={use}
            onPrice={(id, held, text) => savePrice(store, id, held, text)}
          />
        </>
      )}
    </section>
  );
}

/** Keeps the price of a package as typed, and forgets it where the text is blank; why not, where it can’t be read. */
export function savePrice(store: Store, id: SweetenerId, held: string, text: string): string | null {
  const typed = typePrice(store.document.value, `sweetener.${id}`, held, text);
  if (!typed.ok) return typed.why;
  store.takeEdit(typed.document, typed.step);
  return null;
}

/** Two sweeteners by share of the mass. */
function Blend({ batch, store }: Props) {
  const [picked, setPicked] = useState<SweetenerId>('honey');
  const [share, setShare] = useState('50');
  const first = batch.sweetener[0]?.id;
  const { decimalComma } = store.settings.value;
  const parts = readShare(share, decimalComma);
  const others = usable.filter((id) => id !== first);
  const other = others.find((id) => id === picked) ?? others[0];
  if (first === undefined || other === undefined) return null;
  const blend = () => {
    if (parts === null) return;
    const blended = [
      { id: first, share: parts.rest },
      { id: other, share: parts.of },
    ];
    const mass = blendMass(blended, store.formulationOf(batch));
    if (mass === null) return;
    const text = writeGrams(mass, decimalComma);
    store.takeEdit(swapSweetener(store.document.value, batch.id, blended, text), stepNames.blendSweeteners(blended));
  };
  return (
    <div class="correct">
      <label>
        Blend {sweeteners[first].name.toLowerCase()} with{' '}
        <select value={other} onChange={(event) => setPicked(idOf(event.currentTarget.value))}>
          {others.map((id) => (
            <option key={id} value={id}>
              {sweeteners[id].name}
            </option>
          ))}
        </select>
      </label>
      <label>
        <Typed
          class="share"
          inputMode="decimal"
          aria-label={`Share of ${sweeteners[other].name}, % of the weight`}
          isRefused={parts === null}
          value={share}
          onText={setShare}
        />{' '}
        % of the weight
      </label>
      <button type="button" class="button" onClick={blend}>
        Blend
      </button>
      <Refusal why={parts === null ? 'A share lies between 0 and 100 %. Write it as a number, such as 30.' : null} />
    </div>
  );
}

function isSweetener(id: string): id is SweetenerId {
  return Object.hasOwn(sweeteners, id);
}

const usable = Object.keys(sweeteners)
  .filter(isSweetener)
  .filter((id) => sweeteners[id].refused === undefined && id !== 'none');

function idOf(value: string): SweetenerId {
  return isSweetener(value) ? value : 'honey';
}
