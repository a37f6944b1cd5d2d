import type { Batch } from '../../batch/document/document';
import type { Store } from '../../batch/store/store';
import { careTopics } from '../../formula/advice/care-topics';
import { allergensOf } from '../../formula/advice/cautions';
import type { Formulation } from '../../formula/engine/formulate';
import { drawJar } from '../../formula/steps/drawing';
import { labelOfBatch } from '../../formula/steps/label-text';
import { type Step, stepsOf } from '../../formula/steps/steps';
import { bothUnits } from '../../formula/words/both-units';
import { cultureNoun } from '../../formula/words/culture-words';
import { leading } from '../../formula/words/leading';
import { type Kitchen, writeRow } from '../../formula/words/write-row';
import { describeJar } from '../jar/describe-jar';
import { JarDrawing } from '../jar/JarDrawing';
import { stepAmounts } from '../steps/step-amounts';
import { LinkCode } from './LinkCode';
import { PaperSide } from './PaperSide';
import { PrintFigures, PrintIngredients } from './PrintAmounts';
import { PrintDates, PrintFound } from './PrintDates';
import { PrintProblems } from './PrintProblems';

interface Props {
  readonly batch: Batch;
  readonly store: Pick<Store, 'document' | 'formulationOf' | 'settings'>;
}

/**
 * A batch on the two sides of a sheet: what goes in, its jar, its numbers, and a link to scan on the one; what to do and
 * to mind on the other. Its name is on both, and the unit that leads on the page leads here.
 */
export function PrintCard({ batch, store }: Props) {
  const formulation = store.formulationOf(batch);
  const kitchen = store.settings.value;
  const depth = writeRow(formulation, 'headspaceDepth', kitchen);
  const steps = stepsOf(formulation, stepAmounts(formulation, kitchen), kitchen);
  const elsewhere = topicsElsewhere(formulation, steps);
  return (
    <article class="print-card" aria-label={`Card of ${batch.name}`}>
      <PaperSide>
        <header>
          <div>
            <h2>{batch.name}</h2>
            <p>{whatItIs(formulation)}</p>
          </div>
          <PrintDates batch={batch} store={store} />
        </header>
        <PrintProblems batch={batch} store={store} />
        <div class="print-top">
          <PrintIngredients formulation={formulation} kitchen={kitchen} />
          <div class="print-jar">
            <JarDrawing
              drawing={drawJar(formulation)}
              words={describeJar(formulation, kitchen)}
              headspace={depth === null ? '' : leading(depth, kitchen.leads).first}
            />
            <p class="print-fill">{fillLine(formulation, kitchen)}</p>
          </div>
        </div>
        <PrintFigures formulation={formulation} kitchen={kitchen} />
        <div class="print-below">
          <PrintFound />
          <LinkCode batch={batch} store={store} />
        </div>
      </PaperSide>
      <PaperSide>
        <header>
          <p class="print-again">{batch.name}</p>
        </header>
        <section class="print-steps">
          <h3>Steps</h3>
          <ol>
            {steps.map(({ id, title, parts, notes }) => (
              <li key={id}>
                <b>{title}.</b> {parts.map(({ text, isAmount }) => (isAmount ? <b>{text}</b> : text))}
                {notes
                  .filter(({ caution }) => caution)
                  .map(({ text }) => (
                    <p class="print-caution" key={text}>
                      {text}
                    </p>
                  ))}
              </li>
            ))}
          </ol>
        </section>
        <section class="print-care">
          <h3>Take care</h3>
          <p>{allergensOf(formulation).sentence}</p>
          {elsewhere.length > 0 && (
            <p>
              What is pressing stands at its step. There is more on the page, under Care: {elsewhere.join('; ')}. Its
              link is on the other side.
            </p>
          )}
        </section>
      </PaperSide>
    </article>
  );
}

/** What the batch is, as its label says it. */
function whatItIs(formulation: Formulation): string {
  const days = { made: null, tasteBy: null, useBy: null };
  return labelOfBatch(formulation, { name: '', days }).find(({ id }) => id === 'what')?.text ?? '';
}

/** What there is more to mind of than stands at the steps, by topic. */
function topicsElsewhere(formulation: Formulation, steps: readonly Step[]): readonly string[] {
  const said = new Set(steps.flatMap(({ notes }) => notes.map(({ text }) => text)));
  return careTopics(formulation)
    .filter(({ id, cautions }) => id !== 'allergens' && cautions.some(({ text }) => !said.has(text)))
    .map(({ name }) => `${name.charAt(0).toLowerCase()}${name.slice(1)}`);
}

/** Where to fill to, in words with both units. */
function fillLine(formulation: Formulation, kitchen: Kitchen): string {
  const depth = writeRow(formulation, 'headspaceDepth', kitchen);
  if (depth === null) return '';
  const { value: jars } = formulation.rows.vesselCount;
  const what = typeof jars === 'number' && jars > 1 ? `Fill each of ${jars} jars` : 'Fill';
  return `${what} to ${bothUnits(depth, kitchen.leads)} below the rim, ${cultureNoun(formulation.choices.grain)} in.`;
}
