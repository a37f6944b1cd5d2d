import { depthBelowRim, roomAbove } from '../models/vessel';
import { jarProfile } from '../profile';
import type { Access, Term } from '../row';

/** What joins the jars to the milk: fills, headspaces, and the room that grains and sweetener take. */
export const fillTerms = {
  headspaceAsked: {
    label: 'Headspace to keep',
    symbol: 'h*',
    kind: 'length',
    ways: {
      usual: { words: 'The usual headspace.', formula: '{headspaceUsual}', rule: (x) => x.c('headspaceUsual') },
      typed: { words: 'The headspace you typed.', formula: '{headspaceDepth}', rule: typedHeadspace },
    },
  },
  fillAllowed: {
    label: 'Fill that keeps the headspace, each jar',
    symbol: 'F*',
    kind: 'volume',
    ways: {
      byDepth: {
        words: 'Brimful capacity less the room above the headspace to keep.',
        formula: '{brimful} − room({headspaceAsked})',
        rule: (x) => x.of('brimful') - roomAbove(jarProfile(x), x.of('headspaceAsked')),
      },
    },
  },
  totalFill: {
    label: 'Fill, all jars',
    symbol: 'ΣF',
    kind: 'volume',
    ways: {
      sum: {
        words: 'Milk, and the room that the dissolved sweetener and the grains take.',
        formula: '{milkVolume} + {sweetenerMass} × {sweetenerRoom} + {grainMass} ÷ {grainDensity}',
        rule: (x) =>
          x.of('milkVolume') + x.of('sweetenerMass') * x.of('sweetenerRoom') + x.of('grainMass') / x.c('grainDensity'),
      },
    },
  },
  roomPerMilk: {
    label: 'Fill per mL of milk, sweetener and grains in',
    symbol: 'φ',
    kind: 'count',
    ways: {
      rates: {
        words: 'One mL of milk, and the room its sweetener and its grains take at their rates.',
        formula: '1 + {sugarRate} ÷ 1000 ÷ {fermentable} × {sweetenerRoom} + {grainRate} ÷ 1000 ÷ {grainDensity}',
        rule: (x) => 1 + sweetenerRoomPerMilk(x) + grainsPerMilk(x) / x.c('grainDensity'),
      },
    },
  },
  fixedRoom: {
    label: 'Room of what was typed by weight',
    symbol: 'F₀',
    kind: 'volume',
    ways: {
      masses: {
        words: 'Room of sweetener and grains whose weight was typed, so that it does not grow with the batch.',
        formula: '{sweetenerMass} × {sweetenerRoom} + {grainMass} ÷ {grainDensity}',
        rule: (x) => fixedSweetenerRoom(x) + fixedGrains(x) / x.c('grainDensity'),
      },
    },
  },
  drinkPerMilk: {
    label: 'Kefir per mL of milk',
    symbol: 'δ',
    kind: 'count',
    ways: {
      rates: {
        words: 'One mL of milk and its dissolved sweetener, less what clings to its grains.',
        formula: '1 + {sugarRate} ÷ 1000 ÷ {fermentable} × {sweetenerRoom} − {grainRate} ÷ 1000 × {cling}',
        rule: (x) => 1 + sweetenerRoomPerMilk(x) - grainsPerMilk(x) * x.c('cling'),
      },
    },
  },
  drinkFixed: {
    label: 'Kefir from what was typed by weight',
    symbol: 'D₀',
    kind: 'volume',
    ways: {
      masses: {
        words: 'Room of sweetener typed by weight, less what clings to grains typed by weight.',
        formula: '{sweetenerMass} × {sweetenerRoom} − {grainMass} × {cling}',
        rule: (x) => fixedSweetenerRoom(x) - fixedGrains(x) * x.c('cling'),
      },
    },
  },
} satisfies Record<string, Term>;

/** The headspace to keep: the depth typed, or the depth of the room typed. */
function typedHeadspace(x: Access): number {
  const depth = x.typed('headspaceDepth');
  return Number.isNaN(depth) ? depthBelowRim(jarProfile(x), x.typed('headspaceVolume')) : depth;
}

function sweetenerRoomPerMilk(x: Access): number {
  if (x.plan.sweetenerFixed) return 0;
  const rate = x.of('sugarRate');
  return rate === 0 ? 0 : (rate / 1000 / x.of('fermentable')) * x.of('sweetenerRoom');
}

function grainsPerMilk(x: Access): number {
  return x.plan.grainsFixed ? 0 : x.of('grainRate') / 1000;
}

function fixedSweetenerRoom(x: Access): number {
  return x.plan.sweetenerFixed ? x.of('sweetenerMass') * x.of('sweetenerRoom') : 0;
}

function fixedGrains(x: Access): number {
  return x.plan.grainsFixed ? x.of('grainMass') : 0;
}
