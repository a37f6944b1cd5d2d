import { type Coefficient, fromMemory, judgement } from './origins';

const table = {
  unknownGlass: {
    value: 2,
    unit: 'bar',
    origin: judgement(
      'Ordinary glass is rated for no pressure, and no figure for it was found. Lively fizz comes to about this much, and beyond it nothing but a bottle made for fizz is to be trusted.',
    ),
  },
  longestSealed: {
    value: 24,
    unit: 'h',
    origin: judgement('Two to three times the usual; a bottle that stands warm for longer has been forgotten.'),
  },
  mostHeadspace: {
    value: 0.5,
    unit: 'share',
    origin: judgement('A bottle less than half full is no sensible way to keep kefir.'),
  },
  pressureLeftOut: {
    value: 0.4,
    unit: 'bar',
    origin: judgement(
      'Worked out for a bottle filled at 4 °C to 97 % and warmed to 30 °C: the air warms and is squeezed by the liquid, which swells by 0.43 % where it is water (0.28 bar) and by 0.6 % where a fifth of it is fat (0.37 bar); vapour adds 0.03 bar.',
    ),
  },
  realGas: {
    value: 0.006,
    low: 0.005,
    high: 0.007,
    unit: 'share per bar',
    origin: fromMemory(
      'At 25 °C, from a second virial coefficient of −123 cm³/mol and 34 cm³/mol dissolved: 5 % and 1.4 % more pressure at 10 bar than an ideal gas, less what the gas space takes more.',
    ),
  },
  mostFruit: {
    value: 0.5,
    unit: 'share of the fill',
    origin: judgement('With more fruit than kefir it is no longer the kefir that ferments.'),
  },
  fruitWeight: {
    value: 1.05,
    unit: 'g/mL',
    origin: judgement(
      'Juice of a tenth sugar weighs 1.04 g/mL by its composition. A spoon of cut fruit holds air besides, so this counts it high.',
    ),
  },
} satisfies Record<string, Coefficient>;

/** What is not worked out of a sealed bottle: it feeds what a limit leaves room for, and what is offered. */
export const bottles: Readonly<Record<keyof typeof table, Coefficient>> = table;
