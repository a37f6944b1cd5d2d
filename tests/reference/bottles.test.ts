import { expect, test } from 'vitest';
import { waterDensityAt } from '../../src/formula/models/fizz';
import { bottles } from '../../src/reference/bottles';

test('what the pressures leave out is that of a bottle filled cold to 97 % and warmed to 30 °C', () => {
  const swollen = (0.97 * waterDensityAt(4)) / waterDensityAt(30);
  const air = (101325 * (0.03 / (1 - swollen)) * 303.15) / 277.15 - 101325;
  const vapour = 4246 - 813;
  expect((air + vapour) / 100000).toBeCloseTo(bottles.pressureLeftOut.value, 1);
});

test('more than half of a bottle is never proposed to be left empty', () => {
  expect(bottles.mostHeadspace.value).toBe(0.5);
});

test('a real gas is 6 % more at 10 bar than an ideal one, by its virial coefficient and its room in water', () => {
  const joules = 8.314462618 * 298.15;
  const more = Math.exp(((123e-6 + 34e-6) * 1e6) / joules) - 1;
  // Of the gas at most a tenth is over the liquid, where 5 % more of it finds room.
  expect(bottles.realGas.value).toBeLessThan(more / 10);
  expect(bottles.realGas.value).toBeGreaterThan((0.9 * more - 0.1 * 0.05) / 10);
});
