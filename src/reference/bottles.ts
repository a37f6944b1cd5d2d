import { type Coefficient, fromMemory, judgement } from './origins';

const table = {
  mostHeadspace: {
    value: 0.5,
    unit: 'share',
    origin: judgement('A bottle less than half full is no sensible way to keep kefir.'),
  },
  pressureLeftOut: {
    value: 0.3,
    unit: 'bar',
    origin: judgement(
      'Worked out for a bottle filled at 4 °C to 97 % and warmed to 30 °C: the air warms (0.1 bar) and is squeezed by the liquid, which swells by 0.4 % (0.2 bar); vapour adds 0.03 bar.',
    ),
  },
  realGas: {
    value: 0.006,
    unit: 'share per bar',
    origin: fromMemory(
      'At 25 °C, from a second virial coefficient of −123 cm³/mol and 34 cm³/mol dissolved: 5 % and 1.4 % more pressure at 10 bar than an ideal gas, less what the gas space takes more.',
    ),
  },
} satisfies Record<string, Coefficient>;

/** What is told of a sealed bottle beside its figures, and feeds none of them. */
export const bottles: Readonly<Record<keyof typeof table, Coefficient>> = table;
