import type { ComponentChildren } from 'preact';
import { useId, useState } from 'preact/hooks';
import type { Batch, Logged } from '../../batch/document/document';
import { longestNote, mostLogged } from '../../batch/document/document-limits';
import { isKeyOf } from '../../batch/document/table-keys';
import { addEntry, changeEntry, expectedHours, isOfCarton, recipeThen } from '../../batch/edits/log-edits';
import { describeEntry, foundWords, logSteps } from '../../batch/edits/log-words';
import { now, wallOf } from '../../batch/reading/local-time';
import { type LogForm as Form, type LogField, readLogEntry } from '../../batch/reading/read-log-entry';
import type { Store } from '../../batch/store/store';
import { writeTrimmed } from '../../measure/write-quantity';
import { isGrains } from '../../reference/grains';
import { Refusal, Typed } from '../page/Typed';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
  /** The entry that is being changed; null for a new one. */
  readonly changed: Logged | null;
  readonly onSaved: (words: string) => void;
  readonly onRefused: () => void;
  readonly onLeave: () => void;
}

const empty: Form = { found: null, hours: '', when: '', temperature: '', acidity: '', note: '' };
const choices = ['flat', 'ready', 'sour', 'looked'] as const;
const sinces = ['just', 'while'] as const;
const places = 2;

/** “What did you find?”: an entry of the log, new or to be changed. What can’t be read is told beside its field. */
export function LogForm({ batch, store, changed, onSaved, onRefused, onLeave }: Props) {
  const settings = store.settings.value;
  const [form, setForm] = useState<Form>(() => (changed === null ? empty : formOf(changed, settings.decimalComma)));
  const [holds, setHolds] = useState(changed?.holds ?? null);
  const [gaveUp, setGaveUp] = useState(changed?.gaveUp === true);
  const isCarton = changed === null ? isOfCarton(batch) : changed.carton === true;
  const [problems, setProblems] = useState<Readonly<Partial<Record<LogField, string>>>>({});
  const set = (field: LogField) => (value: string) => setForm((old) => ({ ...old, [field]: value }));

  const save = (event: Event) => {
    event.preventDefault();
    const read = readLogEntry(form, settings, wallOf(now()));
    setProblems(read.ok ? {} : read.problems);
    if (!read.ok) {
      onRefused();
      return;
    }
    const document = store.document.value;
    if (changed === null && document.log.length >= mostLogged) {
      setProblems({ found: `The log is full: it holds ${mostLogged} entries. Remove some first.` });
      return;
    }
    // What was expected then stays, unless the room was another one; of another batch there is nothing to work it out from.
    const isSameRoom = changed !== null && formOf(changed, settings.decimalComma).temperature === form.temperature;
    const stays = changed !== null && (changed.batch !== batch.id || (isSameRoom && changed.expected !== null));
    const expected = stays ? changed.expected : expectedHours(document, batch, read.found.temperature);
    const carton = changed === null ? isCarton : changed.carton;
    const was = changed === null ? recipeThen(document, batch) : changed.was;
    const entry: Logged = {
      batch: changed?.batch ?? batch.id,
      name: changed?.name ?? batch.name,
      expected,
      ...read.found,
      ...(carton === undefined ? {} : { carton }),
      ...(read.found.found === 'ready' && holds !== null ? { holds } : {}),
      ...(read.found.found === 'flat' && isCarton && gaveUp ? { gaveUp } : {}),
      ...(changed?.leftOut === true ? { leftOut: true as const } : {}),
      ...(was === undefined ? {} : { was }),
    };
    if (changed === null) store.takeEdit(addEntry(document, entry), logSteps.add(entry, settings));
    else store.takeEdit(changeEntry(document, document.log.indexOf(changed), entry), logSteps.change);
    setForm(empty);
    setHolds(null);
    setGaveUp(false);
    onSaved(`Saved: ${describeEntry(entry, settings)}.`);
  };

  return (
    <form class="log-form" noValidate onSubmit={save}>
      <fieldset>
        <legend>{changed === null ? 'What did you find?' : 'What did you find, really?'}</legend>
        {choices.map((id) => (
          <label key={id} class="pick">
            <input
              type="radio"
              name={`found-${batch.id}`}
              value={id}
              checked={form.found === id}
              onChange={({ currentTarget: { value } }) =>
                setForm((old) => ({ ...old, found: isKeyOf(foundWords, value) ? value : null }))
              }
            />
            {foundWords[id]}
          </label>
        ))}
        <Refusal why={problems.found ?? null} />
      </fieldset>
      {form.found === 'ready' && (
        <fieldset class="log-more">
          <legend class="hint">Since when? It tells more of your kitchen; leave it if you cannot say.</legend>
          {sinces.map((id) => (
            <label key={id} class="pick">
              <input type="radio" name={`holds-${batch.id}`} checked={holds === id} onChange={() => setHolds(id)} />
              {id === 'just' ? 'Just now' : 'For a while already'}
            </label>
          ))}
        </fieldset>
      )}
      {form.found === 'flat' && isCarton && (
        <label class="pick">
          <input type="checkbox" checked={gaveUp} onChange={(event) => setGaveUp(event.currentTarget.checked)} />
          Given up: it never turned
        </label>
      )}
      <div class="log-fields">
        <Field
          label={isGrains(batch.grains) ? 'Hours since the grains went in' : 'Hours since the starter went in'}
          hint="such as 14, 14 h or 13:30"
          problem={problems.hours}
        >
          {(about) => <Typed {...about} value={form.hours} onText={set('hours')} />}
        </Field>
        <Field label="When you looked" hint="empty is now" problem={problems.when}>
          {({ isRefused, ...about }) => (
            <input
              {...about}
              aria-invalid={isRefused}
              type="datetime-local"
              value={form.when}
              onInput={({ currentTarget: { value } }) => set('when')(value)}
            />
          )}
        </Field>
        <Field
          label="Room temperature then"
          hint="such as 21 °C or 70 °F; empty is the sheet’s"
          problem={problems.temperature}
        >
          {(about) => <Typed {...about} value={form.temperature} onText={set('temperature')} />}
        </Field>
        <Field label="pH" hint="by strip or meter" problem={problems.acidity}>
          {(about) => <Typed {...about} value={form.acidity} onText={set('acidity')} />}
        </Field>
        <Field label="Note" hint="look, smell, taste" problem={problems.note}>
          {(about) => <Typed {...about} value={form.note} maxLength={longestNote} onText={set('note')} />}
        </Field>
      </div>
      <p class="main-action">
        <button type="submit" class="button next">
          {changed === null ? 'Save' : 'Save the change'}
        </button>
        {changed !== null && (
          <button type="button" class="follow" onClick={onLeave}>
            Leave it as it was
          </button>
        )}
      </p>
    </form>
  );
}

interface About {
  readonly id: string;
  readonly 'aria-describedby': string;
  readonly isRefused: boolean;
}

interface FieldProps {
  readonly label: string;
  readonly hint: string;
  readonly problem: string | undefined;
  readonly children: (about: About) => ComponentChildren;
}

function Field({ label, hint, problem, children }: FieldProps) {
  const id = useId();
  return (
    <div class="log-field">
      <label for={id}>{label}</label>
      {children({ id, 'aria-describedby': `${id}-hint`, isRefused: problem !== undefined })}
      <div id={`${id}-hint`}>
        <span class="hint">{hint}</span>
        <Refusal why={problem ?? null} />
      </div>
    </div>
  );
}

/** The fields as they would be typed for an entry that was saved. */
function formOf({ found, at, hours, temperature, acidity, note }: Logged, comma: boolean): Form {
  const write = (value: number | null, unit: string) =>
    value === null ? '' : `${writeTrimmed(value, places, comma)}${unit}`;
  return {
    found,
    when: at,
    note,
    hours: write(hours, ' h'),
    temperature: write(temperature, ' °C'),
    acidity: write(acidity, ''),
  };
}
