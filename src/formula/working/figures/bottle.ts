import { convertNumber } from '../../../measure/units';
import { bottles } from '../../../reference/bottles';
import { carrollHenry, fermenting } from '../../../reference/fermenting';
import { molarMasses, physics } from '../../../reference/physics';
import { henryAt } from '../../models/solubility';
import { type CoefficientId, coefficientInEffect } from '../../recipe/coefficients';
import type { Access, TermId } from '../../rows/row';
import { coefficientNames } from '../../words/coefficient-names';
import { endOf, entry, type Figure, type FigureMaker, ofTable, workedOut } from '../figure';
import { perPower, powersOf } from './powers';
import { describeUnitOrigin } from './unit';
import { plainWater } from './water';

type Warmth = Extract<TermId, 'roomTemperature' | 'bottleTemperature' | 'forgottenHeat'>;

function kelvin(x: Access, warmth: Warmth): Figure {
  return workedOut('T_K', 'That temperature in kelvin', 'K', x.of(warmth) + physics.zeroCelsius.value, {
    words: 'From absolute zero.',
    formula: `{zero} + {${warmth}}`,
    parts: { zero: ofTable('T_0', '0 °C in kelvin', physics.zeroCelsius) },
  });
}

/** How well carbon dioxide dissolves in water, mol per m³ and Pa. */
function solubility(x: Access, warmth: Warmth): Figure {
  const { coefficients, unit, origin } = carrollHenry;
  const terms = coefficients.map((value, at): readonly [string, Figure] => {
    return [
      `a${at}`,
      entry(`a${at}`, `Coefficient ${at} of the solubility`, value, perPower(unit, '·', 'K', at), origin),
    ];
  });
  const powers = powersOf('kelvin', terms.length);
  const sum = terms.map(([name], at) => (at === 0 ? `{${name}}` : `{${name}} ÷ ${powers[at] ?? ''}`)).join(' + ');
  return workedOut('H', 'Solubility of carbon dioxide at that temperature', 'mol/(m³·Pa)', henryAt(x.of(warmth)), {
    words: 'A correlation of mole fractions, turned into moles by the density of water; 1000 000 makes MPa of Pa.',
    formula: `1000 × {water} ÷ ({molar} × 1000000 × e^(${sum}))`,
    parts: {
      ...Object.fromEntries(terms),
      kelvin: kelvin(x, warmth),
      water: plainWater(x.of(warmth), warmth),
      molar: ofTable('M_w', 'Molar mass of water', molarMasses.water),
    },
  });
}

/** The least or the most that an estimate may be, under its own name. */
function endInEffect(x: Access, id: CoefficientId, end: 'low' | 'high'): Figure {
  const { symbol, label } = coefficientNames[id];
  const [sign, which] = end === 'low' ? ['₋', 'at least'] : ['₊', 'at most'];
  return endOf(`${symbol}${sign}`, `${label}, ${which}`, coefficientInEffect(id, x.recipe, x.choices), end);
}

/** What a sealed bottle’s pressure is worked out with. */
export const bottleFigures = {
  solubilityRoom: (x) => solubility(x, 'roomTemperature'),
  solubilityBottle: (x) => solubility(x, 'bottleTemperature'),
  solubilityForgotten: (x) => solubility(x, 'forgottenHeat'),
  kelvinBottle: (x) => kelvin(x, 'bottleTemperature'),
  kelvinForgotten: (x) => kelvin(x, 'forgottenHeat'),
  gasConstant: () => ofTable('R', 'Gas constant', physics.gasConstant),
  atmosphere: () => ofTable('p_a', 'One atmosphere', physics.atmosphere),
  pascalPerBar: () => {
    const origin = `Exact by definition. ${describeUnitOrigin('bar')}`;
    const value = convertNumber(1, 'bar', 'Pa');
    return { symbol: 'p_b', label: 'One bar', unit: 'Pa/bar', value, origin: () => origin, told: null };
  },
  carriedLeast: (x) => endInEffect(x, 'carriedOver', 'low'),
  carriedMost: (x) => endInEffect(x, 'carriedOver', 'high'),
  yeastLeast: (x) => endInEffect(x, 'yeastShare', 'low'),
  yeastMost: (x) => endInEffect(x, 'yeastShare', 'high'),
  paceLeast: (x) => endInEffect(x, 'withoutGrains', 'low'),
  paceMost: (x) => endInEffect(x, 'withoutGrains', 'high'),
  starterSugarMost: (x) => endInEffect(x, 'starterSugar', 'high'),
  usedLeast: (x) => endInEffect(x, 'usedWhenReady', 'low'),
  usedMost: (x) => endInEffect(x, 'usedWhenReady', 'high'),
  warmKitchen: () => ofTable('T_w', 'A warm kitchen', fermenting.forgottenTemperature),
  leftOut: () => ofTable('p_o', 'What these sums leave out: warm air, vapour, swelling', bottles.pressureLeftOut),
  realGas: () => ofTable('g_r', 'What they leave out since no gas is ideal', bottles.realGas),
} satisfies Record<string, FigureMaker>;
