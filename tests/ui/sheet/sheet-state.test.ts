import { describe, expect, test } from 'vitest';
import { createSheetState } from '../../../src/ui/sheet/sheet-state';

const first = { line: 'sourceMass', batch: 'b1' } as const;
const second = { line: 'milkVolume', batch: 'b2' } as const;
const third = { line: 'servings', batch: 'b3' } as const;

test('at first one cell is selected, and nowhere has been gone to', () => {
  const state = createSheetState(first);
  expect([state.spot.value, state.anchor.value]).toEqual([first, first]);
  expect([state.visited.value, state.wantsFocus.value, state.editing.value]).toEqual([false, false, null]);
});

describe('the spot', () => {
  test('gone to by key asks for the focus', () => {
    const state = createSheetState(first);
    state.goTo(second);
    expect([state.spot.value, state.anchor.value, state.wantsFocus.value]).toEqual([second, second, true]);
    expect(state.visited.value).toBe(true);
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

test('folding twice is as it was, and each section by itself', () => {
  const state = createSheetState(first);
  state.fold('milk');
  state.fold('jar');
  expect([...state.folded.value]).toEqual(['milk', 'jar']);
  state.fold('milk');
  expect([...state.folded.value]).toEqual(['jar']);
  state.fold('jar');
  expect(state.folded.value.size).toBe(0);
});
