import { useState } from 'preact/hooks';
import type { KeptClass } from '../../batch/document/document';
import { mostKitchens } from '../../batch/document/document-limits';
import { addKitchens, classSteps, nextKitchen } from '../../batch/edits/class-edits';
import type { WorkedClass } from '../../batch/store/class-sheet';
import type { Store } from '../../batch/store/store';
import { KitchenRow } from './KitchenRow';
import { PasteKitchens } from './PasteKitchens';

interface Props {
  readonly kept: KeptClass;
  /** Null where the recipe is gone. */
  readonly worked: WorkedClass | null;
  readonly store: Store;
}

const plain = { vessel: 'quartWide', grains: 'water' } as const;

/** The kitchens of a class, each to be changed in place; more are added one by one or pasted as a list. */
export function Kitchens({ kept, worked, store }: Props) {
  const document = store.document.value;
  const [said, setSaid] = useState('');
  const [added, setAdded] = useState<number | null>(null);
  const { leads } = store.settings.value;
  const like = nextKitchen(kept, worked?.taught.batch ?? plain, leads);
  const { length } = kept.kitchens;
  const add = () => {
    store.takeEdit(addKitchens(document, kept.key, [like]), classSteps.addKitchens(1));
    setSaid('');
    setAdded(length);
  };
  return (
    <section class="class-kitchens" aria-label="Kitchens">
      <h3>{length === 0 ? 'Kitchens' : `${length} ${length === 1 ? 'kitchen' : 'kitchens'}`}</h3>
      {length > 0 && (
        <>
          <div class="class-columns" aria-hidden="true">
            <span>Kitchen</span>
            <span>Jar</span>
            <span>Room</span>
            <span>Units</span>
            <span>Culture</span>
          </div>
          <ul>
            {kept.kitchens.map((kitchen, place) => (
              <KitchenRow
                key={place}
                kept={kept}
                place={place}
                kitchen={kitchen}
                worked={worked?.kitchens[place] ?? null}
                isNew={place === added}
                store={store}
              />
            ))}
          </ul>
        </>
      )}
      <p class="class-acts">
        <button type="button" class="button" disabled={length >= mostKitchens} onClick={add}>
          Add a kitchen
        </button>
        <span role="status">{said}</span>
      </p>
      <PasteKitchens kept={kept} usual={like} store={store} onAdded={setSaid} />
    </section>
  );
}
