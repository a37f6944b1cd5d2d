import type { KeptBlend } from '../../batch/document/document';
import { blendSteps, choosePart, pourPart, removePart } from '../../batch/edits/blend-edits';
import type { ReadPart } from '../../batch/reading/read-blend';
import type { Store } from '../../batch/store/store';
import { KeptTyped, Refusal } from '../page/Typed';

interface Props {
  readonly kept: KeptBlend;
  readonly place: number;
  readonly read: ReadPart;
  readonly store: Store;
}

/** One of the drinks of a blend: which batch, and how much of it. */
export function BlendPart({ kept, place, read: { part, batch, why }, store }: Props) {
  const { batches } = store.document.value;
  const { name } = batch ?? part;
  const number = place + 1;
  return (
    <li class="blend-part">
      <select
        aria-label={`Drink ${number}`}
        value={batch?.id ?? ''}
        onChange={({ currentTarget: { value } }) => {
          const chosen = batches.find(({ id }) => id === value);
          if (chosen === undefined) return;
          const next = choosePart(store.document.peek(), kept.key, place, chosen.id);
          store.takeEdit(next, blendSteps.choosePart(chosen.name));
        }}
      >
        {batch === null && <option value="">It is gone: choose another</option>}
        {batches.map((one) => (
          <option key={one.id} value={one.id}>
            {one.name}
          </option>
        ))}
      </select>
      <KeptTyped
        aria-label={`How much of drink ${number}`}
        kept={part.volume.text}
        isRefused={batch !== null && why !== null}
        onKeep={(text) =>
          store.takeEdit(pourPart(store.document.peek(), kept.key, place, text), blendSteps.pourPart(part, text))
        }
      />
      <button
        type="button"
        class="quiet"
        aria-label={`Take ${name} out`}
        onClick={() => store.takeEdit(removePart(store.document.peek(), kept.key, place), blendSteps.removePart(part))}
      >
        Take out
      </button>
      <Refusal why={why} />
    </li>
  );
}
