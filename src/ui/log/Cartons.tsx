import { useId, useMemo, useState } from 'preact/hooks';
import type { Batch } from '../../batch/document/document';
import { longestName, longestNote, longestText } from '../../batch/document/document-limits';
import {
  type Carton,
  cartonRecords,
  cartonSteps,
  cartonWarning,
  labelProblem,
  nameCarton,
  noteCarton,
  removeCarton,
} from '../../batch/edits/carton-edits';
import { isOfCarton } from '../../batch/edits/log-edits';
import type { Store } from '../../batch/store/store';
import type { CartonRecord } from '../../formula/time/carton-record';
import { describeRecord } from '../../formula/time/carton-words';
import { KeptTyped, Refusal, Typed } from '../page/Typed';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
}

/** The cartons that were tried: which one this batch is of, how each did, and what its label says. */
export function Cartons({ batch, store }: Props) {
  const { batches, log, cartons } = store.document.value;
  const isCarton = isOfCarton(batch);
  const records = useMemo(() => cartonRecords(store.document.value), [batches, log, cartons]);
  if (!isCarton && records.size === 0) return null;
  return (
    <details class="fold-panel cartons" open={isCarton} key={String(isCarton)}>
      <summary>
        <h3>Cartons</h3>
      </summary>
      {isCarton && <WhichCarton batch={batch} store={store} />}
      {records.size === 0 ? (
        <p>Name the carton, and what is found at its jars is counted: some turn, some never do.</p>
      ) : (
        <ul class="log-entries">
          {[...records].map(([name, record]) => (
            <OneCarton
              key={name}
              carton={cartons?.find((one) => one.name === name) ?? { name }}
              isKept={cartons?.some((one) => one.name === name) === true}
              record={record}
              store={store}
            />
          ))}
        </ul>
      )}
    </details>
  );
}

/** Of which carton the batch is: one of those known, or a new name. */
function WhichCarton({ batch, store }: Props) {
  const id = useId();
  const { value: document } = store.document;
  const warning = cartonWarning(document, batch);
  return (
    <div class="log-field">
      <label for={id}>Which carton is it?</label>
      <KeptTyped
        id={id}
        aria-describedby={`${id}-hint`}
        maxLength={longestName}
        kept={batch.carton ?? ''}
        onKeep={(text) => {
          if (text.trim() === (batch.carton ?? '')) return;
          store.takeEdit(nameCarton(store.document.value, batch.id, text), cartonSteps.name(text));
        }}
      />
      <span id={`${id}-hint`} class="hint">
        As you call it; a name used before is the same carton.
      </span>
      <Known batch={batch} store={store} />
      {warning !== null && (
        <div class="problem caution" role="status">
          <p>{warning}</p>
        </div>
      )}
    </div>
  );
}

/** The cartons of the register as buttons, the first few. */
function Known({ batch, store }: Props) {
  const { cartons = [] } = store.document.value;
  const others = cartons.filter(({ name }) => name !== batch.carton).slice(0, mostOffered);
  if (others.length === 0) return null;
  return (
    <p class="log-acts">
      {others.map(({ name }) => (
        <button
          key={name}
          type="button"
          class="button"
          onClick={() => store.takeEdit(nameCarton(store.document.value, batch.id, name), cartonSteps.name(name))}
        >
          {name}
        </button>
      ))}
    </p>
  );
}

const mostOffered = 8;

interface OneProps {
  readonly carton: Carton;
  /** Whether it is in the register, and not only in the log. */
  readonly isKept: boolean;
  readonly record: CartonRecord;
  readonly store: Store;
}

function OneCarton({ carton, isKept, record, store }: OneProps) {
  const [isOpen, setOpen] = useState(false);
  const { decimalComma } = store.settings.value;
  const { name, kind, sugar, serving, note } = carton;
  const label = [kind, sugar === undefined ? undefined : `${sugar} sugar in ${serving ?? 'a serving'}`];
  return (
    <li>
      <b>
        <bdi>{name}</bdi>
      </b>
      <span>{describeRecord(record, decimalComma)}</span>
      {label.some(Boolean) && <span class="hint">{label.filter(Boolean).join(' · ')}</span>}
      {note !== undefined && <span class="log-note">{note}</span>}
      {isKept && (
        <span class="log-acts">
          <button
            type="button"
            class="follow"
            aria-expanded={isOpen}
            aria-label={`Label of ${name}`}
            onClick={() => setOpen(!isOpen)}
          >
            Label
          </button>
          <button
            type="button"
            class="follow"
            aria-label={`Remove the carton ${name}`}
            onClick={() => store.takeEdit(removeCarton(store.document.value, name), cartonSteps.remove(name))}
          >
            Remove
          </button>
        </span>
      )}
      {isOpen && <CartonLabel carton={carton} store={store} onKept={() => setOpen(false)} />}
    </li>
  );
}

interface LabelProps {
  readonly carton: Carton;
  readonly store: Store;
  readonly onKept: () => void;
}

const fields = [
  { id: 'kind', label: 'Kind', hint: 'such as soy, unsweetened', most: longestText },
  { id: 'sugar', label: 'Sugar in a serving', hint: 'such as 2.5 g', most: longestText },
  { id: 'serving', label: 'Serving', hint: 'such as 250 mL', most: longestText },
  { id: 'note', label: 'Note', hint: 'what is in it besides', most: longestNote },
] as const;

/** What the label of a carton says. Its sugar and serving are used for batches of this carton. */
function CartonLabel({ carton, store, onKept }: LabelProps) {
  const id = useId();
  const { decimalComma } = store.settings.value;
  const [texts, setTexts] = useState({
    ...{ kind: carton.kind ?? '', sugar: carton.sugar ?? '' },
    ...{ serving: carton.serving ?? '', note: carton.note ?? '' },
  });
  const [problems, setProblems] = useState<Readonly<Partial<Record<keyof typeof texts, string>>>>({});
  const keep = (event: Event) => {
    event.preventDefault();
    const sugar = labelProblem('labelSugar', texts.sugar, decimalComma);
    const serving = labelProblem('labelServing', texts.serving, decimalComma);
    setProblems({ ...(sugar === null ? {} : { sugar }), ...(serving === null ? {} : { serving }) });
    if (sugar !== null || serving !== null) return;
    store.takeEdit(noteCarton(store.document.value, carton.name, texts), cartonSteps.note(carton.name));
    onKept();
  };
  return (
    <form class="log-form" noValidate onSubmit={keep} aria-label={`What the label of ${carton.name} says`}>
      <div class="log-fields">
        {fields.map(({ id: field, label, hint, most }) => (
          <div key={field} class="log-field">
            <label for={`${id}-${field}`}>{label}</label>
            <Typed
              id={`${id}-${field}`}
              aria-describedby={`${id}-${field}-hint`}
              maxLength={most}
              value={texts[field]}
              isRefused={problems[field] !== undefined}
              onText={(text) => setTexts((old) => ({ ...old, [field]: text }))}
            />
            <div id={`${id}-${field}-hint`}>
              <span class="hint">{hint}</span>
              <Refusal why={problems[field] ?? null} />
            </div>
          </div>
        ))}
      </div>
      <p class="hint">Sugar and serving are the sheet’s figures for all batches of this kind of carton from then on.</p>
      <button type="submit" class="button">
        Keep these
      </button>
    </form>
  );
}
