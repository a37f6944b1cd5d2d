import { expect, test } from 'vitest';
import { findDataFault } from '../../../src/batch/document/data-fault';

test('finds nothing in plain data', () => {
  expect(findDataFault({ version: 1, batches: [{ id: 'b1', heat: null }] })).toBeNull();
  expect(findDataFault('text')).toBeNull();
  expect(findDataFault(undefined)).toBeNull();
});

test.each(['__proto__', 'constructor', 'prototype'])('finds the key %s, however deep', (key) => {
  const data: unknown = JSON.parse(`{"a":[{"b":{"${key}":1}}]}`);
  expect(findDataFault(data)).toEqual({ code: 'prototypeKey', at: `a.0.b.${key}` });
});

test('a text that reads like such a key is no fault', () => {
  expect(findDataFault({ name: '__proto__' })).toBeNull();
});

test('finds data nested a hundred thousand deep without running out of room', () => {
  let nested: unknown = 1;
  for (let depth = 0; depth < 100_000; depth += 1) nested = [nested];
  expect(findDataFault(nested)).toMatchObject({ code: 'tooDeep' });
});

test('comes to an end with data that holds itself', () => {
  const ring: { self?: unknown } = {};
  ring.self = ring;
  expect(findDataFault(ring)).toBeNull();
});

test('finds data of more values than a sheet holds, in one list or in many', () => {
  expect(findDataFault(new Array(1_700_000).fill(1))).toEqual({ code: 'tooMuch' });
  expect(findDataFault(Array.from({ length: 1700 }, () => new Array(1000).fill(1)))).toEqual({ code: 'tooMuch' });
  expect(findDataFault(Array.from({ length: 1400 }, () => new Array(1000).fill(1)))).toBeNull();
});
