import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { Batch } from '../../batch/document/document';
import { isTimedStep } from '../../batch/keeping/timers';
import type { Store } from '../../batch/store/store';
import type { MeasuredRowId } from '../../formula/recipe/order';
import { figuresOfStep } from '../../formula/steps/step-figures';
import type { Step } from '../../formula/steps/steps';
import type { Grain } from '../../reference/grains';
import type { Source } from '../../reference/sources';
import { MayEdit } from '../page/MayEdit';
import type { Cooking } from './cooking';
import { ItWas, itWasButton, problemOf } from './ItWas';
import { inShort } from './in-short';
import { StepFigures } from './StepFigures';
import { StepTimer } from './StepTimer';

interface Props {
  readonly step: Step;
  readonly batch: string;
  /** The batch itself where something is measured at the step; null elsewhere, as the step says all of it then. */
  readonly measuredIn: Batch | null;
  readonly source: Source;
  readonly grain: Grain;
  readonly store: Store;
  readonly cooking: Cooking;
  readonly isDone: boolean;
}

/**
 * A step: a tick, its sentences with the amounts bold, a line of warning at most, a timer, what was measured, and more.
 * Its own state is in signals, so that a step that says the same is not drawn anew.
 */
export function StepItem({ step, batch, measuredIn, source, grain, store, cooking, isDone }: Props) {
  const isOpen = useSignal(false);
  const asked = useSignal<MeasuredRowId | null>(null);
  const item = useRef<HTMLLIElement>(null);
  const left = useRef<MeasuredRowId | null>(null);
  const { id, title, parts, notes, measured } = step;
  const wrong = measured.find((row) => measuredIn && problemOf({ row, batch: measuredIn, store }) !== null);
  const open = asked.value ?? wrong ?? null;
  // The field goes with the press that keeps it; what asked for it is where the focus goes back to.
  useEffect(() => {
    if (open === null && left.current !== null)
      item.current?.querySelector<HTMLElement>(`[data-asks="${left.current}"]`)?.focus();
    left.current = open;
  }, [open]);
  const { decimalComma } = store.settings.value;
  const warning = notes.find(({ caution }) => caution);
  const said = warning === undefined ? null : inShort(warning.text);
  const others = notes.filter((note) => note !== warning);
  const figures = figuresOfStep(id, source, grain);
  const hasMore = (said !== null && said.rest !== '') || others.length > 0 || figures.length > 0;
  const warns = said !== null && !isDone;
  const more = hasMore && (
    <button
      type="button"
      class="quiet more-of"
      aria-expanded={isOpen.value}
      aria-label={`${isOpen.value ? 'Less' : 'More'} about: ${title}`}
      onClick={() => {
        isOpen.value = !isOpen.value;
      }}
    >
      {isOpen.value ? 'less' : 'more'}
    </button>
  );
  const asks =
    measuredIn === null
      ? []
      : measured.map((row) => ({
          row,
          batch: measuredIn,
          store,
          isAsked: open === row,
          ask: (isAsked: boolean) => {
            asked.value = isAsked ? row : null;
          },
        }));
  const answered = asks.filter(({ row, batch, isAsked }) => isAsked || batch.measured[row] !== undefined);
  return (
    <li class={isDone ? 'step-item done' : 'step-item'} ref={item}>
      <label class="tick">
        <input
          type="checkbox"
          checked={isDone}
          aria-label={`Done: ${title}`}
          onChange={({ currentTarget: { checked } }) => cooking.tick(batch, id, checked)}
        />
      </label>
      <div class="told">
        <h3>{title}.</h3> <p>{parts.map(({ text, isAmount }) => (isAmount ? <b>{text}</b> : text))}</p> {!warns && more}
      </div>
      <div class="under">
        {warns && (
          <p class="note caution">
            {said.short} {more}
          </p>
        )}
        {isOpen.value && (
          <div class="step-more">
            {said !== null && (isDone || said.rest !== '') && (
              <p class="note caution">{isDone ? warning?.text : said.rest}</p>
            )}
            {others.map(({ text, caution }) => (
              <p class={caution ? 'note caution' : 'note'} key={text}>
                {text}
              </p>
            ))}
            <StepFigures figures={figures} decimalComma={decimalComma} />
          </div>
        )}
        {answered.length > 0 && (
          <MayEdit store={store}>
            {answered.map((one) => (
              <ItWas key={one.row} {...one} />
            ))}
          </MayEdit>
        )}
      </div>
      <div class="acts">
        {asks.length > 0 && <MayEdit store={store}>{asks.map(itWasButton)}</MayEdit>}
        {isTimedStep(id) && (
          <StepTimer
            id={id}
            title={title}
            wait={step.wait}
            batch={batch}
            cooking={cooking}
            kitchen={store.settings.value}
          />
        )}
      </div>
    </li>
  );
}
