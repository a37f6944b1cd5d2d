import type { ReadonlySignal } from '@preact/signals';
import type { Store } from '../../batch/store/store';
import type { SheetState } from '../sheet/sheet-state';
import type { PageState } from './page-state';
import { Starts } from './Starts';

interface Props {
  readonly store: Store;
  readonly state: SheetState;
  readonly page: PageState;
}

/** The name of the page, the ways to begin, what was last done, which units lead, and undo with how the sheet is kept. */
export function Masthead({ store, state, page }: Props) {
  return (
    <header class="masthead">
      <h1>Jarwright</h1>
      <div class="starts">
        <Starts store={store} state={state} page={page} />
      </div>
      <p class="notice" role="status">
        {state.notice}
      </p>
      <div class="tools">
        <Leads store={store} />
        <Saved store={store} />
        <Step name="Undo" step={store.undoName} store={store} state={state} act={store.undo} />
        <Redo store={store} state={state} />
      </div>
    </header>
  );
}

/** Which unit leads, metric or US. */
export function Leads({ store }: Pick<Props, 'store'>) {
  const { leads } = store.settings.value;
  return (
    <fieldset class="leads">
      <legend class="unseen">Which units lead</legend>
      {(['metric', 'us'] as const).map((value) => (
        <label key={value}>
          <input
            type="radio"
            name="leads"
            checked={leads === value}
            onChange={() => store.changeSettings({ leads: value })}
          />
          {value === 'us' ? 'US' : 'Metric'}
        </label>
      ))}
    </fieldset>
  );
}

export function Redo({ store, state }: Pick<Props, 'store' | 'state'>) {
  return <Step name="Redo" step={store.redoName} store={store} state={state} act={store.redo} />;
}

interface StepProps extends Pick<Props, 'store' | 'state'> {
  readonly name: string;
  readonly step: ReadonlySignal<string | null>;
  readonly act: () => void;
}

function Step({ name, step: { value: step }, act, store, state }: StepProps) {
  return (
    <button
      type="button"
      class="button step"
      aria-disabled={step === null || store.readOnly.value}
      title={step ?? `nothing to ${name.toLowerCase()}`}
      aria-label={`${name}: ${step ?? 'nothing'}`}
      onClick={() => {
        if (step === null) return;
        act();
        state.notice.value = null;
      }}
    >
      {name}
    </button>
  );
}

const howWords = { saved: 'Saved', saving: 'Saving…', unsaved: 'Not saved' } as const;

/** How the sheet is kept, small. */
function Saved({ store }: Pick<Props, 'store'>) {
  const how = store.keeping.value?.how.value;
  return (
    <small class="saved" role="status" data-kept={how}>
      {how === undefined ? '' : howWords[how]}
    </small>
  );
}
