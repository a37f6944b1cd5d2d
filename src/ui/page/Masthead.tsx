import type { SheetStore } from '../../batch/sheet-store';
import { SettingsLater } from './Later';

interface Props {
  readonly store: SheetStore;
}

/** The name of the page, which unit leads, undo and redo that name their step, and the kitchen's settings. */
export function Masthead({ store }: Props) {
  const { leads } = store.settings.value;
  return (
    <header class="masthead">
      <div>
        <h1>Jarwright</h1>
        <p>Plant-milk kefir, worked out for your jar</p>
      </div>
      <div class="tools">
        <fieldset class="leads">
          <legend class="unseen">Which units lead</legend>
          <Lead store={store} value="metric" label="Metric first" leads={leads} />
          <Lead store={store} value="us" label="US first" leads={leads} />
        </fieldset>
        <Step name="Undo" step={store.undoName.value} act={() => store.edit((edits) => edits.undo(), {}, 'undo')} />
        <Step name="Redo" step={store.redoName.value} act={() => store.edit((edits) => edits.redo(), {}, 'redo')} />
        <SettingsLater store={store} />
      </div>
    </header>
  );
}

function Lead({ store, value, label, leads }: Props & { value: 'metric' | 'us'; label: string; leads: string }) {
  return (
    <label>
      <input
        type="radio"
        name="leads"
        checked={(store.waiting.value.leads ?? leads) === value}
        onChange={() => store.edit((edits) => edits.changeSettings({ leads: value }), { leads: value }, 'setting')}
      />
      {label}
    </label>
  );
}

function Step({ name, step, act }: { name: string; step: string | null; act: () => void }) {
  return (
    <button
      type="button"
      class="button step"
      aria-disabled={step === null}
      onClick={() => {
        if (step !== null) act();
      }}
    >
      {name}
      <small>{step ?? 'nothing to undo'.replace('undo', name.toLowerCase())}</small>
    </button>
  );
}
