import { describe, expect, it } from 'vitest';
import { kitchen } from '../../src/reference/kitchen';
import { kitchenLines } from '../../src/reference/kitchen-lines';
import { molarMasses } from '../../src/reference/physics';
import { sweeteners } from '../../src/reference/sweeteners';

describe('kitchen', () => {
  it('adds 25 g/L of granulated sugar, counted as hexose', () => {
    const hexose = (2 * molarMasses.hexose.value) / molarMasses.disaccharide.value;
    const sucrose = (sweeteners.caneWhite.sugars.sucrose ?? Number.NaN) / 100;
    expect(25 * sucrose * hexose).toBeCloseTo(kitchen.addedSugar.value, 2);
  });

  it('keeps its limits where they were published', () => {
    expect(kitchen.acidityLine).toMatchObject({ value: 4.6, origin: { work: 'cfr-21-114' } });
    expect(kitchenLines.warmSoakLimit).toMatchObject({ value: 8, origin: { work: 'almond-soak-2020' } });
    expect(kitchenLines.coldSoakTemperature).toMatchObject({ value: 15, origin: { work: 'almond-soak-2020' } });
  });

  it('keeps the refrigerator within the code', () => {
    expect(kitchenLines.refrigerator.value).toBeLessThanOrEqual(5);
  });
});
