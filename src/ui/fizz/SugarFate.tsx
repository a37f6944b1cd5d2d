import type { Batch } from '../../batch/document/document';
import type { Store } from '../../batch/store/store';
import { type SugarFate as Fate, fateAfterBottle, fateOfFirst } from '../../formula/fizz/sugar-fate';
import {
  alcoholCaution,
  describeAlcohol,
  describeNoSecond,
  describeSweetness,
  type FateLine,
  fateLines,
  fateOrigins,
} from '../../formula/fizz/sugar-fate-words';
import { type CoefficientId, coefficientInEffect, coefficientKey } from '../../formula/recipe/coefficients';
import { coefficientNames } from '../../formula/words/coefficient-names';
import { describeCoefficient } from '../../formula/words/origin-words';
import { writeCoefficient } from '../../formula/working/working-text';
import { Whose } from '../page/Whose';
import { Correct } from '../working/Correct';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
}

/** What the sugar turns into until it is ready to taste, and in the bottle; an estimate, with what it rests on. */
export function SugarFate({ batch, store }: Props) {
  const kitchen = store.settings.value;
  const formulation = store.formulationOf(batch);
  const first = fateOfFirst(formulation);
  const both = fateAfterBottle(formulation);
  return (
    <section class="time-card sugar-fate" aria-label={`What happens to the sugar of ${batch.name}`}>
      <h2>
        What happens to the sugar
        <Whose />
      </h2>
      {first === null ? (
        <p>Nothing to tell yet: mend the marked cells first.</p>
      ) : (
        <>
          <p>
            An estimate, per litre of kefir, sugar as hexose: the likely figure, and from where to where it may lie.
          </p>
          <div class="fates">
            <Account title="When ready to taste" fate={first} store={store} />
            {both === null ? (
              <p class="no-second">{describeNoSecond(formulation, kitchen)}</p>
            ) : (
              <Account title="After the second ferment" fate={both} store={store} />
            )}
          </div>
          <p class="fate-caution">{alcoholCaution}</p>
          <Assumptions batch={batch} store={store} hasSecond={both !== null} />
        </>
      )}
    </section>
  );
}

function Account({ title, fate, store }: { title: string; fate: Fate; store: Store }) {
  const kitchen = store.settings.value;
  return (
    <div class="fate">
      <table>
        <caption>{title}</caption>
        <tbody>
          {fateLines(fate, kitchen).map((line) => (
            <Line key={line.label} line={line} />
          ))}
        </tbody>
      </table>
      <p>
        <b>Sweetness:</b> {describeSweetness(fate)}
      </p>
      <p>
        <b>Alcohol:</b> {describeAlcohol(fate, kitchen)}
      </p>
    </div>
  );
}

function Line({ line: { label, likely, range } }: { line: FateLine }) {
  return (
    <tr>
      <th scope="row">{label}</th>
      <td>
        <b>{likely}</b>
        {range !== null && <small>{range}</small>}
      </td>
    </tr>
  );
}

function Assumptions({ batch, store, hasSecond }: Props & { readonly hasSecond: boolean }) {
  const { recipe, choices } = store.formulationOf(batch);
  const { decimalComma } = store.settings.value;
  const ids: readonly CoefficientId[] = [
    'usedWhenReady',
    'yeastShare',
    ...(hasSecond ? (['withoutGrains'] as const) : []),
  ];
  return (
    <details class="fate-rests-on">
      <summary>What this rests on</summary>
      <ul class="inputs">
        {ids.map((id) => {
          const coefficient = coefficientInEffect(id, recipe, choices);
          const { label } = coefficientNames[id];
          return (
            <li key={id}>
              {label}: <span class="amount">{writeCoefficient(coefficient, decimalComma)}</span>
              <span class="origin">{describeCoefficient(coefficient, decimalComma)}</span>
              <Correct id={id} at={coefficientKey(id, recipe)} label={label} coefficient={coefficient} store={store} />
            </li>
          );
        })}
        {fateOrigins.map(({ label, text }) => (
          <li key={label}>
            {label}
            <span class="origin">{text}</span>
          </li>
        ))}
        <li>
          What goes through yeast becomes ethanol and gas, the rest lactic acid, by their molar masses. Vinegar, and
          alcohol or gas that leaves the jar, are not taken off.
        </li>
      </ul>
    </details>
  );
}
