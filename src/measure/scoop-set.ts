type ScoopRow = {
  readonly id: string;
  readonly measure: 'cup' | 'tbsp' | 'tsp';
  readonly part: 1 | 2 | 3 | 4 | 8;
};

/** Every scoop a kitchen may own, largest first: `part` of them fill the whole measure. */
export const scoops = {
  '1 cup': { id: '1 cup', measure: 'cup', part: 1 },
  '1/2 cup': { id: '1/2 cup', measure: 'cup', part: 2 },
  '1/3 cup': { id: '1/3 cup', measure: 'cup', part: 3 },
  '1/4 cup': { id: '1/4 cup', measure: 'cup', part: 4 },
  '1 tbsp': { id: '1 tbsp', measure: 'tbsp', part: 1 },
  '1 tsp': { id: '1 tsp', measure: 'tsp', part: 1 },
  '1/2 tsp': { id: '1/2 tsp', measure: 'tsp', part: 2 },
  '1/4 tsp': { id: '1/4 tsp', measure: 'tsp', part: 4 },
  '1/8 tsp': { id: '1/8 tsp', measure: 'tsp', part: 8 },
} as const satisfies Record<string, ScoopRow>;

export type ScoopId = keyof typeof scoops;

/** Which scoops the cook owns. */
export type ScoopSet = {
  readonly cups: readonly ('1' | '1/2' | '1/3' | '1/4')[];
  readonly tablespoon: boolean;
  readonly teaspoons: readonly ('1' | '1/2' | '1/4' | '1/8')[];
};

export const usualScoopSet: ScoopSet = {
  cups: ['1', '1/2', '1/3', '1/4'],
  tablespoon: true,
  teaspoons: ['1', '1/2', '1/4', '1/8'],
};

export type ScoopPart = { readonly scoop: ScoopId; readonly count: number };
