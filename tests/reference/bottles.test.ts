import { expect, test } from 'vitest';
import { waterDensityAt } from '../../src/formula/models/density';
import { bottles } from '../../src/reference/bottles';

// A bottle filled at 4 °C to 97 % and warmed to 30 °C: what its liquid swells by, the air above it is squeezed by.
function leftOut(swelling: number): number {
  const swollen = 0.97 * swelling;
  const air = (101325 * (0.03 / (1 - swollen)) * 303.15) / 277.15 - 101325;
  const vapour = 4246 - 813;
  return (air + vapour) / 100000;
}

test('what the pressures leave out is no less than that of water, nor than that of a milk a fifth of which is fat', () => {
  const water = waterDensityAt(4) / waterDensityAt(30);
  expect(leftOut(water)).toBeCloseTo(0.31, 2);
  // Choi & Okos 1986: fat weighs 925.59 − 0.41757 T kg/m³.
  const fat = (925.59 - 0.41757 * 4) / (925.59 - 0.41757 * 30);
  const byVolume = 0.2 / 923.92 / (0.2 / 923.92 + 0.8 / 1000);
  expect(leftOut(byVolume * fat + (1 - byVolume) * water)).toBeLessThanOrEqual(bottles.pressureLeftOut.value);
  expect(leftOut(byVolume * fat + (1 - byVolume) * water)).toBeGreaterThan(bottles.pressureLeftOut.value - 0.02);
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
