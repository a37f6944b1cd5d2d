import { useState } from 'preact/hooks';
import { dayAfter, dayHere, writeCalendarDay } from '../../batch/document/calendar-day';
import type { Batch } from '../../batch/document/document';
import { planFor, plannedDay } from '../../batch/store/plan-batches';
import type { Store } from '../../batch/store/store';
import { isUnknown } from '../../formula/advice/batch-allergens';
import { type LabelLine, labelDaysOf, labelOfBatch } from '../../formula/steps/label-text';
import { isGrains } from '../../reference/grains';
import { Refusal, Typed } from '../page/Typed';
import { useSheetOnPaper } from './use-sheet-on-paper';

interface Props {
  readonly batch: Batch;
  readonly store: Pick<Store, 'formulationOf' | 'settings'>;
}

const mostLabels = 60;
const longestExtra = 60;

/** Labels for the jars of a batch: their text, to be copied, or a sheet of them, to be printed and cut. */
export function Labels({ batch, store }: Props) {
  const [open, setOpen] = useState(false);
  return (
    <details class="fold-panel labels" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Labels</summary>
      {open && <LabelsPanel key={batch.id} batch={batch} store={store} />}
    </details>
  );
}

function LabelsPanel({ batch, store }: Props) {
  const formulation = store.formulationOf(batch);
  const { bottleCount, vesselCount } = formulation.rows;
  const jars = bottleCount.value ?? vesselCount.value;
  const [chosen, setChosen] = useState<string | null>(null);
  const [typed, setTyped] = useState<string | null>(null);
  const [extra, setExtra] = useState('');
  const [copied, setCopied] = useState<string | null>(null);
  const paper = useSheetOnPaper('labels');
  const planned = plannedDay(planFor(batch, formulation, store.settings.value));
  const made = chosen ?? planned ?? dayHere(new Date());

  const usual = typeof jars === 'number' && jars >= 1 && jars <= mostLabels ? String(jars) : '1';
  const count = readCount(typed ?? usual);
  const keeps = labelDaysOf(formulation);
  const writeLater = (days: number | undefined) =>
    writeCalendarDay((days === undefined ? null : dayAfter(made, days)) ?? '');
  const days = { made: writeCalendarDay(made), tasteBy: writeLater(keeps?.best), useBy: writeLater(keeps?.last) };
  const lines = labelOfBatch(formulation, { name: batch.name, days, extra, leads: store.settings.value.leads });

  const copy = () => {
    navigator.clipboard.writeText(lines.map(({ text }) => text).join('\n')).then(
      () => setCopied('Copied.'),
      () => setCopied('This browser does not let the page copy. Select the text and copy it.'),
    );
  };
  return (
    <section class="panel" aria-label={`Labels for ${batch.name}`}>
      <h2>Labels</h2>
      <p>Text for each jar or bottle. It prints in black, two labels side by side, on A4 or US Letter.</p>
      <div class="label-fields">
        <label>
          <span>{isGrains(batch.grains) ? 'Made, the day the grains come out' : 'Made, the day it is ready'}</span>
          <input type="date" value={made} onInput={(event) => setChosen(event.currentTarget.value)} />
        </label>
        <label>
          <span>Number of labels</span>
          <Typed inputMode="numeric" value={typed ?? usual} isRefused={count === null} onText={setTyped} />
        </label>
        <label class="label-extra">
          <span>A line of your own</span>
          <Typed maxLength={longestExtra} value={extra} onText={setExtra} />
        </label>
      </div>
      <Refusal why={count === null ? `Type a whole number of labels, from 1 to ${mostLabels}.` : null} />
      {chosen === null && planned !== null && <p role="status">The day is the plan’s. Change it if it was another.</p>}
      {days.made === null && <p role="status">Choose the day, or print a line to write it on.</p>}
      {isUnknown(formulation.choices.source) && (
        <p>The sheet does not know what is in it. Write its allergens in the line of your own.</p>
      )}
      <h3>As it prints</h3>
      <JarLabel lines={lines} />
      <p class="correct">
        <button type="button" class="button" onClick={copy}>
          Copy the text
        </button>
        <button type="button" class="button" disabled={count === null} onClick={paper.start}>
          Print labels
        </button>
        <span role="status">{copied}</span>
      </p>
      {paper.isOn && count !== null && (
        <div class="label-sheet">
          {Array.from({ length: count }, (_, place) => (
            <JarLabel key={place} lines={lines} />
          ))}
        </div>
      )}
    </section>
  );
}

function JarLabel({ lines }: { readonly lines: readonly LabelLine[] }) {
  return (
    <div class="jar-label">
      {lines.map(({ id, text }) => (
        <p key={id} class={`label-${id}`} dir="auto">
          {text}
        </p>
      ))}
    </div>
  );
}

function readCount(text: string): number | null {
  const count = /^\s*\d{1,4}\s*$/.test(text) ? Number(text) : 0;
  return count >= 1 && count <= mostLabels ? count : null;
}
