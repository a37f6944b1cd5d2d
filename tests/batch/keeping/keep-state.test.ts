import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { typeCell } from '../../../src/batch/edits/edits';
import {
  afterEvent,
  type KeepEffect,
  type KeepEvent,
  type KeepState,
  messageOf,
  notLookedAt,
  whatNewest,
} from '../../../src/batch/keeping/keep-state';
import { keepWords } from '../../../src/batch/keeping/keep-words';

const one = typeCell(demo, 'b1', 'sourceMass', '100 g');
const other = typeCell(demo, 'b1', 'sourceMass', '200 g');
const editing: KeepState = { ...notLookedAt, reading: '', isLookedAt: true };

/** What comes of events, one after the other, and all that is to be done on the way. */
function follow(events: readonly KeepEvent[], from: KeepState = editing) {
  const effects: KeepEffect[] = [];
  const state = events.reduce((before, event) => {
    const step = afterEvent(before, event);
    effects.push(...step.effects);
    return step.state;
  }, from);
  return { state, effects };
}

describe('a document from elsewhere', () => {
  test('is shown, and begins a line of its own, so that an edit to the one before is not saved over it', () => {
    const { state, effects } = follow([{ is: 'wentOn', head: 7, document: one }]);
    expect(state).toEqual({ ...editing, base: 7, line: 1, shown: one });
    expect(effects).toEqual([{ do: 'show', document: one }]);
  });

  test('that could not be read is not shown, and the next save builds on its revision all the same', () => {
    const { state, effects } = follow([{ is: 'wentOn', head: 7, document: null }]);
    expect([state, effects]).toEqual([{ ...editing, base: 7 }, []]);
  });

  test('left by an earlier page is shown, and nothing is kept of it yet', () => {
    const { state, effects } = follow([{ is: 'came', document: one }]);
    expect([state.base, state.line, state.shown]).toEqual([0, 1, one]);
    expect(effects).toEqual([{ do: 'show', document: one }]);
  });
});

describe('a save', () => {
  test('is what the next one builds on; the other windows are told, and the first asks to stay', () => {
    const { state, effects } = follow([
      { is: 'notSaved', document: one },
      { is: 'saved', revision: 1, document: one },
      { is: 'saved', revision: 2, document: other },
    ]);
    expect(state).toEqual({ ...editing, base: 2, shown: other });
    expect(effects).toEqual([
      { do: 'tellSaved', isFirst: true },
      { do: 'tellSaved', isFirst: false },
    ]);
  });

  test('that failed leaves the document to wait, until it is saved or safe aside', () => {
    const failed = follow([
      { is: 'notSaved', document: one },
      { is: 'troubled', why: 'No room.' },
    ]).state;
    expect([failed.unsaved, messageOf(failed)]).toEqual([one, 'No room.']);
    const { state, effects } = follow([{ is: 'putAside', tell: 'It is aside.' }, { is: 'gaveUp' }], failed);
    expect([state.unsaved, messageOf(state)]).toEqual([null, 'It is aside.']);
    expect(effects).toEqual([{ do: 'stopTrying' }]);
  });

  test('that another window was sooner than ends the editing here', () => {
    expect(follow([{ is: 'overtaken' }]).state.reading).toBe('overtaken');
  });
});

describe('a window', () => {
  test('does not edit before it has looked, nor what a newer version has saved, nor what can’t be mended', () => {
    expect(notLookedAt.reading).not.toBe('');
    expect(follow([{ is: 'opened' }], notLookedAt).state.reading).toBe('');
    expect(follow([{ is: 'tooNew', tell: 'Newer.' }], notLookedAt).state.reading).toBe('newer');
    const stuck = follow([{ is: 'mended', revision: null, tell: 'No room to mend.' }], notLookedAt).state;
    expect([stuck.reading, messageOf(stuck)]).toEqual(['stuck', 'No room to mend.']);
  });

  test('edits what was mended, on top of it', () => {
    const { state } = follow([{ is: 'mended', revision: 4, tell: 'Mended.' }, { is: 'opened' }], notLookedAt);
    expect([state.reading, state.base, messageOf(state)]).toEqual(['', 4, 'Mended.']);
  });

  test('that keeps nothing may edit all the same, and says why nothing is kept', () => {
    const { state } = follow([{ is: 'blocked', why: keepWords.blocked }], notLookedAt);
    expect([state.reading, messageOf(state)]).toEqual(['', keepWords.blocked]);
  });

  test('that lets go is as it was where it could not save', () => {
    const lost = follow([{ is: 'lost', to: 'elsewhere' }]).state;
    expect(messageOf(lost)).toBe(keepWords.elsewhere);
    expect(follow([{ is: 'turned', reading: '' }], lost).state).toEqual(editing);
  });

  test.each(['newer', 'overtaken', 'stuck', 'reload'] as const)(
    'that reads as it is %s does so for that reason',
    (reading) => {
      const { state } = follow([{ is: 'lost', to: 'elsewhere' }, { is: 'overtaken' }], { ...editing, reading });
      expect(state.reading).toBe(reading);
    },
  );

  test('says what else there is to say before that another edits', () => {
    const { state } = follow([
      { is: 'told', tell: 'It is aside.' },
      { is: 'lost', to: 'elsewhere' },
    ]);
    expect(messageOf(state)).toBe(`It is aside. ${keepWords.elsewhere}`);
    expect(messageOf({ ...state, trouble: 'No room.' })).toBe('No room.');
    expect(messageOf({ ...state, reading: 'reload', trouble: 'No room.' })).toBe(keepWords.reload);
  });
});

test('what is kept is gone on from where it is another’s, and gone where this window edits and there is none', () => {
  const at = (head: number, base: number, reading: KeepState['reading']) =>
    whatNewest(head, { ...editing, base, reading });
  expect([at(3, 3, ''), at(0, 0, ''), at(4, 3, ''), at(4, 3, 'elsewhere')]).toEqual(['stay', 'stay', 'go', 'go']);
  expect([at(0, 3, ''), at(0, 3, 'elsewhere')]).toEqual(['gone', 'go']);
  const { state } = follow([{ is: 'gone' }], { ...editing, base: 3 });
  expect([state.base, messageOf(state)]).toEqual([0, keepWords.gone]);
});

test('whatever happens, no state is changed in place, a document that waits goes only where it is safe, and lines only grow', () => {
  const document = fc.constantFrom(demo, one, other);
  const why = fc.constantFrom('No room.', null);
  const anyEvent: fc.Arbitrary<KeepEvent> = fc.oneof(
    fc.constantFrom<KeepEvent>(
      { is: 'lookedAt' },
      { is: 'opened' },
      { is: 'overtaken' },
      { is: 'gaveUp' },
      { is: 'gone' },
    ),
    document.map((came): KeepEvent => ({ is: 'came', document: came })),
    fc
      .tuple(fc.nat(9), fc.option(document))
      .map(([head, found]): KeepEvent => ({ is: 'wentOn', head, document: found })),
    fc.tuple(fc.nat(9), document).map(([revision, kept]): KeepEvent => ({ is: 'saved', revision, document: kept })),
    document.map((waits): KeepEvent => ({ is: 'notSaved', document: waits })),
    why.map((told): KeepEvent => ({ is: 'troubled', why: told })),
    fc.constant<KeepEvent>({ is: 'putAside', tell: 'Aside.' }),
    fc.constantFrom<KeepEvent>({ is: 'lost', to: 'elsewhere' }, { is: 'lost', to: 'reload' }),
  );
  fc.assert(
    fc.property(fc.array(anyEvent, { maxLength: 20 }), (events) => {
      events.reduce((state, event) => {
        const next = afterEvent(Object.freeze(state), event).state;
        const isSafe = event.is === 'saved' || event.is === 'putAside' || event.is === 'notSaved';
        if (!isSafe) expect(next.unsaved).toBe(state.unsaved);
        const isShownAnew = event.is === 'came' || (event.is === 'wentOn' && event.document !== null);
        expect(next.line).toBe(isShownAnew ? state.line + 1 : state.line);
        return next;
      }, editing);
    }),
  );
});
