import { useEffect, useRef, useState } from 'preact/hooks';
import type { Batch } from '../../batch/document';
import type { Store } from '../../batch/store';
import type { MeasuredRowId } from '../../formula/order';
import { figuresOfStep } from '../../formula/step-figures';
import type { Step } from '../../formula/steps';
import { MayEdit } from '../page/MayEdit';
import type { Cooking } from './cooking';
import { ItWas, ItWasButton, problemOf } from './ItWas';
import { inShort } from './in-short';
import { StepFigures } from './StepFigures';
import { StepTimer } from './StepTimer';

interface Props {
  readonly step: Step;
  readonly batch: Batch;
  readonly store: Store;
  readonly cooking: Cooking;
  readonly isDone: boolean;
}

/** A step: a tick, its sentences with the amounts bold, a line of warning at most, a timer, what was measured, and more. */
export function StepItem({ step, batch, store, cooking, isDone }: Props) {
  const [isOpen, setOpen] = useState(false);
  const [asked, setAsked] = useState<MeasuredRowId | null>(null);
  const item = useRef<HTMLLIElement>(null);
  const left = useRef<MeasuredRowId | null>(null);
  const { id, title, parts, notes, measured } = step;
  const open = asked ?? measured.find((row) => problemOf({ row, batch, store }) !== null) ?? null;
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
  const figures = figuresOfStep(id, store.formulationOf(batch).choices.source);
  const hasMore = (said !== null && said.rest !== '') || others.length > 0 || figures.length > 0;
  const warns = said !== null && !isDone;
  const more = hasMore && (
    <button
      type="button"
      class="quiet more-of"
      aria-expanded={isOpen}
      aria-label={`${isOpen ? 'Less' : 'More'} about: ${title}`}
      onClick={() => setOpen(!isOpen)}
    >
      {isOpen ? 'less' : 'more'}
    </button>
  );
  const asks = measured.map((row) => ({
    ...{ row, batch, store, isAsked: open === row },
    ask: (isAsked: boolean) => setAsked(isAsked ? row : null),
  }));
  return (
    <li class={isDone ? 'step-item done' : 'step-item'} ref={item}>
      <label class="tick">
        <input
          type="checkbox"
          checked={isDone}
          aria-label={`Done: ${title}`}
          onChange={({ currentTarget: { checked } }) => cooking.tick(batch.id, id, checked)}
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
        {isOpen && (
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
        <MayEdit store={store}>
          {asks.map((one) => (
            <ItWas key={one.row} {...one} />
          ))}
        </MayEdit>
      </div>
      <div class="acts">
        <MayEdit store={store}>
          {asks.map((one) => (
            <ItWasButton key={one.row} {...one} />
          ))}
        </MayEdit>
        <StepTimer step={step} batch={batch.id} cooking={cooking} kitchen={store.settings.value} />
      </div>
    </li>
  );
}
