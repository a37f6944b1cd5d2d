import type { Coefficient, Origin } from '../../reference/origins';
import { works } from '../../reference/works';
import { writeSignificant } from './write-significant';

type Kind = Origin['kind'];
type OfKind<K extends Kind> = Extract<Origin, { readonly kind: K }>;

interface Words<K extends Kind> {
  /** Where it is from, without a full stop. */
  readonly from: (origin: OfKind<K>) => string;
  /** What a range is with an origin of this kind. */
  readonly range: string;
}

const words: { readonly [K in Kind]: Words<K> } = {
  published: { from: ({ work, place }) => `Published: ${cite(work, place)}`, range: 'range' },
  'common practice': { from: () => 'Common practice, no source found', range: 'usually between' },
  'from memory': { from: () => 'From memory', range: 'believed between' },
  judgement: {
    from: ({ reason }) => `A judgement of this sheet: ${reason.replace(/\.$/, '')}`,
    range: 'taken to lie between',
  },
  invented: { from: () => 'Invented for the example', range: 'between' },
  yours: { from: ({ how }) => `Yours, ${yours[how]}`, range: 'between' },
};

const yours: Readonly<Record<OfKind<'yours'>['how'], string>> = {
  typed: 'typed',
  measured: 'measured',
  learned: 'learned from your log',
};

/** Authors, title, journal, year and place, the latter two only where the rest does not say them. */
function cite(work: OfKind<'published'>['work'], place: string): string {
  const { authors, title, journal, year } = works[work];
  const said = [authors, title, journal].filter((part) => part !== null).join(', ');
  const [first] = /^\d{4}/.exec(year) ?? [];
  const dated = first === undefined || said.includes(first) ? said : `${said} (${year})`;
  return title.includes(place) ? dated : `${dated}, ${place}`;
}

/** Where something comes from, in a plain sentence or two: `Published: …, record 12061.`, `Yours, typed.` */
export function describeOrigin(origin: Origin): string {
  return `${open(origin.kind, origin)}.${noteOf(origin)}`;
}

/**
 * Where a coefficient comes from and the range that goes with it, in the coefficient's own unit:
 * `From memory; believed between 0.35 and 0.55.` A coefficient without a range says its origin alone.
 */
export function describeCoefficient({ origin, low, high, unit }: Coefficient, decimalComma = false): string {
  if (low === undefined || high === undefined) return describeOrigin(origin);
  const { range } = words[origin.kind];
  const [from, to] = [low, high].map((end) => writeSignificant(end, decimalComma));
  // A share has no unit a reader would look for.
  const measure = unit === 'share' ? '' : `\u00A0${unit}`;
  const ends = range === 'range' ? `${range} ${from} to ${to}${measure}` : `${range} ${from} and ${to}${measure}`;
  return `${open(origin.kind, origin)}; ${ends}.${noteOf(origin)}`;
}

function open<K extends Kind>(kind: K, origin: Origin): string {
  const entry: Words<K> = words[kind];
  return isOf(kind, origin) ? entry.from(origin) : '';
}

function isOf<K extends Kind>(kind: K, origin: Origin): origin is OfKind<K> {
  return origin.kind === kind;
}

function noteOf(origin: Origin): string {
  return 'note' in origin && origin.note !== undefined ? ` ${origin.note}` : '';
}
