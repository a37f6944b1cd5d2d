import type { Batch } from '../../batch/document/document';
import type { Store } from '../../batch/store/store';
import { allergensOf } from '../../formula/advice/cautions';
import type { Formulation } from '../../formula/engine/formulate';
import type { ChoiceRowId } from '../../formula/recipe/order';
import { describeCoefficient, describeOrigin } from '../../formula/words/origin-words';
import { writeSignificant } from '../../formula/words/write-significant';
import { coefficientsOf, compositionOf, type Fact, sugarFacts } from '../../formula/working/choice-figures';
import { grainNotes } from '../../reference/grain-notes';
import { sweetenerNotes } from '../../reference/sweetener-notes';
import { Correct } from './Correct';
import { OwnLabel } from './OwnLabel';

interface Props {
  readonly id: ChoiceRowId;
  readonly batch: Batch;
  readonly store: Store;
}

/** What is known of the chosen jar, source, sweetener or grains, each figure with its origin and open to correction. */
export function AboutChoice({ id, batch, store }: Props) {
  const formulation = store.formulationOf(batch);
  return (
    <>
      {id === 'source' && <SourceFacts formulation={formulation} />}
      {id === 'sweetener' && <SweetenerFacts formulation={formulation} />}
      {id === 'grains' && <GrainFacts formulation={formulation} />}
      {id === 'source' && formulation.choices.source.ownLabel !== undefined && (
        <OwnLabel formulation={formulation} store={store} />
      )}
      {id !== 'sweetener' && (
        <>
          <h4>Figures used</h4>
          <ul class="inputs">
            {coefficientsOf(id, formulation).map((own) => (
              <li key={own.key}>
                <span class="symbol">{own.symbol}</span> {own.label}:{' '}
                <span class="amount">
                  {writeSignificant(own.coefficient.value, store.settings.value.decimalComma)}
                  {'\u00A0'}
                  {own.coefficient.unit}
                </span>
                <span class="origin">{describeCoefficient(own.coefficient)}</span>
                <Correct id={own.id} at={own.key} label={own.label} coefficient={own.coefficient} store={store} />
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}

function SourceFacts({ formulation }: { formulation: Formulation }) {
  const { source } = formulation.choices;
  const { sentence } = allergensOf(formulation);
  return (
    <>
      <p class="in-words">{sentence}</p>
      <Facts caption={`In 100 g of ${source.plural}`} facts={compositionOf(formulation)} />
      <span class="origin">{describeOrigin(source.composition.origin)}</span>
      {source.cup !== null && (
        <p>
          Cup weight: {writeSignificant(source.cup.grams, false)} g ({source.cup.measure}).
          <span class="origin">{describeOrigin(source.cup.origin)}</span>
        </p>
      )}
    </>
  );
}

function Facts({ caption, facts }: { caption: string; facts: readonly Fact[] }) {
  return (
    <table class="facts">
      <caption class="unseen">{caption}</caption>
      <tbody>
        {facts.map(({ label, value }) => (
          <tr key={label}>
            <th scope="row">{label}</th>
            <td>{value === null ? 'no figure' : `${writeSignificant(value, false)}\u00A0g in 100\u00A0g`}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function SweetenerFacts({ formulation }: { formulation: Formulation }) {
  const sugars = sugarFacts(formulation);
  return (
    <>
      {formulation.recipe.sweetener.map(({ id }, at) => {
        const entry = formulation.choices.sweetener[at]?.entry;
        return (
          <div key={id}>
            <p class="in-words">{sweetenerNotes[id].flavour}</p>
            {sugars[at] !== undefined && <Facts caption={`In 100 g: ${sugars[at].name}`} facts={sugars[at].facts} />}
            {entry !== undefined && <span class="origin">{describeOrigin(entry.sugars.origin)}</span>}
          </div>
        );
      })}
    </>
  );
}

function GrainFacts({ formulation }: { formulation: Formulation }) {
  return (
    <>
      {grainNotes[formulation.recipe.grains].map(({ text, origin }) => (
        <p key={text}>
          {text}
          <span class="origin">{describeOrigin(origin)}</span>
        </p>
      ))}
    </>
  );
}
