import type { WorkId } from './works';

export type Origin =
  | { readonly kind: 'published'; readonly work: WorkId; readonly place: string; readonly note?: string }
  | { readonly kind: 'common practice'; readonly note?: string }
  | { readonly kind: 'from memory'; readonly note?: string }
  | { readonly kind: 'judgement'; readonly reason: string }
  | { readonly kind: 'invented'; readonly note?: string }
  | { readonly kind: 'yours'; readonly how: 'typed' | 'measured' | 'learned' };

/** One number with its unit and where it came from; `low` and `high` are the range believed or published. */
export interface Coefficient {
  readonly value: number;
  readonly unit: string;
  readonly low?: number;
  readonly high?: number;
  readonly origin: Origin;
}

/** An origin in a work that can be looked up: the table, record or section goes in `place`. */
export function published(work: WorkId, place: string, note?: string): Origin {
  return note === undefined ? { kind: 'published', work, place } : { kind: 'published', work, place, note };
}

/** An origin for what is widely done and has nothing citable behind it. */
export function commonPractice(note?: string): Origin {
  return note === undefined ? { kind: 'common practice' } : { kind: 'common practice', note };
}

/** An origin for what was believed and not looked up, or looked for and not found. */
export function fromMemory(note?: string): Origin {
  return note === undefined ? { kind: 'from memory' } : { kind: 'from memory', note };
}

/** An origin for a choice of our own; the reason is required. */
export function judgement(reason: string): Origin {
  return { kind: 'judgement', reason };
}
