import { type Coefficient, fromMemory } from './origins';

const general =
  'One factor for each of them in any food; tables that use factors of each food differ by a few per cent.';

function factor(value: number, low: number, high: number, note: string): Coefficient {
  return { value, unit: 'kcal/g', low, high, origin: fromMemory(note) };
}

/** What a gram of each gives, when eaten. */
export const energy = {
  proteinEnergy: factor(4, 3.5, 4.4, general),
  fatEnergy: factor(9, 8.4, 9, general),
  carbohydrateEnergy: factor(4, 3.5, 4.2, `Fibre is counted with it, as by difference. ${general}`),
  alcoholEnergy: factor(7, 6.9, 7.1, 'Of ethanol.'),
  acidEnergy: factor(3, 2.4, 3.7, 'Of lactic acid, and about as much of acetic acid.'),
  kilojoules: { value: 4.184, unit: 'kJ/kcal', low: 4.18, high: 4.19, origin: fromMemory('A kilocalorie.') },
} as const satisfies Record<string, Coefficient>;
