import { describe, expect, test } from 'vitest';
import { createSheetState } from '../../../src/ui/sheet/sheet-state';

const first = { at: 'sourceMass', batch: 'b1' } as const;
const second = { at: 'milkVolume', batch: 'b2' } as const;
const third = { at: 'servings', batch: 'b3' } as const;

test('at first one cell is selected, and no working is open', () => {
  const state = createSheetState(first);
  expect([state.spot.value, state.anchor.value]).toEqual([first, first]);
  expect([state.working.value, state.wantsFocus.value, state.editing.value]).toEqual([null, false, null]);
});

describe('the spot', () => {
  test('gone to by key asks for the focus', () => {
    const state = createSheetState(first);
    state.goTo(second);
    expect([state.spot.value, state.anchor.value, state.wantsFocus.value]).toEqual([second, second, true]);
  });

  test('pointed to does not', () => {
    const state = createSheetState(first);
    state.select(second);
    expect([state.spot.value, state.anchor.value, state.wantsFocus.value]).toEqual([second, second, false]);
  });
});

describe('a range', () => {
  test('keeps its other corner while it is extended', () => {
    const state = createSheetState(first);
    state.extendTo(second, true);
    state.extendTo(third, true);
    expect([state.spot.value, state.anchor.value, state.wantsFocus.value]).toEqual([third, first, true]);
  });

  test('extended by pointer leaves the focus', () => {
    const state = createSheetState(first);
    state.extendTo(second, false);
    expect([state.anchor.value, state.wantsFocus.value]).toEqual([first, false]);
  });

  test('stays when the spot is selected again, as focus coming to it does', () => {
    const state = createSheetState(first);
    state.extendTo(second, true);
    state.select(second);
    expect(state.anchor.value).toEqual(first);
  });

  test.each(['goTo', 'select'] as const)('is given up by %s', (how) => {
    const state = createSheetState(first);
    state.extendTo(second, true);
    state[how](third);
    expect([state.spot.value, state.anchor.value]).toEqual([third, third]);
  });

  test('extended back to where it began is one cell', () => {
    const state = createSheetState(first);
    state.extendTo(second, true);
    state.extendTo(first, true);
    expect([state.spot.value, state.anchor.value]).toEqual([first, first]);
  });
});

test('unfolding twice is as it was, and each line by itself', () => {
  const state = createSheetState(first);
  state.unfold('milk');
  state.unfold('jar');
  expect([...state.unfolded.value]).toEqual(['milk', 'jar']);
  state.unfold('milk');
  expect([...state.unfolded.value]).toEqual(['jar']);
  state.unfold('jar', false);
  expect(state.unfolded.value.size).toBe(0);
});

test('going to a folded detail unfolds its line', () => {
  const state = createSheetState(first);
  state.goTo({ at: 'pulpMass', batch: 'b1' });
  expect([...state.unfolded.value]).toEqual(['milk']);
  state.goTo({ at: 'vessel', batch: 'b1' });
  expect([...state.unfolded.value]).toEqual(['milk']);
});

test('the working follows the spot for as long as it is open', () => {
  const state = createSheetState(first);
  state.select(second);
  expect(state.working.value).toBeNull();
  state.working.value = second;
  state.goTo(third);
  expect(state.working.value).toEqual(third);
});

test('a batch that was made is gone to at its head, with a sentence of it', () => {
  const state = createSheetState(first);
  state.landOn('b4', 'A new batch.');
  expect(state.spot.value).toEqual({ at: 'vessel', batch: 'b4' });
  expect([state.notice.value, state.wantsFocus.value]).toEqual(['A new batch.', true]);
});
