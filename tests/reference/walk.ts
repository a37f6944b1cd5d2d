/** What the tests read off an origin, whatever its kind. */
interface FoundOrigin {
  readonly kind: string;
  readonly work?: unknown;
  readonly place?: unknown;
  readonly reason?: unknown;
}

interface FoundCoefficient {
  readonly at: string;
  readonly value: number;
  readonly unit: string;
  readonly low: number | undefined;
  readonly high: number | undefined;
  readonly origin: FoundOrigin;
}

const kinds = ['published', 'common practice', 'from memory', 'judgement', 'invented', 'yours'];

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}

function isOrigin(value: unknown): value is Record<string, unknown> & FoundOrigin {
  return isRecord(value) && typeof value.kind === 'string' && kinds.includes(value.kind);
}

function branches(value: unknown, at: string): readonly (readonly [string, unknown])[] {
  if (!isRecord(value)) return [];
  return Object.entries(value).map(([key, inner]) => [at === '' ? key : `${at}.${key}`, inner] as const);
}

/** Every origin at any depth of the tables, with its path. */
export function originsIn(value: unknown, at = ''): { readonly at: string; readonly origin: FoundOrigin }[] {
  if (isOrigin(value)) return [{ at, origin: value }];
  return branches(value, at).flatMap(([path, inner]) => originsIn(inner, path));
}

/** Every coefficient at any depth of the tables, with its path. */
export function coefficientsIn(value: unknown, at = ''): FoundCoefficient[] {
  if (isRecord(value) && typeof value.value === 'number' && isOrigin(value.origin)) {
    const { low, high, origin, unit } = value;
    return [
      {
        ...{ at, value: value.value, unit: String(unit), origin },
        low: typeof low === 'number' ? low : undefined,
        high: typeof high === 'number' ? high : undefined,
      },
    ];
  }
  return branches(value, at).flatMap(([path, inner]) => coefficientsIn(inner, path));
}
