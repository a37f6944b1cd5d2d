import { useState } from 'preact/hooks';
import { dayHere } from '../../batch/document/calendar-day';
import type { Batch } from '../../batch/document/document';
import { cartonRecords } from '../../batch/edits/carton-edits';
import type { Store } from '../../batch/store/store';
import { onlyBatches, writeCopy } from '../../interchange/json-file';
import { recipeMarkup, writeMarkupFile, writeMarkupSnippet } from '../../interchange/recipe-markup';
import { downloadText, fileNameOf } from './download-text';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
}

type Table = 'batches' | 'log' | 'cartons';

const notLoaded = 'No file was made: a part of the page could not be loaded. Try again when online.';

/** A copy of the sheet to keep, tables for a spreadsheet program, and a recipe for a web page. */
export function SaveFiles({ batch, store }: Props) {
  const [only, setOnly] = useState(false);
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set([batch.id]));
  const [said, setSaid] = useState<string | null>(null);
  const { value: document } = store.document;
  const there = document.batches.filter(({ id }) => chosen.has(id));
  const save = (text: string, what: string, ending: string, type: string) => {
    const name = `${what}-${dayHere(new Date())}.${ending}`;
    downloadText(text, name, `${type};charset=utf-8`);
    setSaid(`“${name}” is saved where this browser keeps what it downloads.`);
  };
  const copy = () => {
    const kept = only ? onlyBatches(document, chosen) : document;
    save(writeCopy(kept), 'jarwright', 'json', 'application/json');
  };
  const table = async (what: Table) => {
    const { writeBatchesCsv, writeCartonsCsv, writeLogCsv } = await import('../../interchange/csv-file');
    const written = {
      batches: () => writeBatchesCsv(document.batches, (one) => store.formulationOf(one)),
      log: () => writeLogCsv(document.log),
      cartons: () => writeCartonsCsv(document.cartons ?? [], cartonRecords(document)),
    };
    save(written[what](), `jarwright-${what}`, 'csv', 'text/csv');
  };
  const tabulate = (what: Table) => {
    table(what).catch(() => setSaid(notLoaded));
  };
  const markup = (how: 'jsonld' | 'html') => {
    const recipe = recipeMarkup(store.formulationOf(batch), batch.name, store.settings.value);
    const name = fileNameOf(batch.name, 'recipe');
    if (how === 'html') save(writeMarkupSnippet(recipe), name, 'html', 'text/html');
    else save(writeMarkupFile(recipe), name, 'jsonld', 'application/ld+json');
  };
  const toggle = (id: string) => {
    const next = new Set(chosen);
    if (!next.delete(id)) next.add(id);
    setChosen(next);
  };
  return (
    <section class="panel" aria-label="Save a copy">
      <h2>Save a copy</h2>
      <p>
        A file with batches, figures of yours and the log in it. Keep it elsewhere: a browser can lose what it holds.
      </p>
      {document.batches.length > 1 && (
        <fieldset>
          <legend>What goes in</legend>
          <label>
            <input type="radio" name="copy-of" checked={!only} onChange={() => setOnly(false)} />
            the whole sheet
          </label>
          <label>
            <input type="radio" name="copy-of" checked={only} onChange={() => setOnly(true)} />
            some batches, with their figures and log
          </label>
          {only && (
            <div class="files-list">
              {document.batches.map(({ id, name }) => (
                <label key={id}>
                  <input type="checkbox" checked={chosen.has(id)} onChange={() => toggle(id)} />
                  <bdi>{name}</bdi>
                </label>
              ))}
            </div>
          )}
        </fieldset>
      )}
      <p class="correct">
        <button type="button" class="button" disabled={only && there.length === 0} onClick={copy}>
          Save a copy
        </button>
      </p>
      <h3>As tables</h3>
      <p>For a spreadsheet program: a line a batch, amounts in g, mL and cm. Only a copy can be opened here again.</p>
      <p class="correct">
        <button type="button" class="button" onClick={() => tabulate('batches')}>
          Batches as CSV
        </button>
        <button type="button" class="button" disabled={document.log.length === 0} onClick={() => tabulate('log')}>
          Log as CSV
        </button>
        {document.cartons !== undefined && (
          <button type="button" class="button" onClick={() => tabulate('cartons')}>
            Cartons as CSV
          </button>
        )}
      </p>
      <h3>Recipe markup for a web page</h3>
      <p>
        <bdi>{batch.name}</bdi> in the vocabulary of schema.org, so that search engines and recipe readers can read it.
      </p>
      <p class="correct">
        <button type="button" class="button" onClick={() => markup('html')}>
          Piece for a page (.html)
        </button>
        <button type="button" class="button" onClick={() => markup('jsonld')}>
          By itself (.jsonld)
        </button>
      </p>
      <p role="status">{said}</p>
    </section>
  );
}
