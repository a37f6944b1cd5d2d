import type { Origin } from '../../reference/origins';

/** A figure found in a table. */
export interface FoundFigure {
  /** The keys that lead to it, the outermost first. */
  readonly path: readonly string[];
  readonly value: number;
  readonly unit: string;
  readonly low: number | undefined;
  readonly high: number | undefined;
  readonly origin: Origin;
  /** The object that holds it, by which it is known elsewhere. */
  readonly source: object;
}

type Fields = Readonly<Record<string, unknown>>;

function isFields(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

const marks = ['published', 'common practice', 'from memory', 'judgement', 'invented', 'yours'];

function isOrigin(value: unknown): value is Origin {
  return isFields(value) && typeof value.kind === 'string' && marks.includes(value.kind);
}

/** Units that the tables leave to the name of a field. */
const unitsByName: Readonly<Record<string, string>> = {
  grams: 'g',
  cupGrams: 'g',
  pieceGrams: 'g',
  otherHexose: 'g in 100 g',
  sucrose: 'g in 100 g',
  glucose: 'g in 100 g',
  fructose: 'g in 100 g',
  millilitres: 'mL',
  from: '°C',
  to: '°C',
  nominal: 'mL',
  pressureTo: 'bar',
  denominator: '/°C',
};

/**
 * Every figure at any depth of a table: those with a value of their own, and the bare numbers that stand beside an
 * origin, by the names of their fields.
 */
export function figuresWithin(table: unknown, path: readonly string[] = []): readonly FoundFigure[] {
  if (!isFields(table) || isOrigin(table)) return [];
  const { value, unit, low, high, origin } = table;
  if (typeof value === 'number' && typeof unit === 'string' && isOrigin(origin)) {
    const ends = { low: numberIn(low), high: numberIn(high) };
    return [{ path, value, unit, ...ends, origin, source: table }];
  }
  return Object.entries(table).flatMap(([key, inner]) => {
    const own = table[`${key}Origin`] ?? origin;
    if (!isOrigin(own)) return figuresWithin(inner, [...path, key]);
    return bare(inner, [...path, key], own, unitFor(key, table), table);
  });
}

function numberIn(value: unknown): number | undefined {
  return typeof value === 'number' ? value : undefined;
}

function unitFor(key: string, { unit, from }: Fields): string {
  // The range that a correlation holds in is in kelvin where it begins at the freezing point.
  const byName = unitsByName[key];
  if (byName === '°C' && typeof from === 'number' && from > 100) return 'K';
  return byName ?? (typeof unit === 'string' ? unit : 'g in 100 g');
}

/** Bare numbers: one, several in a row, or a row of steps. */
function bare(
  inner: unknown,
  path: readonly string[],
  origin: Origin,
  unit: string,
  source: object,
): readonly FoundFigure[] {
  if (typeof inner === 'number') {
    if (!Number.isFinite(inner)) return [];
    return [{ path, value: inner, unit, low: undefined, high: undefined, origin, source }];
  }
  if (Array.isArray(inner)) {
    return inner.flatMap((each: unknown, at) => bare(each, [...path, `${at}`], origin, unit, source));
  }
  if (!isFields(inner)) return [];
  if (typeof inner.most === 'number') return bare(inner.most, path, origin, unit, source);
  return figuresWithin(inner, path);
}
