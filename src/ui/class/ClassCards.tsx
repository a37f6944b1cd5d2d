import { computed } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import type { Kitchen } from '../../batch/document/document';
import type { WorkedClass } from '../../batch/store/class-sheet';
import type { Store } from '../../batch/store/store';
import { Guarded } from '../page/Guarded';
import { PrintCard } from '../paper/PrintCard';
import '../paper/print.css';
import './class-cards.css';

interface Props {
  readonly worked: WorkedClass;
  readonly store: Store;
}

/** A card a kitchen, in the units of that kitchen, for paper alone. */
export function ClassCards({ worked, store }: Props) {
  const settings = useMemo(() => {
    const lead = (leads: Kitchen['leads']) => computed(() => ({ ...store.settings.value, leads }));
    return { metric: lead('metric'), us: lead('us') };
  }, [store]);
  return (
    <div class="class-cards">
      {worked.kitchens.map(({ kitchen, batch, formulation }, place) => (
        <Guarded key={place} store={store} instead={<p>{batch.name}: this card can’t be drawn.</p>}>
          <PrintCard
            batch={batch}
            store={{ document: store.document, settings: settings[kitchen.leads], formulationOf: () => formulation }}
          />
        </Guarded>
      ))}
    </div>
  );
}
