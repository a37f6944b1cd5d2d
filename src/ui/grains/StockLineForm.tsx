import { useState } from 'preact/hooks';
import type { Settings, Stock, StockLine } from '../../batch/document/document';
import { longestNote } from '../../batch/document/document-limits';
import { isKeyOf, keysOf } from '../../batch/document/table-keys';
import { now, wallOf } from '../../batch/reading/local-time';
import { readDone, readGrains } from '../../batch/reading/read-stock-line';
import type { Ledger, Medium, Place } from '../../formula/stock/ledger';
import { didWords, mediumWords, placeWords, writeGrains } from '../../formula/stock/line-words';
import { Typed } from '../page/Typed';
import { Field } from './Field';

interface Props {
  readonly stock: Stock;
  readonly ledger: Ledger;
  readonly kitchen: Settings;
  /** The line that is being changed; absent for a new one. */
  readonly changed?: StockLine;
  readonly onLine: (line: StockLine) => void;
  readonly onLeave?: () => void;
}

type Did = StockLine['did'];

/** What is written down beside batches. */
const choices = ['weighed', 'fed', 'moved', 'given', 'got', 'failed'] as const satisfies readonly Did[];
/** What has a weight that nothing can stand in for. */
const weighed: readonly Did[] = ['weighed', 'given', 'got', 'out'];
/** What may say where they are, and in what, from then on. */
const resting: readonly Did[] = ['fed', 'moved', 'got', 'back'];

/** One line of a jar of grains, new or to be changed. What can’t be read is told beside its field. */
export function StockLineForm({ stock, ledger, kitchen, changed, onLine, onLeave }: Props) {
  const [did, setDid] = useState<Did>(changed?.did ?? 'weighed');
  const [weight, setWeight] = useState(changed?.grams == null ? '' : writeGrains(changed.grams, kitchen));
  const [isTyped, setTyped] = useState(false);
  const [when, setWhen] = useState(changed?.at ?? '');
  const [note, setNote] = useState(changed?.note ?? '');
  const [place, setPlace] = useState<Place | ''>(changed === undefined ? (ledger.place ?? '') : (changed.place ?? ''));
  const usual = stock.grains === 'milk' ? 'dairy' : 'sugarWater';
  const [medium, setMedium] = useState<Medium | ''>(changed === undefined ? usual : (changed.medium ?? ''));
  const [problems, setProblems] = useState<{ readonly weight?: string; readonly when?: string }>({});
  const rests = resting.includes(did);
  const save = (event: Event) => {
    event.preventDefault();
    const read = readGrains(weight, weighed.includes(did), kitchen);
    const done = readDone(when, wallOf(now()));
    setProblems({ ...(read.ok ? {} : { weight: read.why }), ...(done.ok ? {} : { when: done.why }) });
    if (!read.ok || !done.ok) return;
    const { place: _, medium: __, note: ___, ...kept } = changed ?? { at: done.at, did, grams: null };
    // A weight that was not touched stays as it was weighed, not as it is written.
    const grams = changed !== undefined && !isTyped ? changed.grams : read.grams;
    onLine({
      ...{ ...kept, at: done.at, did, grams },
      ...(rests && place !== '' ? { place } : {}),
      ...(rests && medium !== '' ? { medium } : {}),
      ...(note.trim() === '' ? {} : { note: note.trim() }),
    });
    if (changed === undefined) {
      setWeight('');
      setNote('');
      setWhen('');
    }
  };
  return (
    <form class="grains-form" noValidate onSubmit={save}>
      {changed === undefined && (
        <fieldset>
          <legend class="unseen">What was done</legend>
          {choices.map((id) => (
            <label key={id} class="pick">
              <input type="radio" name={`did-${stock.key}`} checked={did === id} onChange={() => setDid(id)} />
              {didWords[id]}
            </label>
          ))}
        </fieldset>
      )}
      <div class="grains-fields">
        <Field label={labels[did] ?? 'Drained, they weigh'} hint={hints[did]} problem={problems.weight}>
          {(about) => (
            <Typed
              {...about}
              value={weight}
              inputMode="decimal"
              onText={(text) => {
                setWeight(text);
                setTyped(true);
              }}
            />
          )}
        </Field>
        {rests && <Choice label="They are" words={placeWords} value={place} onChoose={setPlace} />}
        {rests && <Choice label="In" words={mediumWords} value={medium} onChoose={setMedium} />}
        <Field label="When" hint="empty is now" problem={problems.when}>
          {({ isRefused, ...about }) => (
            <input
              {...about}
              type="datetime-local"
              value={when}
              aria-invalid={isRefused}
              onInput={(event) => setWhen(event.currentTarget.value)}
            />
          )}
        </Field>
        <Field label="Note">
          {(about) => <Typed {...about} value={note} maxLength={longestNote} onText={setNote} />}
        </Field>
      </div>
      <p class="stock-buttons">
        <button type="submit" class="button next">
          {changed === undefined ? 'Write it down' : 'Save the change'}
        </button>
        {onLeave !== undefined && (
          <button type="button" class="follow" onClick={onLeave}>
            Leave it as it was
          </button>
        )}
      </p>
    </form>
  );
}

const labels: Readonly<Partial<Record<Did, string>>> = {
  weighed: 'At rest they weigh, drained',
  given: 'How much',
  got: 'How much',
  failed: 'How much',
  out: 'How much went out',
  back: 'How much came back',
};

const hints: Readonly<Partial<Record<Did, string>>> = {
  weighed: 'all that is not in a batch',
  fed: 'empty: not weighed',
  moved: 'empty: not weighed',
  back: 'empty: not weighed',
  failed: 'empty: all of them',
};

interface ChoiceProps<K extends string> {
  readonly label: string;
  readonly words: Readonly<Record<K, string>>;
  readonly value: K | '';
  readonly onChoose: (id: K | '') => void;
}

function Choice<K extends string>({ label, words, value, onChoose }: ChoiceProps<K>) {
  return (
    <Field label={label}>
      {({ isRefused: _, ...about }) => (
        <select
          {...about}
          value={value}
          onChange={(event) => {
            const id = event.currentTarget.value;
            onChoose(isKeyOf(words, id) ? id : '');
          }}
        >
          <option value="">not said</option>
          {keysOf(words).map((id) => (
            <option key={id} value={id}>
              {words[id]}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
