import { convertNumber } from '../../measure/units';
import { bottles } from '../../reference/bottles';
import { carrollHenry, fermenting } from '../../reference/fermenting';
import { molarMasses, physics, waterDensity } from '../../reference/physics';
import { entry, type Figure, type FigureMaker, ofTable, workedOut } from '../figure';
import { henryAt, waterDensityAt } from '../models/fizz';
import type { Access, TermId } from '../row';
import { describeUnitOrigin } from './unit';

type Warmth = Extract<TermId, 'roomTemperature' | 'bottleTemperature' | 'forgottenHeat'>;

function kelvin(x: Access, warmth: Warmth): Figure {
  return workedOut('T_K', 'That temperature in kelvin', 'K', x.of(warmth) + physics.zeroCelsius.value, {
    words: 'From absolute zero.',
    formula: `{zero} + {${warmth}}`,
    parts: { zero: ofTable('T_0', '0 °C in kelvin', physics.zeroCelsius) },
  });
}

const marks = ['', '', '²', '³', '⁴', '⁵'];

/** The unit of a polynomial’s coefficient: that of what it gives, by so many degrees. */
function perPower(unit: string, joined: '/' | '·', degree: string, power: number): string {
  return power === 0 ? unit : `${unit}${joined}${degree}${marks[power] ?? ''}`;
}

function powersOf(name: string, count: number): readonly string[] {
  return Array.from({ length: count }, (_, at) => (at === 0 ? '' : `{${name}}${marks[at] ?? ''}`));
}

function waterWeighs(x: Access, warmth: Warmth): Figure {
  const { numerator, denominator, unit, origin } = waterDensity;
  const terms = numerator.map((value, at): readonly [string, Figure] => {
    return [
      `n${at}`,
      entry(`k${at}`, `Coefficient ${at} of the density of water`, value, perPower(unit, '/', '°C', at), origin),
    ];
  });
  const powers = powersOf(warmth, terms.length);
  const sum = terms.map(([name], at) => (at === 0 ? `{${name}}` : `{${name}} × ${powers[at] ?? ''}`)).join(' + ');
  return workedOut('ρ_K', 'Density of water at that temperature', 'kg/m³', waterDensityAt(x.of(warmth)), {
    words: 'By the formula of the table.',
    formula: `(${sum}) ÷ (1 + {below} × {${warmth}})`,
    parts: {
      ...Object.fromEntries(terms),
      below: entry('k', 'Coefficient below the line', denominator, '/°C', origin),
    },
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
      water: waterWeighs(x, warmth),
      molar: ofTable('M_w', 'Molar mass of water', molarMasses.water),
    },
  });
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
  warmKitchen: () => ofTable('T_w', 'A warm kitchen', fermenting.forgottenTemperature),
  leftOut: () => ofTable('p_o', 'What these sums leave out: warm air, vapour, swelling', bottles.pressureLeftOut),
  realGas: () => ofTable('g_r', 'What they leave out since no gas is ideal', bottles.realGas),
} satisfies Record<string, FigureMaker>;
