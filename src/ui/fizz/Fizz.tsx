import type { Batch } from '../../batch/document/document';
import { cellProblem } from '../../batch/reading/cell-problem';
import { planFor } from '../../batch/store/plan-batches';
import type { Store } from '../../batch/store/store';
import { findCaution } from '../../formula/advice/cautions';
import { waysOut } from '../../formula/advice/ways-out';
import { type Fizz as Fizzing, fizzOf, type SealedAt, type Standing, tightLidOf } from '../../formula/fizz/fizz';
import {
  adviseFizz,
  describeBound,
  describeFizz,
  describePlanned,
  describeTightLid,
  explainFizz,
  explainVerdict,
  nameLine,
  offerSecond,
  writeLikely,
  writePlace,
  writePressure,
  writeRange,
  writeStanding,
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
      {!hasBottle && <NoBottle batch={batch} store={store} />}
      {hasBottle && fizz === null && <p>Nothing to tell of a bottle yet: mend the marked cells first.</p>}
      {fizz !== null && (
        <>
          <p role="status" class={`fizz-verdict ${fizz.verdict}`}>
            {writeLikely(fizz, kitchen)} <b>{writeVerdict(fizz, isTyped)}.</b> {explainVerdict(fizz, kitchen)}
          </p>
          <ol class="fizz-do">
            {adviseFizz(formulation, kitchen).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ol>
          {planned !== null && <p>{planned}</p>}
          <WaysUnder batch={batch} store={store} />
          {fizz.standing.length > 0 && <Gauge fizz={fizz} kitchen={kitchen} isTyped={isTyped} />}
          <p>{describeBound(fizz, kitchen)}</p>
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

/** Without a second ferment, the way to one. */
function NoBottle({ batch, store }: Props) {
  const { text, label } = offerSecond(store.settings.value);
  return (
    <>
      <p>There is no second ferment in this batch, so no bottle is sealed. For fizz, ask for one.</p>
      <button type="button" class="button" onClick={() => store.typeCell(batch.id, 'bottleTime', text)}>
        {label}
      </button>
    </>
  );
}

/** The bottle after its hours and left too long, as bars, and a line they are held against; the figures in words. */
function Gauge({ fizz, kitchen, isTyped }: { fizz: Fizzing; kitchen: Kitchen; isTyped: boolean }) {
  const picture = drawFizz(
    fizz.standing.map(({ likely, most }) => ({ likely: likely.pressure, most })),
    fizz.line,
    kitchen.leads === 'us' ? 'psi' : 'bar',
  );
  return (
    <div class="fizz-gauge" role="img" aria-label={describeFizz(fizz, kitchen, isTyped)}>
      {fizz.standing.map((standing, at) => (
        <Row
          key={standing.longer}
          standing={standing}
          pressure={picture.pressures[at]}
          line={picture.line}
          kitchen={kitchen}
        />
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
        <span class="fizz-key">
          <span class="fizz-limit-mark" /> {nameLine(fizz, kitchen)}
        </span>
      </p>
    </div>
  );
}

interface RowProps {
  readonly standing: Standing;
  readonly pressure: DrawnPressure | undefined;
  readonly line: number;
  readonly kitchen: Kitchen;
}

function Row({ standing, pressure, line, kitchen }: RowProps) {
  return (
    <>
      <p>
        {writeStanding(standing, kitchen)}: likely <b>{writePressure(standing.likely.pressure, kitchen)}</b>, from{' '}
        {writeRange(standing, kitchen)}
      </p>
      <div class="fizz-track">
        <span class="fizz-bar reach" style={{ width: `${pressure?.reach ?? 0}%` }} />
        <span class="fizz-bar likely" style={{ width: `${pressure?.width ?? 0}%` }} />
        <span class="fizz-limit" style={{ left: `${line}%` }} />
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
