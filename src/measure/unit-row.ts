export type Kind =
  | 'mass'
  | 'volume'
  | 'length'
  | 'temperature'
  | 'temperatureDifference'
  | 'time'
  | 'pressure'
  | 'ratio'
  | 'concentration'
  | 'share'
  | 'count'
  | 'acidity';

/** How a unit is fixed by another; every one of these is exact, so no factor is ever rounded. */
export type Relation =
  | { readonly base: true }
  | { readonly times: string; readonly of: string }
  | { readonly part: string; readonly of: string }
  | { readonly cubeOf: string }
  | { readonly weightOf: string; readonly onSquareOf: string }
  | { readonly stepOf: string; readonly numerator: string; readonly denominator: string; readonly zeroAt: string };

export type UnitRow = {
  readonly id: string;
  readonly kind: Kind;
  readonly symbol: string;
  readonly relation: Relation;
};
