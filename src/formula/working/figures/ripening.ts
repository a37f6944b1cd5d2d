import {
  type CardinalId,
  type CardinalTemperatures,
  cardinalTemperatures,
  fermenting,
} from '../../../reference/fermenting';
import { growthModel } from '../../../reference/growth-model';
import { physics } from '../../../reference/physics';
import { growthAt, timesAsLong } from '../../models/ripening';
import { coefficientInEffect } from '../../recipe/coefficients';
import type { Access } from '../../rows/row';
import { endOf, type Figure, type FigureMaker, ofTable, workedOut } from '../figure';

/** A temperature of the batch: a term of it, or that of the room in which the usual time holds. */
type Warmth = 'roomTemperature' | 'bottleTemperature' | 'usual';

function warmthOf(x: Access, warmth: Warmth): { readonly celsius: number; readonly parts: Record<string, Figure> } {
  if (warmth !== 'usual') return { celsius: x.of(warmth), parts: {} };
  const { readyTemperature } = x.choices.grain;
  return {
    celsius: readyTemperature.value,
    parts: { usual: ofTable('T₀', 'Room of the usual time', readyTemperature) },
  };
}

function growth(x: Access, model: CardinalTemperatures, warmth: Warmth): Figure {
  const { celsius, parts } = warmthOf(x, warmth);
  const T = `{${warmth}}`;
  const [least, best, most] = ['{T_min}', '{T_opt}', '{T_max}'];
  const symbol = warmth === 'usual' ? 'γ(T₀)' : warmth === 'roomTemperature' ? 'γ(T)' : 'γ(T_b)';
  return workedOut(symbol, `Growth as a share of the fastest: ${model.name}`, 'share', growthAt(celsius, model), {
    words:
      'The cardinal temperature model with inflection: nothing at the least and the most temperature, all at the best.',
    by: growthModel.origin,
    formula: `(${T} − ${most}) × (${T} − ${least})² ÷ ((${best} − ${least}) × ((${best} − ${least}) × (${T} − ${best}) − (${best} − ${most}) × (${best} + ${least} − 2 × ${T})))`,
    parts: {
      ...parts,
      T_min: ofTable('T_min', 'Least temperature it grows at', model.minimum),
      T_opt: ofTable('T_opt', 'Temperature it grows fastest at', model.optimum),
      T_max: ofTable('T_max', 'Most temperature it grows at', model.maximum),
    },
  });
}

function asLongBy(x: Access, id: CardinalId, warmth: Warmth): Figure {
  const model = cardinalTemperatures[id];
  const [usual, here] = [growth(x, model, 'usual'), growth(x, model, warmth)];
  return workedOut('θ', `Times as long: ${model.name}`, '', usual.value / here.value, {
    words: 'Its growth in the usual room over its growth in this one.',
    formula: '{usual} ÷ {here}',
    parts: { usual, here },
  });
}

/** How many times as long by the pace at which kefir grains make ethanol. */
function asLongByEthanol(x: Access): Figure {
  const usual = warmthOf(x, 'usual');
  const kelvin = physics.zeroCelsius.value;
  const [here, there] = [x.of('roomTemperature') + kelvin, usual.celsius + kelvin];
  const scale = fermenting.ethanolActivation.value / physics.gasConstant.value;
  return workedOut(
    'θ_E',
    'Times as long: ethanol made by milk kefir grains',
    '',
    Math.exp(scale * (1 / here - 1 / there)),
    {
      words: 'By Arrhenius, from an activation energy.',
      formula: 'e^({E} ÷ {R} × (1 ÷ ({kelvin} + {roomTemperature}) − 1 ÷ ({kelvin} + {usual})))',
      parts: {
        ...usual.parts,
        E: ofTable('E', 'Activation energy', fermenting.ethanolActivation),
        R: ofTable('R', 'Gas constant', physics.gasConstant),
        kelvin: ofTable('T_K', '0 °C in kelvin', physics.zeroCelsius),
      },
    },
  );
}

function ofModels(x: Access, end: 'least' | 'most'): Figure {
  const value = timesAsLong(x.of('roomTemperature'), x.choices.grain.readyTemperature.value)[end];
  const label =
    end === 'least' ? 'The least that any model makes of this room' : 'The most that any model makes of this room';
  return workedOut(end === 'least' ? 'θ₋' : 'θ₊', label, '', value, {
    words: 'Of three organisms and of ethanol, each by a published figure.',
    formula: `the ${end} of {plantarum}, {starter}, {yeast}, {ethanol}`,
    parts: {
      plantarum: asLongBy(x, 'plantarum', 'roomTemperature'),
      starter: asLongBy(x, 'starter', 'roomTemperature'),
      yeast: asLongBy(x, 'yeast', 'roomTemperature'),
      ethanol: asLongByEthanol(x),
    },
  });
}

/** An end of the range of a table’s figure; the figure itself where it has none. */
function slowerEnd(x: Access, end: 'low' | 'high'): Figure {
  const label = `At ${end === 'low' ? 'least' : 'most'} as many times as long`;
  return endOf(end === 'low' ? 'ζ₋' : 'ζ₊', label, coefficientInEffect('slower', x.recipe, x.choices), end);
}

function keepEnd(x: Access, end: 'low' | 'high'): Figure {
  const label = end === 'low' ? 'The short end of what is usual' : 'The long end of what is usual';
  return endOf(end === 'low' ? 'q₋' : 'q₊', label, coefficientInEffect('keepUsual', x.recipe, x.choices), end);
}

/** What a ready time and the days of keeping lie between. */
export const ripeningFigures = {
  growthUsual: (x) => growth(x, cardinalTemperatures.plantarum, 'usual'),
  growthHere: (x) => growth(x, cardinalTemperatures.plantarum, 'roomTemperature'),
  leastOfModels: (x) => ofModels(x, 'least'),
  mostOfModels: (x) => ofModels(x, 'most'),
  asLongInBottle: (x) => asLongBy(x, 'plantarum', 'bottleTemperature'),
  usualTime: (x) => ofTable('t_m', 'The middle of the usual time', x.choices.grain.readyTime),
  shortTime: (x) => endOf('t_s', 'The short end of the usual time', x.choices.grain.readyTime, 'low'),
  longTime: (x) => endOf('t_l', 'The long end of the usual time', x.choices.grain.readyTime, 'high'),
  leastSlower: (x) => slowerEnd(x, 'low'),
  mostSlower: (x) => slowerEnd(x, 'high'),
  shortKeep: (x) => keepEnd(x, 'low'),
  longKeep: (x) => keepEnd(x, 'high'),
} satisfies Record<string, FigureMaker>;
