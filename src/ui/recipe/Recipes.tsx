import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { Batch } from '../../batch/document';
import type { Store } from '../../batch/store';
import { MayEdit } from '../page/MayEdit';
import type { SheetState } from '../sheet/sheet-state';
import { LookUp } from './LookUp';
import { RecipeOut } from './RecipeOut';
import { RecipePaste } from './RecipePaste';
import { Swap } from './Swap';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
  readonly state: SheetState;
}

const pasteFold = 'paste-a-recipe';

/** Opens the panel that takes a recipe, from wherever on the page, and goes to its box. */
export function openPaste(): void {
  const fold = document.getElementById(pasteFold);
  if (!(fold instanceof HTMLDetailsElement)) return;
  fold.open = true;
  fold.addEventListener('toggle', () => fold.querySelector('textarea')?.focus(), { once: true });
  const box = fold.querySelector('textarea');
  if (box === null) fold.scrollIntoView();
  else box.focus();
}

/** Recipes in and out, swapping, and any food's cup; each drawn once it is opened. */
export function Recipes({ batch, store, state }: Props) {
  return (
    <div class="recipes">
      <Fold name="Paste a recipe" id={pasteFold}>
        <MayEdit store={store}>
          <RecipePaste store={store} state={state} />
        </MayEdit>
      </Fold>
      <Fold name="Swap the sweetener">
        <MayEdit store={store}>
          <Swap batch={batch} store={store} />
        </MayEdit>
      </Fold>
      <Fold name="Write it as a recipe">
        <RecipeOut batch={batch} store={store} />
      </Fold>
      <Fold name="Cups to grams, any food">
        <LookUp store={store} />
      </Fold>
    </div>
  );
}

interface FoldProps {
  readonly name: string;
  readonly id?: string;
  readonly children: ComponentChildren;
}

function Fold({ name, id, children }: FoldProps) {
  const [open, setOpen] = useState(false);
  return (
    <details class="fold-panel" id={id} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{name}</summary>
      {open && children}
    </details>
  );
}
