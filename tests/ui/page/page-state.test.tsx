// @vitest-environment happy-dom
import { beforeEach, expect, test } from 'vitest';
import { createPageState } from '../../../src/ui/page/page-state';

beforeEach(() => localStorage.clear());

test('opens with the parts that were looked at last', () => {
  createPageState(localStorage).openOn('second', 'plan');
  createPageState(localStorage).open('fizz');
  const { parts } = createPageState(localStorage);
  expect([parts.first.value, parts.second.value]).toEqual(['fizz', 'plan']);
});

test('never shows the same part twice: the two change places', () => {
  const { parts, openOn } = createPageState(null);
  openOn('first', 'plan');
  openOn('second', 'fizz');
  openOn('second', 'plan');
  expect([parts.first.value, parts.second.value]).toEqual(['fizz', 'plan']);
  openOn('first', 'plan');
  expect([parts.first.value, parts.second.value]).toEqual(['plan', 'fizz']);
});

test('does not open what was kept of both sides alike', () => {
  localStorage.setItem('jarwright.part', 'plan');
  localStorage.setItem('jarwright.second-part', 'plan');
  const { parts } = createPageState(localStorage);
  expect(parts.first.value).toBe('plan');
  expect(parts.second.value).not.toBe('plan');
});

test('goes to a part where it is open already, if there is room for two, and else to the first place', () => {
  const { parts, hasRoom, open, openOn } = createPageState(null);
  openOn('second', 'plan');
  hasRoom.value = true;
  open('plan');
  expect(parts.second.value).toBe('plan');
  hasRoom.value = false;
  open('plan');
  expect(parts.first.value).toBe('plan');
});
