import { expect, test } from 'vitest';
import { fruits } from '../../src/reference/fruits';
import { printedFruits } from './expected/fruits';

test('the hexose of each fruit is what was worked out beside its sugars when they were read', () => {
  for (const [id, [, , , hexose]] of Object.entries(printedFruits)) {
    const fruit = Object.entries(fruits).find(([key]) => key === id)?.[1] ?? expect.fail(id);
    const sum = fruit.sucrose * 1.05263 + fruit.glucose + fruit.fructose + fruit.otherHexose;
    expect(Math.abs(sum - hexose), id).toBeLessThan(0.007);
  }
});
