import type { ToldWays } from './told-ways';

export const fillTold = {
  headspaceAsked: {
    usual: { words: 'The usual headspace.', formula: '{headspaceUsual}' },
    typed: { words: 'The headspace you typed.', formula: '{headspaceTyped}' },
  },
  fillAllowed: {
    byDepth: {
      words: 'Brimful capacity less the room above the headspace to keep.',
      formula: '{brimful} − {roomAsked}',
    },
  },
  totalFill: {
    sum: {
      words: 'Milk, and the room that the dissolved sweetener and the grains take.',
      formula: '{milkVolume} + {sweetenerMass} × {sweetenerRoom} + {grainMass} ÷ {grainDensity}',
    },
  },
  roomPerMilk: {
    both: {
      words: 'One mL of milk, and the room of what goes in at a rate: sweetener and grains.',
      formula: '1 + {sugarRate} ÷ 1000 ÷ {fermentable} × {sweetenerRoom} + {grainRate} ÷ 1000 ÷ {grainDensity}',
    },
    sweetener: {
      words: 'One mL of milk, and the room of what goes in at a rate: sweetener.',
      formula: '1 + {sugarRate} ÷ 1000 ÷ {fermentable} × {sweetenerRoom}',
    },
    grains: {
      words: 'One mL of milk, and the room of what goes in at a rate: grains.',
      formula: '1 + {grainRate} ÷ 1000 ÷ {grainDensity}',
    },
    neither: { words: 'One mL of milk, and the room of what goes in at a rate: none.', formula: '1' },
  },
  fixedRoom: {
    both: {
      words: 'Room of what was typed by weight, so that it does not grow with the batch: sweetener and grains.',
      formula: '{sweetenerMass} × {sweetenerRoom} + {grainMass} ÷ {grainDensity}',
    },
    sweetener: {
      words: 'Room of what was typed by weight, so that it does not grow with the batch: sweetener.',
      formula: '{sweetenerMass} × {sweetenerRoom}',
    },
    grains: {
      words: 'Room of what was typed by weight, so that it does not grow with the batch: grains.',
      formula: '{grainMass} ÷ {grainDensity}',
    },
    neither: {
      words: 'Room of what was typed by weight, so that it does not grow with the batch: none.',
      formula: '0',
    },
  },
  drinkPerMilk: {
    both: {
      words: 'One mL of milk, with what goes in at a rate, less what clings to the grains: sweetener and grains.',
      formula: '1 + {sugarRate} ÷ 1000 ÷ {fermentable} × {sweetenerRoom} − {grainRate} ÷ 1000 × {cling}',
    },
    sweetener: {
      words: 'One mL of milk, with what goes in at a rate, less what clings to the grains: sweetener.',
      formula: '1 + {sugarRate} ÷ 1000 ÷ {fermentable} × {sweetenerRoom}',
    },
    grains: {
      words: 'One mL of milk, with what goes in at a rate, less what clings to the grains: grains.',
      formula: '1 − {grainRate} ÷ 1000 × {cling}',
    },
    neither: {
      words: 'One mL of milk, with what goes in at a rate, less what clings to the grains: none.',
      formula: '1',
    },
  },
  drinkFixed: {
    both: {
      words: 'Room of sweetener typed by weight, less what clings to grains typed by weight: sweetener and grains.',
      formula: '{sweetenerMass} × {sweetenerRoom} − {grainMass} × {cling}',
    },
    sweetener: {
      words: 'Room of sweetener typed by weight, less what clings to grains typed by weight: sweetener.',
      formula: '{sweetenerMass} × {sweetenerRoom}',
    },
    grains: {
      words: 'Room of sweetener typed by weight, less what clings to grains typed by weight: grains.',
      formula: '− {grainMass} × {cling}',
    },
    neither: {
      words: 'Room of sweetener typed by weight, less what clings to grains typed by weight: none.',
      formula: '0',
    },
  },
} as const satisfies ToldWays;
