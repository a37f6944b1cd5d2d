import type { NumericRowId, RowId } from '../../formula/recipe/order';

/** A line of the sheet: one thing of the work, how it is done and how much of it, and what it unfolds to. */
export interface Line {
  readonly id: string;
  readonly label: string;
  /** Null where there is nothing to choose or set; `aside` says it in words then. */
  readonly how: RowId | null;
  readonly aside?: string;
  readonly much: NumericRowId;
  readonly details: readonly NumericRowId[];
}

/** The lines in the order of the work. Every row of the sheet stands in one of them, once. */
export const lines = [
  { id: 'jar', label: 'Jar', how: 'vessel', much: 'fillVolume', details: ['vesselCount', 'brimful'] },
  { id: 'headspace', label: 'Headspace', how: 'headspaceDepth', much: 'headspaceVolume', details: [] },
  { id: 'source', label: 'Nut, seed', how: 'source', much: 'sourceMass', details: [] },
  { id: 'soak', label: 'Soak', how: 'soakTime', much: 'soakWater', details: ['soakedMass'] },
  { id: 'water', label: 'Water', how: 'waterRatio', much: 'blendWater', details: ['blenderLoads'] },
  { id: 'milk', label: 'Milk', how: 'milkSolids', much: 'milkVolume', details: ['pulpMass'] },
  {
    id: 'sweetener',
    label: 'Sweetener',
    how: 'sweetener',
    much: 'sweetenerMass',
    details: ['sugarRate', 'caneEquivalent', 'startingSugar'],
  },
  { id: 'culture', label: 'Culture', how: 'grains', much: 'grainMass', details: ['grainRate'] },
  { id: 'wait', label: 'Wait', how: 'roomTemperature', much: 'readyTime', details: ['finalPH'] },
  { id: 'drink', label: 'Drink', how: 'servings', much: 'drinkVolume', details: ['servingSize'] },
  {
    id: 'fizz',
    label: 'Fizz',
    how: 'bottleTime',
    much: 'bottlePressureLikely',
    details: [
      'sugarLeft',
      'bottleSugar',
      'bottleTemperature',
      'bottleVolume',
      'bottleHeadspace',
      'bottleCount',
      'bottlePressureForgotten',
      'bottleLimit',
      'bottleSugarMost',
    ],
  },
  { id: 'keep', label: 'Keep', how: null, aside: 'in the fridge', much: 'keepDays', details: [] },
] as const satisfies readonly Line[];

export type LineId = (typeof lines)[number]['id'];

const ofRow = new Map<RowId, Line & { readonly id: LineId }>();
for (const line of lines) for (const row of rowsOf(line)) ofRow.set(row, line);

/** The rows of a line, as they stand in it. */
export function rowsOf({ how, much, details }: Line): readonly RowId[] {
  return [...(how === null ? [] : [how]), much, ...details];
}

/** The line that a row stands in. */
export function lineOf(row: RowId): Line & { readonly id: LineId } {
  const line = ofRow.get(row);
  if (line === undefined) throw new Error(`${row} stands in no line`);
  return line;
}

/** How the amount of a rate is said where it is the *how* of its line, as `4.5 parts to 1`. */
export const sayings: Readonly<Partial<Record<RowId, (amount: string) => string>>> = {
  waterRatio: (amount) => `${amount} to 1`,
  milkSolids: (amount) => `${amount} solids`,
  servings: (amount) => (amount === '1' ? '1 glass' : `${amount} glasses`),
  bottleTime: (amount) => (/^0\D*$/.test(amount) ? 'none' : `${amount} sealed`),
};
