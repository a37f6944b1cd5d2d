import type { Component } from '../../../reference/physics';
import { freeWaterAt, passingSolids, type Reduced, type Stages } from '../../models/milk';
import type { Access } from '../../rows/row';
import { type Figure, type FigureMaker, workedOut } from '../figure';
import { nameOf, sumOfVolumes } from './density';
import { asInTable, foodFigures, solidOf } from './food';
import { waterInKitchen } from './water';

/** The balance at one water ratio, and the names of what depends on it in a formula. */
export interface Balance {
  readonly reduced: Reduced;
  /** Null where it gels. */
  readonly stages: Stages | null;
  readonly ratio: 'waterRatio' | 'usualRatio';
  /** g/g. */
  readonly amount: number;
  /** What stands in a formula in place of the shares in effect. */
  readonly pressed: Readonly<Record<string, Figure>>;
}

const nothing = (symbol: string, label: string, words: string): Figure =>
  workedOut(symbol, label, 'g/g', 0, { words, formula: '0' });

function balanceOf(x: Access, ratio: Balance['ratio']): Balance {
  const amount = ratio === 'waterRatio' ? x.of(ratio) : x.c(ratio);
  const { reduced, stages } = ratio === 'waterRatio' ? x.settled.at(amount) : x.settled.atUsual;
  return { reduced, stages, ratio, amount, pressed: {} };
}

/** A stage of the balance; no number where it gels, so that what is told by it has none either. */
function stageOf({ stages }: Balance, name: keyof Stages): number {
  return stages?.[name] ?? Number.NaN;
}

function waterPerDry({ reduced, pressed }: Balance): Figure {
  const label = 'Water that the pulp holds per dry g';
  if (reduced.waterPerDry === 0) return nothing('k', label, 'There is no pulp.');
  return workedOut('k', label, 'g/g', reduced.waterPerDry, {
    words: 'Pressed pulp is so moist.',
    formula: '{pulpMoisture} ÷ (1 − {pulpMoisture})',
    parts: pressed,
  });
}

/** The source's own liquid that is used, by part; nothing where it brings none. */
export function ownPart(x: Access, balance: Balance, part: 'mass' | 'water' | 'sugars' | 'solids'): Figure {
  const { reduced, ratio } = balance;
  const { own } = reduced.strain;
  const symbol = { mass: 'e_u', water: 'e_w', sugars: 'e_s', solids: 'e_n' }[part];
  const label = {
    mass: 'Its own liquid, as far as it is used',
    water: 'Water of its own liquid',
    sugars: 'Sugars of its own liquid',
    solids: 'Other solids of its own liquid',
  }[part];
  const { ownWater } = x.choices.source;
  if (ownWater === null) return nothing(symbol, label, 'It brings no liquid of its own.');
  if (part === 'mass') {
    return workedOut(symbol, label, 'g/g', own.mass, {
      words: 'No more of it than the water wanted.',
      formula: `the least of {ownWater}, {${ratio}}`,
    });
  }
  const used = ownPart(x, balance, 'mass');
  const { water, sugars } = asInTable(ownWater.composition);
  const formula = {
    water: '{used} × {water}',
    sugars: '{used} × {sugars}',
    solids: '{used} × (1 − {water} − {sugars})',
  }[part];
  return workedOut(symbol, label, 'g/g', own[part], {
    words: 'By the table of that liquid.',
    formula,
    parts: { used, water, sugars },
  });
}

/** A piece of a formula that is only there where the source brings a liquid of its own. */
export function ofOwn({ choices: { source } }: Access, piece: string): string {
  return source.ownWater === null ? '' : piece;
}

/** Sugars that reach the blender at this ratio, g/g. */
export function sugarsIn(x: Access, balance: Balance): Figure {
  const { strain } = balance.reduced;
  return workedOut('S', 'Sugars that reach the blender', 'g/g', strain.sugars + strain.own.sugars, {
    words: 'Of the source, less what leached, and of its own liquid.',
    formula: `{totalSugars} × (1 − {leaching})${ofOwn(x, ' + {ownSugars}')}`,
    parts: { ownSugars: ownPart(x, balance, 'sugars') },
  });
}

function waterIn(x: Access, balance: Balance): Figure {
  const { reduced, amount } = balance;
  const sugars = reduced.strain.sugars + reduced.strain.own.sugars;
  const value = freeWaterAt(reduced, amount) + reduced.waterPerDry * sugars;
  return workedOut('W', 'Water of the slurry', 'g/g', value, {
    words: 'Of the source, of the soaking, and what is added; its own liquid is counted first, and is not all water.',
    formula: `{sourceWater} + {uptake} + {${balance.ratio}}${ofOwn(x, ' − {ownSugars} − {ownSolids}')}`,
    parts: { ownSugars: ownPart(x, balance, 'sugars'), ownSolids: ownPart(x, balance, 'solids') },
  });
}

export function heldIn(x: Access, balance: Balance): Figure {
  return workedOut('q', 'Share of water and sugar kept in the pulp', 'share', stageOf(balance, 'heldBack'), {
    words: 'The pulp is pressed to its moisture, and sugar follows the water.',
    formula: '{k} × (1 − {passing}) × {sourceSolids} ÷ ({W} − {k} × {S})',
    parts: { ...balance.pressed, k: waterPerDry(balance), W: waterIn(x, balance), S: sugarsIn(x, balance) },
  });
}

function slurryIn(x: Access, balance: Balance): Figure {
  return workedOut('G₁', 'What leaves the blender, per g of source', 'g/g', stageOf(balance, 'slurryMass'), {
    words: 'All that goes in: other solids, sugars, and water.',
    formula: `{sourceSolids} + {S} + {W}${ofOwn(x, ' + {ownSolids}')}`,
    parts: { S: sugarsIn(x, balance), W: waterIn(x, balance), ownSolids: ownPart(x, balance, 'solids') },
  });
}

function pulpIn(x: Access, balance: Balance): Figure {
  return workedOut('P₁', 'Wet pulp, per g of source', 'g/g', stageOf(balance, 'pulpMass'), {
    words: 'The solids that do not pass, and the water and sugar they hold.',
    formula: '(1 − {passing}) × {sourceSolids} + {q} × ({S} + {W})',
    parts: { ...balance.pressed, q: heldIn(x, balance), S: sugarsIn(x, balance), W: waterIn(x, balance) },
  });
}

/** Milk before handling loses any, g per g of source. */
export function milkIn(x: Access, balance: Balance): Figure {
  const value = stageOf(balance, 'slurryMass') - stageOf(balance, 'pulpMass');
  return workedOut('M₁', 'Milk before any is lost, per g of source', 'g/g', value, {
    words: 'What leaves the blender, less the pulp.',
    formula: '{G} − {P}',
    parts: { G: slurryIn(x, balance), P: pulpIn(x, balance) },
  });
}

/** What passes of the solids: fibre last, the rest in proportion. */
function passedOf(
  x: Access,
  balance: Balance,
  component: 'protein' | 'fat' | 'fibre' | 'ash' | 'carbohydrate',
): Figure {
  const { label, mark } = nameOf(component);
  const table = x.choices.source.composition;
  const fibre = solidOf(table, 'fibre');
  const whole = solidOf(table, component);
  const isFibre = component === 'fibre';
  const named = component === 'carbohydrate' ? 'carbohydrate that is neither sugar nor fibre' : label;
  return workedOut(
    `m_${mark}`,
    `What passes of the ${named}`,
    'g/g',
    passingSolids(balance.reduced.strain)[component],
    {
      words:
        'A bag holds back what is coarse: fibre passes last, fat, protein, other carbohydrate and ash in proportion.',
      formula: isFibre
        ? '({passing} × {sourceSolids} − ({sourceSolids} − {fibre}), if above 0)'
        : '{whole} × (the least of {passing} × {sourceSolids} ÷ ({sourceSolids} − {fibre}), 1)',
      parts: isFibre ? { ...balance.pressed, fibre } : { ...balance.pressed, whole, fibre },
    },
  );
}

/** What the milk holds before any is lost, g per g of source. */
function heldByMilk(x: Access, balance: Balance): Readonly<Record<Component, Figure>> {
  const { reduced } = balance;
  const sugars = reduced.strain.sugars + reduced.strain.own.sugars;
  const rest = passedOf(x, balance, 'carbohydrate');
  const own = ownPart(x, balance, 'solids');
  const passed = (1 - stageOf(balance, 'heldBack')) * sugars;
  const water = waterIn(x, balance);
  return {
    water: workedOut('m_w', 'Water of the milk', 'g/g', (1 - stageOf(balance, 'heldBack')) * water.value, {
      words: 'What the pulp does not keep.',
      formula: '(1 − {q}) × {W}',
      parts: { q: heldIn(x, balance), W: water },
    }),
    protein: passedOf(x, balance, 'protein'),
    fat: passedOf(x, balance, 'fat'),
    carbohydrate: workedOut(
      'm_c',
      'Carbohydrate of the milk, sugars included',
      'g/g',
      passed + rest.value + own.value,
      {
        words: 'The sugars that the pulp does not keep, other carbohydrate that passes, and what its own liquid holds.',
        formula: `(1 − {q}) × {S} + {rest}${ofOwn(x, ' + {own}')}`,
        parts: { q: heldIn(x, balance), S: sugarsIn(x, balance), rest, own },
      },
    ),
    fibre: passedOf(x, balance, 'fibre'),
    ash: passedOf(x, balance, 'ash'),
  };
}

export function densityIn(x: Access, balance: Balance): Figure {
  const value = stageOf(balance, 'milkMass') / stageOf(balance, 'milkVolume');
  const { formula, parts } = sumOfVolumes(heldByMilk(x, balance));
  return workedOut('ρ', 'Density of the milk', 'g/mL', value, {
    words: 'From what is in the milk: its parts take up their own volumes.',
    formula: `{M} ÷ (${formula})`,
    parts: { M: milkIn(x, balance), ...parts },
  });
}

/** What goes into the blender takes up, mL per g of source. */
function slurryVolumeIn(x: Access, balance: Balance): Figure {
  const table = x.choices.source.composition;
  const rest = solidOf(table, 'carbohydrate');
  const S = sugarsIn(x, balance);
  const own = ownPart(x, balance, 'solids');
  const carbohydrate = workedOut(
    'G_c',
    'Carbohydrate in the blender, sugars included',
    'g/g',
    rest.value + S.value + own.value,
    {
      words: 'Sugars, other carbohydrate, and what its own liquid holds.',
      formula: `{rest} + {S}${ofOwn(x, ' + {own}')}`,
      parts: { rest, S, own },
    },
  );
  const { formula, parts } = sumOfVolumes({
    water: waterIn(x, balance),
    protein: solidOf(table, 'protein'),
    fat: solidOf(table, 'fat'),
    carbohydrate,
    fibre: solidOf(table, 'fibre'),
    ash: solidOf(table, 'ash'),
  });
  return workedOut('v_G', 'Volume in the blender, per g of source', 'mL/g', stageOf(balance, 'slurryVolume'), {
    words: 'Its parts take up their own volumes.',
    formula,
    parts,
  });
}

const inEffect = (make: (x: Access, balance: Balance) => Figure) => (x: Access) => make(x, balanceOf(x, 'waterRatio'));

/** The mass balance between source and milk, per g of source. */
export const balanceFigures = {
  ...foodFigures,
  waterPerDry: inEffect((_, balance) => waterPerDry(balance)),
  slurryWater: inEffect(waterIn),
  slurryPerGram: inEffect(slurryIn),
  slurryVolumePerGram: inEffect(slurryVolumeIn),
  pulpPerGram: inEffect(pulpIn),
  milkBeforeLoss: inEffect(milkIn),
  densityOfMilk: inEffect(densityIn),
  ownUsed: inEffect((x, balance) => ownPart(x, balance, 'mass')),
  ownSugars: inEffect((x, balance) => ownPart(x, balance, 'sugars')),
  ownSolids: inEffect((x, balance) => ownPart(x, balance, 'solids')),
  densityOfUsualMilk: (x) => densityIn(x, balanceOf(x, 'usualRatio')),
  usualSourceMass: (x) => {
    const [symbol, label] = ['m₀', 'Source that was given'];
    if (x.plan.accepted.has('sourceMass')) {
      return workedOut(symbol, label, 'g', x.of('sourceMass'), { words: 'As it was typed.', formula: '{sourceMass}' });
    }
    const value = (x.of('blendWater') * x.of('waterDensity')) / (x.c('usualRatio') - x.c('ownWater'));
    return workedOut(symbol, label, 'g', value, {
      words: 'That the water typed goes with at the usual ratio.',
      formula: '{blendWater} × {waterDensity} ÷ ({usualRatio} − {ownWater})',
    });
  },
  usualMilkPerGram: (x) => {
    const [symbol, label] = ['y₀', 'Milk per gram of source at the usual ratio'];
    const balance = balanceOf(x, 'usualRatio');
    if (balance.stages === null)
      return workedOut(symbol, label, 'mL/g', 0, { words: 'It gels at that.', formula: '0' });
    return workedOut(symbol, label, 'mL/g', balance.stages.milkVolume, {
      words: 'What the pulp does not keep and handling does not lose, as a volume.',
      formula: '{M} × (1 − {handlingLoss}) ÷ {density}',
      parts: { M: milkIn(x, balance), density: densityIn(x, balance) },
    });
  },
  waterWeighs: waterInKitchen,
} satisfies Record<string, FigureMaker>;
