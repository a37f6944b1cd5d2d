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

export type UnitOrigin = { readonly kind: 'published' | 'common practice' | 'from memory'; readonly work: string };

export type UnitRow = {
  readonly id: string;
  readonly kind: Kind;
  readonly symbol: string;
  readonly aliases: readonly string[];
  readonly relation: Relation;
  readonly origin: UnitOrigin;
};

/** Where each exact relation was read, or that it was not. */
export const unitOrigins = {
  handbook44: {
    kind: 'published',
    work: 'NIST Handbook 44, Appendix C, General Tables of Units of Measurement',
  },
  household: {
    kind: 'published',
    work: 'NIST Office of Weights and Measures, Metric Household: exact subdivisions of the cup',
  },
  label: { kind: 'published', work: '21 CFR 101.9(b)(5)(viii), nutrition labels only' },
  australia: { kind: 'published', work: 'New South Wales Government, Healthy Kids, conversion chart' },
  metricSpoons: { kind: 'common practice', work: 'metric cup and spoons outside Australia' },
  si: { kind: 'from memory', work: 'believed in the SI Brochure' },
  sp811: { kind: 'from memory', work: 'believed in NIST SP 811, Appendix B' },
  plain: { kind: 'common practice', work: 'a number as it stands' },
} as const satisfies Record<string, UnitOrigin>;
