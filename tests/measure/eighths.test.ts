import { expect, test } from 'vitest';
import { writeEighths } from '../../src/measure/eighths';

test('every eighth is written in lowest terms', () => {
  const written = [0, 1, 2, 3, 4, 5, 6, 7, 8, 12].map(writeEighths);
  expect(written).toEqual(['0', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞', '1', '1\u00A0½']);
});
