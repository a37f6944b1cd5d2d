import { demo } from '../document/demo';
import type { SheetDocument } from '../document/document';
import { keepWords } from './keep-words';

/** How the sheet that is open here stands to what is kept. */
export interface KeepState {
  /** Why this window only reads; empty where it edits. */
  readonly reading: '' | 'elsewhere' | 'newer' | 'overtaken' | 'reload' | 'stuck';
  /** Why what is shown is not safe; null where it is. */
  readonly trouble: string | null;
  /** What else the cook has to be told. */
  readonly notice: string | null;
  /** The revision that the next save builds on; 0 where nothing is kept. */
  readonly base: number;
  /** Counts the documents taken from elsewhere: an edit made to one shown before must not be saved over it. */
  readonly line: number;
  readonly shown: SheetDocument;
  /** What could be saved nowhere yet. */
  readonly unsaved: SheetDocument | null;
  /** Whether what is kept has been looked at. */
  readonly isLookedAt: boolean;
}

export type KeepEvent =
  /** What is kept has been looked at. */
  | { readonly is: 'lookedAt' }
  /** A document came from elsewhere, to be shown in place of the one that is. */
  | { readonly is: 'came'; readonly document: SheetDocument }
  /** This window goes on from a revision, and from its document where that could be read. */
  | { readonly is: 'wentOn'; readonly head: number; readonly document: SheetDocument | null }
  | { readonly is: 'mended'; readonly revision: number | null; readonly tell: string | null }
  /** What is kept is a newer version’s. */
  | { readonly is: 'tooNew'; readonly tell: string }
  /** All is ready to be edited here. */
  | { readonly is: 'opened' }
  /** Nothing could be read or kept. */
  | { readonly is: 'blocked'; readonly why: string }
  | { readonly is: 'saved'; readonly revision: number; readonly document: SheetDocument }
  | { readonly is: 'notSaved'; readonly document: SheetDocument }
  /** Another window has saved what this one did not build on. */
  | { readonly is: 'overtaken' }
  | { readonly is: 'putAside'; readonly tell: string }
  /** What waited to be saved is safe aside. */
  | { readonly is: 'gaveUp' }
  /** What is kept was deleted under the page. */
  | { readonly is: 'gone' }
  /** Why something failed; null once it has not. */
  | { readonly is: 'troubled'; readonly why: string | null }
  | { readonly is: 'told'; readonly tell: string | null }
  /** Another window edits from now on, or this one makes way for a newer page. */
  | { readonly is: 'lost'; readonly to: 'elsewhere' | 'reload' }
  /** What this window may do, whatever it might before. */
  | { readonly is: 'turned'; readonly reading: KeepState['reading'] };

export type KeepEffect =
  | { readonly do: 'show'; readonly document: SheetDocument }
  /** Nothing waits to be saved any more. */
  | { readonly do: 'stopTrying' }
  /** Other windows are told, and at the first save the browser is asked to keep what is here. */
  | { readonly do: 'tellSaved'; readonly isFirst: boolean };

export interface Step {
  readonly state: KeepState;
  readonly effects: readonly KeepEffect[];
}

/** Before anything is looked at: the demo, which may not be edited yet. */
export const notLookedAt: KeepState = {
  reading: 'elsewhere',
  trouble: null,
  notice: null,
  base: 0,
  line: 0,
  shown: demo,
  unsaved: null,
  isLookedAt: false,
};

/** What becomes of a state by an event, and what is to be done about it. */
export function afterEvent(state: KeepState, event: KeepEvent): Step {
  const to = (changes: Partial<KeepState>, ...effects: readonly KeepEffect[]): Step => ({
    state: { ...state, ...changes },
    effects,
  });
  switch (event.is) {
    case 'lookedAt':
      return to({ isLookedAt: true });
    case 'came':
      return to({ line: state.line + 1, shown: event.document }, { do: 'show', document: event.document });
    case 'wentOn': {
      const { head, document } = event;
      if (document === null) return to({ base: head });
      return to({ base: head, line: state.line + 1, shown: document }, { do: 'show', document });
    }
    case 'mended':
      if (event.revision === null) return to({ notice: event.tell, reading: 'stuck' });
      return to({ notice: event.tell, base: event.revision });
    case 'tooNew':
      return to({ notice: event.tell, reading: 'newer' });
    case 'opened':
      return to({ reading: '' });
    case 'blocked':
      return to({ trouble: event.why, reading: '' });
    case 'saved': {
      const { revision, document } = event;
      const isFirst = state.base === 0;
      return to({ base: revision, shown: document, unsaved: null }, { do: 'tellSaved', isFirst });
    }
    case 'notSaved':
      return to({ unsaved: event.document });
    case 'overtaken':
      return to({ reading: state.reading === '' ? 'overtaken' : state.reading });
    case 'putAside':
      return to({ unsaved: null, notice: event.tell });
    case 'gaveUp':
      return to({ trouble: null }, { do: 'stopTrying' });
    case 'gone':
      return to({ base: 0, trouble: keepWords.gone });
    case 'troubled':
      return to({ trouble: event.why });
    case 'told':
      return to({ notice: event.tell });
    case 'lost':
      return to({ reading: state.reading === '' ? event.to : state.reading });
    case 'turned':
      return to({ reading: event.reading });
  }
}

/** What the cook has to be told, in plain words; null where all is well. */
export function messageOf({ reading, trouble, notice }: KeepState): string | null {
  if (reading === 'elsewhere') return trouble ?? [notice ?? '', keepWords.elsewhere].join(' ').trim();
  if (reading === 'reload') return keepWords.reload;
  return trouble ?? notice;
}

/**
 * What to do where the newest revision that is kept is `head`: `go` on from it, say that all is `gone`, or `stay`, as it is
 * this window’s own.
 */
export function whatNewest(head: number, { base, reading }: KeepState): 'go' | 'gone' | 'stay' {
  if (head === base) return 'stay';
  return head === 0 && reading === '' ? 'gone' : 'go';
}
