// Hexose to ethanol and carbon dioxide by molar masses, g per g. A review passage (seen without its heading, believed
// Bai, Anderson and Moo-Young, Biotechnol. Adv. 26 (2008) 89) prints 0.511 and 0.489; further digits from the standard
// atomic weights. Homolactic 1.000, heterolactic 0.5000, 0.2557 and 0.2443: a food-microbiology textbook (equimolar),
// digits computed. ABV at 20 °C: OIV-MA-AS312-01 gives the definition; the density of ethanol is from memory.
import { expect, test } from 'vitest';
import { productsOf } from '../../src/formula/fizz/sugar-fate';
import { gasFromSugar } from '../../src/formula/models/fizz';
import { molarMasses, physics } from '../../src/reference/physics';

test('a gram of hexose through yeast gives 0.5114 g of ethanol and 0.4886 g of carbon dioxide', () => {
  const { ethanol, carbonDioxide, lacticAcid } = productsOf(1, 1);
  expect(ethanol).toBeCloseTo(0.51143, 5);
  expect(carbonDioxide).toBeCloseTo(0.48857, 5);
  expect(lacticAcid).toBe(0);
  expect(Math.abs(ethanol - 0.511)).toBeLessThan(0.0005);
  expect(Math.abs(carbonDioxide - 0.489)).toBeLessThan(0.0005);
});

test('through bacteria that make acid only it gives a gram of lactic acid', () => {
  const { ethanol, carbonDioxide, lacticAcid } = productsOf(1, 0);
  expect([ethanol, carbonDioxide]).toEqual([0, 0]);
  expect(lacticAcid).toBeCloseTo(1, 4);
});

test('through bacteria that make acid, ethanol and gas in equal moles it gives 0.5000, 0.2557 and 0.2443 g', () => {
  const { ethanol, carbonDioxide, lacticAcid } = productsOf(1, 0.5);
  expect(lacticAcid).toBeCloseTo(0.5, 4);
  expect(ethanol).toBeCloseTo(0.2557, 4);
  expect(carbonDioxide).toBeCloseTo(0.2443, 4);
});

test('the gas of a bottle is the same gas: 0.4886 g of a gram, to the rounding of the molar masses', () => {
  expect((gasFromSugar(1) * molarMasses.carbonDioxide.value) / 1000).toBeCloseTo(productsOf(1, 1).carbonDioxide, 4);
  expect((gasFromSugar(1) * molarMasses.carbonDioxide.value) / 1000).toBeCloseTo(0.4886, 4);
});

test('0.5 % by volume is 3.946 g/L of ethanol, from 7.716 g/L of hexose', () => {
  const perLitre = (0.5 / 100) * physics.ethanolDensity.value * 1000;
  expect(perLitre).toBeCloseTo(3.946, 3);
  expect(perLitre / productsOf(1, 1).ethanol).toBeCloseTo(7.716, 3);
});
