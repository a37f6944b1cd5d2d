import type { Store } from '../batch/store';
import { SettingsLater } from './Later';

interface Props {
  readonly store: Store;
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
        <Step name="Undo" step={store.undoName.value} act={store.undo} />
        <Step name="Redo" step={store.redoName.value} act={store.redo} />
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
        checked={leads === value}
        onChange={() => store.changeSettings({ leads: value })}
      />
      {label}
    </label>
  );
}

function Step({ name, step, act }: { name: string; step: string | null; act: () => void }) {
  return (
    <button type="button" class="button step" disabled={step === null} onClick={act}>
      {name}
      <small>{step ?? 'nothing to undo'.replace('undo', name.toLowerCase())}</small>
    </button>
  );
}
