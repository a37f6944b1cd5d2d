import type { Coefficient } from '../../../reference/origins';
import { reducedFor } from '../../composition/composition-in-effect';
import {
  type Extreme,
  endOfShare,
  extremes,
  type PressedId,
  pressingAt,
  type RangeEnd,
} from '../../composition/pressing';
import { stagesAt } from '../../models/milk';
import { coefficientInEffect } from '../../recipe/coefficients';
import type { Access } from '../../rows/row';
import { coefficientNames } from '../../words/coefficient-names';
import { type Figure, type FigureMaker, ofTable, workedOut } from '../figure';
import { type Balance, densityIn, heldIn, milkIn, ofOwn, ownPart, sugarsIn } from './balance';

/** One of the shares at an end of its range, with the origin of that; the cook's own as it is. */
function endOf(x: Access, id: PressedId, end: RangeEnd): Figure {
  const { symbol, label } = coefficientNames[id];
  const found = coefficientInEffect(id, x.recipe, x.choices);
  const value = endOfShare(x, id, end);
  if (value === found.value || value === found[end]) return ofTable(symbol, label, { ...found, value });
  const measured: Coefficient = { value, unit: found.unit, origin: { kind: 'yours', how: 'measured' } };
  return ofTable(symbol, label, measured);
}

function balanceAt(x: Access, extreme: Extreme): Balance {
  const amount = x.of('waterRatio');
  const reduced = reducedFor(x, amount, pressingAt(x, extreme));
  const ends = extremes[extreme];
  const pressed = {
    passing: endOf(x, 'passing', ends.passing),
    pulpMoisture: endOf(x, 'pulpMoisture', ends.pulpMoisture),
    handlingLoss: endOf(x, 'handlingLoss', ends.handlingLoss),
  };
  return { reduced, stages: stagesAt(reduced, amount), ratio: 'waterRatio', amount, pressed };
}

function milkAt(x: Access, extreme: 'leastMilk' | 'mostMilk'): Figure {
  const balance = balanceAt(x, extreme);
  const [symbol, label] =
    extreme === 'leastMilk' ? ['y₋', 'Least milk per gram of source'] : ['y₊', 'Most milk per gram of source'];
  return workedOut(symbol, label, 'mL/g', balance.stages?.milkVolume ?? Number.NaN, {
    words: 'From the mass balance with these shares.',
    formula: '{M} × (1 − {handlingLoss}) ÷ {density}',
    parts: { ...balance.pressed, M: milkIn(x, balance), density: densityIn(x, balance) },
  });
}

function solidsAt(x: Access, extreme: 'leastSolids' | 'mostSolids'): Figure {
  const balance = balanceAt(x, extreme);
  const label = extreme === 'leastSolids' ? 'Least solids in the milk' : 'Most solids in the milk';
  const value = 100 * (balance.stages?.milkSolids ?? Number.NaN);
  return workedOut(extreme === 'leastSolids' ? 'σ₋' : 'σ₊', label, '%', value, {
    words: 'From the mass balance with these shares.',
    formula: `100 × ({passing} × {sourceSolids}${ofOwn(x, ' + {own}')} + (1 − {q}) × {S}) ÷ {M}`,
    parts: {
      ...balance.pressed,
      own: ownPart(x, balance, 'solids'),
      q: heldIn(x, balance),
      S: sugarsIn(x, balance),
      M: milkIn(x, balance),
    },
  });
}

/** What the balance comes to where bag and hand are at the ends of what they may be. */
export const yieldFigures = {
  leastMilk: (x) => milkAt(x, 'leastMilk'),
  mostMilk: (x) => milkAt(x, 'mostMilk'),
  leastSolids: (x) => solidsAt(x, 'leastSolids'),
  mostSolids: (x) => solidsAt(x, 'mostSolids'),
} satisfies Record<string, FigureMaker>;
