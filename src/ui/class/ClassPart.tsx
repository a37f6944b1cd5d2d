import { signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { KeptClass } from '../../batch/document/document';
import { mostClasses } from '../../batch/document/document-limits';
import { addClass, classSteps, removeClass } from '../../batch/edits/class-edits';
import { workOutClass } from '../../batch/store/class-sheet';
import { describeLesson } from '../../formula/lesson/lesson-words';
import { MayEdit } from '../page/MayEdit';
import type { PartProps } from '../page/part-props';
import { loadQr } from '../paper/LinkCode';
import { ClassHead } from './ClassHead';
import { ClassPlan } from './ClassPlan';
import { ClassShopping } from './ClassShopping';
import { ClassTools } from './ClassTools';
import { Kitchens } from './Kitchens';
import './class.css';

/** Which class is looked at, whatever batch is; null for the first that makes the batch. */
const openClass = signal<string | null>(null);

/** One recipe for many kitchens: each with its jar, room, units and culture; its cards, its shopping and its plan. */
export default function ClassPart({ batch, store, state }: PartProps) {
  const document = store.document.value;
  const { classes = [] } = document;
  const kept =
    classes.find(({ key }) => key === openClass.value) ?? classes.find(({ of }) => of === batch.id) ?? classes[0];
  useEffect(() => {
    void loadQr();
  }, []);
  const add = () => {
    const next = addClass(store.document.peek(), batch.id);
    store.takeEdit(next, classSteps.add);
    openClass.value = next.classes?.at(-1)?.key ?? null;
  };
  return (
    <section class="class" aria-label="Class">
      <h2>Class</h2>
      {kept === undefined ? (
        <>
          <p class="class-lead">
            One recipe for many kitchens. Each fills its own jar, in its own room, with its own culture, and gets its
            own card; shopping and starts are worked out for all of them.
          </p>
          <MayEdit store={store}>
            <p class="main-action">
              <button type="button" class="button next" onClick={add}>
                Start a class with {batch.name}
              </button>
            </p>
          </MayEdit>
        </>
      ) : (
        <Opened
          key={kept.key}
          kept={kept}
          store={store}
          state={state}
          onAdd={classes.length < mostClasses ? add : null}
          onOpen={(key) => {
            openClass.value = key;
          }}
        />
      )}
    </section>
  );
}

interface OpenedProps extends Pick<PartProps, 'store' | 'state'> {
  readonly kept: KeptClass;
  /** Starts another class; null where the sheet has no room for one. */
  readonly onAdd: (() => void) | null;
  readonly onOpen: (key: string) => void;
}

function Opened({ kept, store, state, onAdd, onOpen }: OpenedProps) {
  const worked = workOutClass(store.document.value, kept);
  const isEmpty = kept.kitchens.length === 0;
  const others = (
    <MayEdit store={store}>
      <p class="class-acts">
        {onAdd !== null && (
          <button type="button" class="quiet" onClick={onAdd}>
            Another class
          </button>
        )}
        <button
          type="button"
          class="quiet"
          onClick={() => store.takeEdit(removeClass(store.document.peek(), kept.key), classSteps.remove(kept))}
        >
          Remove this class
        </button>
      </p>
    </MayEdit>
  );
  return (
    <>
      <MayEdit store={store}>
        <ClassHead kept={kept} store={store} onOpen={onOpen} />
        {worked === null ? (
          <p class="problem caution" role="status">
            The recipe of this class is gone or can’t be worked out. Choose another above; its kitchens are kept.
          </p>
        ) : (
          describeLesson(worked.taught.lesson).map((text) => (
            <p key={text} class="hint">
              {text}
            </p>
          ))
        )}
        <Kitchens kept={kept} worked={worked} store={store} />
        {worked !== null && !isEmpty && <ClassPlan kept={kept} worked={worked} store={store} />}
      </MayEdit>
      {worked !== null && !isEmpty && <ClassShopping worked={worked} store={store} />}
      {worked === null || isEmpty ? (
        others
      ) : (
        <ClassTools kept={kept} worked={worked} store={store} state={state}>
          {others}
        </ClassTools>
      )}
    </>
  );
}
