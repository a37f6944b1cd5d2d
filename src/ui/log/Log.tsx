import { useMemo, useRef, useState } from 'preact/hooks';
import type { Batch, Logged } from '../../batch/document/document';
import { isOfCarton, removeEntry, teachersByEntry, typedFactors } from '../../batch/edits/log-edits';
import { logSteps } from '../../batch/edits/log-words';
import type { Store } from '../../batch/store/store';
import { learnPaces } from '../../formula/time/learn-pace';
import type { PageState } from '../page/page-state';
import { Whose } from '../page/Whose';
import type { SheetState } from '../sheet/sheet-state';
import { Waiting } from '../time/Waiting';
import { Cartons } from './Cartons';
import { Learned } from './Learned';
import { LogEntries } from './LogEntries';
import { LogForm } from './LogForm';
import { NextTime } from './NextTime';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
  readonly state: SheetState;
  readonly page: PageState;
}

/** What was found at the jars of this batch, what to do next time, what all of it teaches, and how long there is still waiting. */
export function Log({ batch, store, state, page }: Props) {
  const { batches, log, yours } = store.document.value;
  const [changing, setChanging] = useState<Logged | null>(null);
  const [said, setSaid] = useState('');
  const status = useRef<HTMLParagraphElement>(null);
  const changed = changing !== null && log.includes(changing) ? changing : null;
  const isCarton = isOfCarton(batch);
  // Of the batches only what they are of counts, so that typing an amount works nothing of it out anew.
  const kinds = batches.map(({ id, source, grains }) => `${id} ${source} ${grains}`).join();
  const teachers = useMemo(() => teachersByEntry({ batches, log }), [kinds, log]);
  const paces = useMemo(() => learnPaces([...teachers.values()], typedFactors(yours)), [teachers, yours]);
  const tell = (words: string) => {
    // The button that was pressed goes away with the form or the entry, so focus is led to what is said of it.
    if (changed !== null || document.activeElement?.closest('.log-entries') !== null) status.current?.focus();
    setChanging(null);
    setSaid(words);
  };
  const remove = (entry: Logged) => {
    store.takeEdit(removeEntry(store.document.value, log.indexOf(entry)), logSteps.remove);
    tell('Removed. Undo brings it back.');
  };
  return (
    <section class="log" aria-label={`Log of ${batch.name}`}>
      <h2>
        Log
        <Whose />
      </h2>
      <LogForm
        key={`${batch.id} ${changed === null ? 'new' : log.indexOf(changed)}`}
        batch={batch}
        store={store}
        changed={changed}
        onSaved={tell}
        onRefused={() => setSaid('')}
        onLeave={() => setChanging(null)}
      />
      <p ref={status} class="said" role="status" tabIndex={-1}>
        {said}
      </p>
      <NextTime batch={batch} store={store} state={state} page={page} paces={paces} teachers={teachers} />
      {isCarton && <Cartons batch={batch} store={store} />}
      <Waiting batch={batch} store={store} />
      <LogEntries
        batch={batch}
        store={store}
        paces={paces}
        teachers={teachers}
        onChange={setChanging}
        onRemove={remove}
      />
      <Learned store={store} paces={paces} teachers={teachers} />
      {!isCarton && <Cartons batch={batch} store={store} />}
    </section>
  );
}
