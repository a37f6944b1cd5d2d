import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { Batch } from '../batch/document';
import type { Store } from '../batch/store';
import { LookUp } from './LookUp';
import { RecipeOut } from './RecipeOut';
import { RecipePaste } from './RecipePaste';
import { Swap } from './Swap';
import type { SheetState } from './sheet-state';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
  readonly state: SheetState;
}

/** Recipes in and out, swapping, and any food's cup; each drawn once it is opened. */
export function Recipes({ batch, store, state }: Props) {
  return (
    <div class="recipes">
      <Fold name="Paste a recipe">
        <RecipePaste store={store} state={state} />
      </Fold>
      <Fold name="Swap the sweetener">
        <Swap batch={batch} store={store} />
      </Fold>
      <Fold name="As a recipe again">
        <RecipeOut batch={batch} store={store} />
      </Fold>
      <Fold name="Any food’s cup">
        <LookUp store={store} />
      </Fold>
    </div>
  );
}

function Fold({ name, children }: { readonly name: string; readonly children: ComponentChildren }) {
  const [open, setOpen] = useState(false);
  return (
    <details class="fold-panel" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{name}</summary>
      {open && children}
    </details>
  );
}
