import type { UnitId } from './units';

type UnitOrigin = { readonly kind: 'published' | 'common practice'; readonly work: string };

const works = {
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
  // Not opened itself: read in an independent table of units drawn from it.
  sp811: {
    kind: 'published',
    work: 'NIST Special Publication 811 (2008), Guide for the Use of the International System of Units (SI)',
  },
  plain: { kind: 'common practice', work: 'a number as it stands' },
} as const satisfies Record<string, UnitOrigin>;

/** Where the exact relation of each unit was read, or that it was not. */
export const unitOrigins: Readonly<Record<UnitId, UnitOrigin>> = {
  g: works.sp811,
  kg: works.sp811,
  mg: works.sp811,
  lb: works.sp811,
  oz: works.sp811,
  mL: works.sp811,
  cL: works.sp811,
  dL: works.sp811,
  L: works.sp811,
  in3: works.sp811,
  gal: works.handbook44,
  qt: works.handbook44,
  pt: works.handbook44,
  cup: works.handbook44,
  flOz: works.handbook44,
  tbsp: works.household,
  tsp: works.household,
  labelCup: works.label,
  labelFlOz: works.label,
  labelTbsp: works.label,
  labelTsp: works.label,
  metricCup: works.metricSpoons,
  metricTbsp: works.metricSpoons,
  metricTsp: works.metricSpoons,
  australianTbsp: works.australia,
  cm: works.sp811,
  mm: works.sp811,
  in: works.sp811,
  '°C': works.sp811,
  '°F': works.sp811,
  'Δ°C': works.sp811,
  'Δ°F': works.sp811,
  h: works.sp811,
  min: works.sp811,
  s: works.sp811,
  day: works.sp811,
  bar: works.sp811,
  kPa: works.sp811,
  Pa: works.sp811,
  atm: works.sp811,
  psi: works.sp811,
  'g/g': works.plain,
  'g/L': works.sp811,
  '%': works.plain,
  '': works.plain,
  pH: works.plain,
};
