import { Fragment } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { Store } from '../../batch/store/store';
import { cautionsAt } from '../../formula/advice/cautions';
import { isRow } from '../../formula/engine/evaluate';
import type { ChoiceRowId, NumericRowId, RowId } from '../../formula/recipe/order';
import { isMeasuredRow } from '../../formula/recipe/order';
import { numericRows } from '../../formula/rows/sheet';
import { describeAbsence, labelOf } from '../../formula/words/labels';
import { leadingInShort } from '../../formula/words/leading';
import { writeRow } from '../../formula/words/write-row';
import { inputsOfKitchen, kitchenWorking } from '../../formula/working/kitchen-working';
import { workingIn } from '../../formula/working/working';
import { isRowSpot, type SheetState } from '../sheet/sheet-state';
import './working.css';
import { AboutChoice } from './AboutChoice';
import { CautionList } from './CautionList';
import { Arithmetic, Inputs } from './Inputs';
import { Measuring } from './Measuring';

interface Props {
  readonly store: Store;
  readonly state: SheetState;
}

/** How the selected number came about: in words, as a formula, with the numbers put in and where each is from. */
export default function Working({ store, state }: Props) {
  const { at: line, batch: batchId } = state.working.value ?? state.spot.value;
  const batch = store.document.value.batches.find(({ id }) => id === batchId);
  const close = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    close.current?.scrollIntoView?.({ block: 'nearest' });
  }, [line, batchId]);
  if (batch === undefined || !isRowSpot(line)) return null;
  const shut = () => {
    const spot = state.working.peek();
    state.working.value = null;
    if (spot !== null) state.goTo(spot);
  };
  const formulation = store.formulationOf(batch);
  const cautions = cautionsAt(line, formulation);
  return (
    <section
      class="working"
      aria-label={`Working of ${labelOf(line)}`}
      onKeyDown={(event) => event.key === 'Escape' && shut()}
    >
      <div class="working-head">
        <h3>
          {labelOf(line)}
          {store.document.value.batches.length > 1 && (
            <small>
              {' · '}
              <bdi>{batch.name}</bdi>
            </small>
          )}
        </h3>
        <button type="button" class="button" ref={close} onClick={shut}>
          Close
        </button>
      </div>
      {isRow(line) ? (
        <NumberWorking id={line} store={store} state={state} />
      ) : (
        <AboutChoice id={choiceOf(line)} batch={batch} store={store} />
      )}
      {isRow(line) && isMeasuredRow(line) && (
        <Measuring key={`${batch.id} ${line}`} id={line} batch={batch} store={store} />
      )}
      <CautionList cautions={cautions} />
    </section>
  );
}

function choiceOf(line: RowId): ChoiceRowId {
  return line === 'source' || line === 'sweetener' || line === 'grains' ? line : 'vessel';
}

interface NumberProps extends Props {
  readonly id: NumericRowId;
}

function NumberWorking({ id, store, state }: NumberProps) {
  const batch = store.document.value.batches.find((one) => one.id === (state.working.value ?? state.spot.value).batch);
  if (batch === undefined) return null;
  const formulation = store.formulationOf(batch);
  const { absence } = formulation.rows[id];
  const working = workingIn(formulation.rows[id]);
  const given = batch.given.find(({ row }) => row === id);
  if (absence !== null) {
    return (
      <>
        <p class="in-words">{describeAbsence(absence)}</p>
        <TypeYourOwn id={id} store={store} state={state} />
      </>
    );
  }
  if (working === null) return given === undefined ? null : <GiveBack id={id} store={store} batch={batch.id} />;
  const written = writeRow(formulation, id, store.settings.value);
  const spread = written?.spread ?? null;
  const ounces = written?.spoons != null && written.us !== written.spoons ? written.us : null;
  const cups = kitchenWorking(formulation, id, store.settings.value);
  const finely = cups?.finely ?? null;
  const parts = [
    { title: 'What went in', inputs: working.inputs },
    { title: 'From where to where it lies', inputs: working.ends },
    { title: 'In cups and spoons', inputs: cups === null ? [] : inputsOfKitchen(cups) },
  ];
  return (
    <>
      <p class="in-words">{working.words}</p>
      {ounces !== null && <p>In US measure {ounces}.</p>}
      {finely !== null && <p>By more scoops {finely}: finer than a level one repeats.</p>}
      {spread !== null && <p>May be {spread}.</p>}
      <TypeYourOwn id={id} store={store} state={state} />
      {given !== undefined && (
        <p>
          Typed as <q>{given.text}</q>. <GiveBack id={id} store={store} batch={batch.id} />
        </p>
      )}
      <Arithmetic working={working} store={store} />
      {parts.map(
        ({ title, inputs }) =>
          inputs.length > 0 && (
            <Fragment key={title}>
              <h4>{title}</h4>
              <Inputs
                inputs={inputs}
                formulation={formulation}
                store={store}
                onFollow={(row) => state.goTo({ at: row, batch: batch.id })}
              />
            </Fragment>
          ),
      )}
    </>
  );
}

/** Opens the cell, for those who don’t know that it can be typed into. */
function TypeYourOwn({ id, store, state }: NumberProps) {
  const { batch: batchId } = state.working.value ?? state.spot.value;
  const batch = store.document.value.batches.find((one) => one.id === batchId);
  const { typed } = numericRows[id];
  if (batch === undefined || typed === 'never' || typed === 'measured') return null;
  const kitchen = store.settings.value;
  const open = () => {
    const written = writeRow(store.formulationOf(batch), id, kitchen);
    const text = batch.given.find(({ row }) => row === id)?.text;
    state.editing.value = {
      row: id,
      batch: batchId,
      text: text ?? (written === null ? '' : leadingInShort(written, kitchen.leads).first),
      touched: false,
    };
  };
  return (
    <button type="button" class="button type-own" onClick={open}>
      Type your own
    </button>
  );
}

function GiveBack({ id, store, batch }: { id: NumericRowId; store: Store; batch: string }) {
  return (
    <button type="button" class="follow" onClick={() => store.clearCell(batch, id)}>
      Clear it and have it worked out
    </button>
  );
}
