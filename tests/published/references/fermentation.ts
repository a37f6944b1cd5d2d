import { formulate } from '../../../src/formula/engine/formulate';
import { fateOfFirst, productsOf } from '../../../src/formula/fizz/sugar-fate';
import { kitchen } from '../../../src/reference/kitchen';
import { kitchenLines } from '../../../src/reference/kitchen-lines';
import { molarMasses } from '../../../src/reference/physics';
import { recipeOf, typed } from '../../batches';
import { kept, type Reference, type Row } from '../outside';

export const ethanolYield: Reference = {
  citation: 'Bai, Anderson and Moo-Young, Biotechnol. Adv. 26 (2008) 89, believed: g of each per g of hexose by yeast.',
  seen: 'the passage, without its heading',
  kind: 'result',
  tolerance: 'Half of the last digit printed.',
  rows: [
    { what: 'ethanol', printed: 0.511, ours: productsOf(1, 1).ethanol, within: 0.0005 },
    { what: 'carbon dioxide', printed: 0.489, ours: productsOf(1, 1).carbonDioxide, within: 0.0005 },
  ],
};

const half = productsOf(1, 0.5);
const moles = {
  lacticAcid: half.lacticAcid / molarMasses.lacticAcid.value,
  ethanol: half.ethanol / molarMasses.ethanol.value,
  carbonDioxide: half.carbonDioxide / molarMasses.carbonDioxide.value,
};

export const lacticFermentation: Reference = {
  citation: 'A food-microbiology textbook, p. 315, believed Adams and Moss: homo- and heterolactic fermentation.',
  seen: 'the page; its title does not stand on it',
  kind: 'result',
  tolerance: 'Equal moles, to the rounding of the molar masses.',
  rows: [
    { what: 'g lactic acid of a g, homolactic', printed: 1, ours: productsOf(1, 0).lacticAcid, within: 1e-4 },
    { what: 'ethanol per lactic acid, mol', printed: 1, ours: moles.ethanol / moles.lacticAcid, within: 1e-4 },
    { what: 'gas per lactic acid, mol', printed: 1, ours: moles.carbonDioxide / moles.lacticAcid, within: 1e-4 },
  ],
};

export const acidFoods: Reference = {
  citation: '21 CFR 114.3, acidified foods, definitions.',
  seen: 'the full text, in two copies',
  kind: 'carried over',
  tolerance: 'As printed.',
  rows: [kept('pH', 4.6, kitchen.acidityLine.value)],
};

export const soakingLimits: Reference = {
  citation: 'J. Food Prot. 83 (2020) 2122–2133: no growth in soaked almonds at 15 °C; at most 8 h at 18 °C and above.',
  seen: 'abstract and the authors’ summary',
  kind: 'carried over',
  tolerance: 'As printed.',
  rows: [kept('°C', 15, kitchenLines.coldSoakTemperature.value), kept('h', 8, kitchenLines.warmSoakLimit.value)],
};

const coconut = fateOfFirst(
  formulate(recipeOf({ source: 'coconutMilk', grains: 'milk', given: [typed('roomTemperature', 25)] })),
);

/** Acid that was measured must lie in the range that the page gives. */
function acidWithin(what: string, printed: number): Row {
  const { low, high } = coconut?.lacticAcid ?? { low: Number.NaN, high: Number.NaN };
  return { what, printed, ours: (low + high) / 2, within: (high - low) / 2 };
}

export const coconutKefir: Reference = {
  citation:
    'Taleb Abadl M.M. and others (2022), kefir of coconut milk, Universiti Putra Malaysia: acid after 24 h, g/L as lactic.',
  seen: 'abstract only',
  kind: 'result',
  tolerance: 'The page gives a range, from 0.2 of the sugar used to 0.5, and little to much of it through yeast.',
  rows: [acidWithin('low in fat', 7.5), acidWithin('high in fat', 6.6)],
};
