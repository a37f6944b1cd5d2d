import { useId, useState } from 'preact/hooks';
import type { Batch } from '../../batch/document';
import type { Store } from '../../batch/store';
import { figuresOfStep } from '../../formula/step-figures';
import type { Step } from '../../formula/steps';
import { MayEdit } from '../page/MayEdit';
import type { Cooking } from './cooking';
import { ItWas } from './ItWas';
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
  const more = useId();
  const { id, title, parts, notes, measured } = step;
  const { decimalComma } = store.settings.value;
  const warning = notes.find(({ caution }) => caution);
  const said = warning === undefined ? null : inShort(warning.text);
  const others = notes.filter((note) => note !== warning);
  const figures = figuresOfStep(id, store.formulationOf(batch).choices.source);
  const hasMore = (said !== null && said.rest !== '') || others.length > 0 || figures.length > 0;
  return (
    <li class={isDone ? 'step done' : 'step'}>
      <label class="tick">
        <input
          type="checkbox"
          checked={isDone}
          aria-label={`Done: ${title}`}
          onChange={({ currentTarget: { checked } }) => cooking.tick(batch.id, id, checked)}
        />
      </label>
      <div class="told">
        <h3>{title}.</h3> <p>{parts.map(({ text, isAmount }) => (isAmount ? <b>{text}</b> : text))}</p>
        {said !== null && !isDone && <p class="note caution">{said.short}</p>}
        {isOpen && (
          <div id={more} class="step-more">
            {said !== null && said.rest !== '' && <p class="note caution">{said.rest}</p>}
            {others.map(({ text, caution }) => (
              <p class={caution ? 'note caution' : 'note'} key={text}>
                {text}
              </p>
            ))}
            <StepFigures figures={figures} decimalComma={decimalComma} />
          </div>
        )}
      </div>
      <div class="acts">
        {hasMore && (
          <button
            type="button"
            class="quiet"
            aria-expanded={isOpen}
            aria-controls={isOpen ? more : undefined}
            aria-label={`${isOpen ? 'Less' : 'More'} about: ${title}`}
            onClick={() => setOpen(!isOpen)}
          >
            {isOpen ? 'less' : 'more'}
          </button>
        )}
        <StepTimer step={step} batch={batch.id} cooking={cooking} kitchen={store.settings.value} />
      </div>
      {measured.length > 0 && (
        <MayEdit store={store}>
          <div class="found">
            {measured.map((row) => (
              <ItWas key={row} row={row} batch={batch} store={store} />
            ))}
          </div>
        </MayEdit>
      )}
    </li>
  );
}
