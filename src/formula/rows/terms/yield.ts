import type { Ways } from '../row';

/** What milk may come of the same source and water, with another bag and another hand. */
export const yieldTerms = {
  milkLeast: { balance: '{sourceMass} × {leastMilk}' },
  milkMost: { balance: '{sourceMass} × {mostMilk}' },
  solidsLeast: { balance: '{leastSolids}' },
  solidsMost: { balance: '{mostSolids}' },
} satisfies Record<string, Ways>;
