import { describe, expect, test } from 'vitest';
import { decimal, toDouble } from '../../src/measure/decimal';

describe('decimal', () => {
  test('adds tenths exactly', () => {
    expect(decimal('0.1').plus('0.2').toFixed()).toBe('0.3');
  });

  test('keeps 30 decimals of a third and rounds the last half up', () => {
    expect(decimal(1).div(3).toFixed()).toBe(`0.${'3'.repeat(30)}`);
    expect(decimal(2).div(3).toFixed()).toBe(`0.${'6'.repeat(29)}7`);
  });

  test('has no negative zero', () => {
    expect(Object.is(toDouble(decimal(-0)), 0)).toBe(true);
    expect(Object.is(toDouble(decimal('-0.0')), 0)).toBe(true);
  });

  test('throws on what is no number, which is a fault of the caller', () => {
    expect(() => decimal('a cup')).toThrow();
    expect(() => decimal(Number.NaN)).toThrow();
  });
});
