import type { ToldWays } from './told-ways';

export const fillTold = {
  headspaceAsked: {
    usual: { words: 'The usual share of the jar, as a depth below its rim; never less than the usual depth.' },
    typed: { words: 'The headspace you typed.' },
  },
  fillAllowed: {
    byDepth: {
      words: 'Brimful capacity less the room above the headspace to keep.',
    },
  },
  fillMost: {
    asked: { words: 'What keeps the headspace you typed.' },
    usual: { words: 'Brimful capacity less the least room that is wise, by depth or by share, whichever is more.' },
  },
  totalFill: {
    sum: {
      words: 'Milk, and the room that the dissolved sweetener and the grains take.',
    },
  },
  roomPerMilk: {
    both: {
      words: 'One mL of milk, and the room of what goes in at a rate: sweetener and grains.',
    },
    sweetener: {
      words: 'One mL of milk, and the room of what goes in at a rate: sweetener.',
    },
    grains: {
      words: 'One mL of milk, and the room of what goes in at a rate: grains.',
    },
    neither: { words: 'One mL of milk, and the room of what goes in at a rate: none.' },
  },
  fixedRoom: {
    both: {
      words: 'Room of what was typed by weight, so that it does not grow with the batch: sweetener and grains.',
    },
    sweetener: {
      words: 'Room of what was typed by weight, so that it does not grow with the batch: sweetener.',
    },
    grains: {
      words: 'Room of what was typed by weight, so that it does not grow with the batch: grains.',
    },
    neither: {
      words: 'Room of what was typed by weight, so that it does not grow with the batch: none.',
    },
  },
  drinkPerMilk: {
    both: {
      words: 'One mL of milk, with what goes in at a rate, less what clings to the grains: sweetener and grains.',
    },
    sweetener: {
      words: 'One mL of milk, with what goes in at a rate, less what clings to the grains: sweetener.',
    },
    grains: {
      words: 'One mL of milk, with what goes in at a rate, less what clings to the grains: grains.',
    },
    neither: {
      words: 'One mL of milk, with what goes in at a rate, less what clings to the grains: none.',
    },
    bothStay: { words: 'One mL of milk, with what goes in at a rate and stays in: sweetener and starter.' },
    grainsStay: { words: 'One mL of milk, with what goes in at a rate and stays in: starter.' },
  },
  drinkFixed: {
    both: {
      words: 'Room of sweetener typed by weight, less what clings to grains typed by weight: sweetener and grains.',
    },
    sweetener: {
      words: 'Room of sweetener typed by weight, less what clings to grains typed by weight: sweetener.',
    },
    grains: {
      words: 'Room of sweetener typed by weight, less what clings to grains typed by weight: grains.',
    },
    neither: {
      words: 'Room of sweetener typed by weight, less what clings to grains typed by weight: none.',
    },
    bothStay: { words: 'Room of what was typed by weight and stays in: sweetener and starter.' },
    grainsStay: { words: 'Room of what was typed by weight and stays in: starter.' },
  },
} as const satisfies ToldWays;
