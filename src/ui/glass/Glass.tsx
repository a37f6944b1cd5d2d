import type { Batch } from '../../batch/document/document';
import type { Store } from '../../batch/store/store';
import { alcoholCaution } from '../../formula/fizz/sugar-fate-words';
import {
  cartonCaution,
  type GlassLine,
  glassCaution,
  glassLines,
  type Told,
  tellAlcohol,
  tellKilojoules,
} from '../../formula/glass/glass-words';
import { glassWorking } from '../../formula/glass/glass-working';
import { inKefir, inSoMuch } from '../../formula/glass/in-a-glass';
import { leading } from '../../formula/words/leading';
import { writeValue } from '../../formula/words/write-row';
import { Whose } from '../page/Whose';

interface Props {
  readonly batch: Batch;
  readonly store: Pick<Store, 'formulationOf' | 'settings'>;
}

/** What is in a glass of the kefir of a batch, and in 100 mL of it; an estimate, with how it came about. */
export function Glass({ batch, store }: Props) {
  const kitchen = store.settings.value;
  const formulation = store.formulationOf(batch);
  const kefir = inKefir(formulation);
  const { value: size } = formulation.rows.servingSize;
  const glass = typeof size === 'number' ? size : 100;
  const named = leading(writeValue(glass, 'volume', null, kitchen), kitchen.leads).first;
  return (
    <section class="glass" aria-label={`In a glass of ${batch.name}`}>
      <h2>
        In a glass
        <Whose />
      </h2>
      {kefir === null ? (
        <p>Nothing to tell yet: mend the marked cells first.</p>
      ) : (
        <>
          <table class="glass-table" aria-label="What is in the kefir">
            <thead>
              <tr>
                <td />
                <th scope="col">{named === '–' ? 'A glass' : `A glass, ${named}`}</th>
                <th scope="col">{writeValue(100, 'volume', null, kitchen).metric}</th>
              </tr>
            </thead>
            <tbody>
              {glassLines(kefir, glass, kitchen).map((line) => (
                <Line
                  key={line.id}
                  line={line}
                  aside={line.id === 'energy' ? tellKilojoules(inSoMuch(kefir, glass).energy, kitchen) : null}
                />
              ))}
            </tbody>
          </table>
          <p class="glass-note">{formulation.choices.source.label === null ? glassCaution : cartonCaution}</p>
          <p class="glass-note">
            Alcohol is {tellAlcohol(kefir, kitchen)}. {alcoholCaution}
          </p>
          <details class="fold-panel">
            <summary>How it was worked out</summary>
            <ul class="inputs">
              {glassWorking(formulation, kefir, glass, kitchen).map(({ label, text, origins }) => (
                <li key={label}>
                  <b>{label}.</b> {text}
                  {origins.map((origin) => (
                    <span key={origin} class="origin">
                      {origin}
                    </span>
                  ))}
                </li>
              ))}
              <li>Flavours for the glass are not counted, nor the flesh of fruit in a bottle.</li>
            </ul>
          </details>
        </>
      )}
    </section>
  );
}

function Line({ line: { label, isPart, glass, hundred }, aside }: { line: GlassLine; aside: string | null }) {
  return (
    <tr class={isPart ? 'glass-of' : ''}>
      <th scope="row">{label}</th>
      <Amount told={glass} aside={aside} />
      <Amount told={hundred} aside={null} />
    </tr>
  );
}

function Amount({ told: { likely, range }, aside }: { told: Told; aside: string | null }) {
  return (
    <td>
      <b>{likely}</b>
      {range !== null && <small>{range}</small>}
      {aside !== null && <small>{aside}</small>}
    </td>
  );
}
