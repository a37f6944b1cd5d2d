import type { Batch } from '../../batch/document/document';
import { cellProblem } from '../../batch/reading/cell-problem';
import { planFor } from '../../batch/store/plan-batches';
import type { Store } from '../../batch/store/store';
import { findCaution } from '../../formula/advice/cautions';
import { waysOut } from '../../formula/advice/ways-out';
import { type Fizz as Fizzing, fizzOf, type SealedAt, tightLidOf } from '../../formula/fizz/fizz';
import {
  adviseFizz,
  describeFizz,
  describePlanned,
  describeTightLid,
  explainFizz,
  explainVerdict,
  writePlace,
  writePressure,
  writeVerdict,
  writeVolumes,
} from '../../formula/fizz/fizz-words';
import { secondHoursOf } from '../../formula/plan/schedule';
import { severities } from '../../formula/recipe/problem';
import { describeProblem } from '../../formula/words/words';
import { type Kitchen, writeValue } from '../../formula/words/write-row';
import { writeTrimmed } from '../../measure/write-quantity';
import { KeptTyped, Refusal } from '../page/Typed';
import { Whose } from '../page/Whose';
import { FizzAddition } from './FizzAddition';
import { type DrawnPressure, drawFizz } from './fizz-picture';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
}

/** What builds up in a sealed bottle of this batch, whether the bottle bears it, and what sugar or fruit adds to it. */
export function Fizz({ batch, store }: Props) {
  const formulation = store.formulationOf(batch);
  const kitchen = store.settings.value;
  const fizz = fizzOf(formulation);
  const tight = tightLidOf(formulation);
  const hasBottle = formulation.rows.bottleTime.value !== 0;
  const isTyped = batch.given.some(({ row }) => row === 'bottleLimit');
  const plan = planFor(batch, formulation, kitchen);
  const planned = plan === null ? null : describePlanned(formulation, secondHoursOf(plan.schedule), kitchen);
  return (
    <section class="time-card fizz" aria-label={`Fizz in the bottles of ${batch.name}`}>
      <h2>
        Fizz
        <Whose />
      </h2>
      {!hasBottle && <p>There is no second ferment in this batch, so no bottle is sealed.</p>}
      {hasBottle && fizz === null && <p>Nothing to tell of a bottle yet: mend the marked cells first.</p>}
      {fizz !== null && (
        <>
          <p role="status" class={`fizz-verdict ${fizz.verdict}`}>
            <b>{writeVerdict(fizz, isTyped)}.</b> {explainVerdict(fizz, kitchen)}
          </p>
          <ol class="fizz-do">
            {adviseFizz(formulation, kitchen).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ol>
          {planned !== null && <p>{planned}</p>}
          <WaysUnder batch={batch} store={store} />
          <Gauge fizz={fizz} kitchen={kitchen} isTyped={isTyped} />
          <Warming fizz={fizz} kitchen={kitchen} />
          <p>{explainFizz(fizz, kitchen)}</p>
        </>
      )}
      {hasBottle && <Limit key={`limit ${batch.id}`} batch={batch} store={store} fizz={fizz} />}
      {fizz !== null && <FizzAddition key={`add ${batch.id}`} batch={batch} store={store} />}
      {tight !== null && <p class="fizz-lid">{describeTightLid(tight, kitchen)}</p>}
    </section>
  );
}

/** The ways to keep a bottle under its limit, the same as at its cell. */
function WaysUnder({ batch, store }: Props) {
  const formulation = store.formulationOf(batch);
  const problem = formulation.rows.bottlePressureForgotten.problems.find(({ code }) => code === 'overLimit');
  const ways = problem === undefined ? [] : waysOut(problem, formulation);
  if (ways.length === 0) return null;
  return (
    <div class="ways-out">
      {ways.map((way) => (
        <button type="button" class="button" key={way.label} onClick={() => store.takeWayOut(batch.id, way)}>
          {way.label}
        </button>
      ))}
    </div>
  );
}

const names = { likely: 'Likely', forgotten: 'If forgotten' } as const;

/** The pressures as bars and the limit as a line over them, on one scale; the figures stand beside, in words. */
function Gauge({ fizz, kitchen, isTyped }: { fizz: Fizzing; kitchen: Kitchen; isTyped: boolean }) {
  const { likely, forgotten, limit } = fizz;
  const picture = drawFizz(
    likely === null ? null : likely.pressure,
    forgotten.pressure,
    limit,
    kitchen.leads === 'us' ? 'psi' : 'bar',
  );
  return (
    <div class="fizz-gauge" role="img" aria-label={describeFizz(fizz, kitchen, isTyped)}>
      {picture.pressures.map((pressure) => (
        <Row key={pressure.id} pressure={pressure} limit={picture.limit} kitchen={kitchen} />
      ))}
      <div class="fizz-scale">
        {picture.ticks.map(({ at, left }) => (
          <span key={at} style={{ left: `${left}%` }}>
            {writeTrimmed(at, 0, kitchen.decimalComma)}
          </span>
        ))}
      </div>
      <p class="fizz-caption">
        {picture.unit}
        {picture.limit !== null && (
          <span class="fizz-key">
            <span class="fizz-limit-mark" /> the maker’s limit, {writePressure(picture.limit.bar, kitchen)}
          </span>
        )}
      </p>
    </div>
  );
}

interface RowProps {
  readonly pressure: DrawnPressure;
  readonly limit: { readonly left: number } | null;
  readonly kitchen: Kitchen;
}

function Row({ pressure: { id, bar, width }, limit, kitchen }: RowProps) {
  return (
    <>
      <p>
        {names[id]}: <b>{writePressure(bar, kitchen)}</b>
      </p>
      <div class="fizz-track">
        <span class={`fizz-bar ${id}`} style={{ width: `${width}%` }} />
        {limit !== null && <span class="fizz-limit" style={{ left: `${limit.left}%` }} />}
      </div>
    </>
  );
}

/** The same sealed bottle from cold to warm. */
function Warming({ fizz, kitchen }: { fizz: Fizzing; kitchen: Kitchen }) {
  return (
    <table>
      <caption>The same sealed bottle, cold and warm</caption>
      <thead>
        <tr>
          <th scope="col">Where it stands</th>
          <th scope="col">Likely</th>
          <th scope="col">If forgotten</th>
        </tr>
      </thead>
      <tbody>
        {fizz.warming.map((step) => (
          <tr key={step.place}>
            <th scope="row">{writePlace(step, kitchen)}</th>
            <td>{step.likely === null ? 'can’t be told' : <State state={step.likely} kitchen={kitchen} />}</td>
            <td>
              <State state={step.forgotten} kitchen={kitchen} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function State({ state: { pressure, volumes }, kitchen }: { state: SealedAt; kitchen: Kitchen }) {
  return (
    <>
      <b>{writePressure(pressure, kitchen)}</b>
      <small>{writeVolumes(volumes, kitchen)}</small>
    </>
  );
}

/** What the maker of the bottle allows, typed here as in its cell, and the most sugar under it. */
function Limit({ batch, store, fizz }: Props & { readonly fizz: Fizzing | null }) {
  const settings = store.settings.value;
  const cell = batch.given.find(({ row }) => row === 'bottleLimit') ?? null;
  const refusals = store
    .formulationOf(batch)
    .rows.bottleLimit.problems.filter(({ code }) => severities[code] === 'refusal');
  const unread = cell === null ? null : cellProblem('bottleLimit', cell, settings);
  const problem = unread ?? (refusals[0] === undefined ? null : describeProblem(refusals[0], settings));
  const means = fizz?.limit == null ? null : findCaution('limitMeans', store.formulationOf(batch));
  return (
    <div class="fizz-field">
      <label>
        <span>What the maker of your bottle allows</span>
        <KeptTyped
          kept={cell?.text ?? ''}
          placeholder={settings.leads === 'us' ? 'such as 90 psi' : 'such as 6 bar'}
          isRefused={problem !== null}
          onKeep={(text) => store.typeCell(batch.id, 'bottleLimit', text)}
        />
      </label>
      <Refusal why={problem} />
      {fizz?.sugarMost != null && (
        <p>
          Most sugar under that limit, what is left and what is added together:{' '}
          <b>{writeValue(fizz.sugarMost, 'concentration', null, settings).metric}</b>.
        </p>
      )}
      {means !== null && <p class="fizz-means">{means.text}</p>}
    </div>
  );
}
