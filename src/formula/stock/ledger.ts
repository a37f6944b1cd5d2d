import type { SourceId } from '../../reference/sources';
import type { Instant } from '../time/event';

export type Place = 'room' | 'fridge' | 'freezer' | 'dried';
export type Medium = 'sugarWater' | 'dairy' | 'plantMilk';

/** What was done with a stock: as it is written down, at an instant. Grams are of drained grains, null where not weighed. */
export interface Entry {
  readonly at: Instant;
  readonly did: 'weighed' | 'out' | 'back' | 'given' | 'got' | 'fed' | 'moved' | 'failed';
  readonly grams: number | null;
  readonly batch?: string;
  readonly name?: string;
  readonly source?: SourceId;
  readonly place?: Place;
  readonly medium?: Medium;
}

/** Grains that are in the jar of a batch. */
export interface Away {
  readonly out: Entry;
  readonly grams: number | null;
}

/** One batch or round of rest that was weighed before and after. */
export interface Round {
  readonly from: Instant;
  readonly at: Instant;
  readonly before: number;
  readonly after: number;
  /** The milk they were in; or the liquid of a round of rest. */
  readonly source: SourceId | null;
  readonly medium: Medium | null;
  readonly name: string | null;
}

/** How much there was after an entry, g: at rest, and with what is away in batches. */
export interface Point {
  readonly entry: Entry;
  readonly rest: number;
  readonly total: number;
  /** What the entry added to the total, or took from it. */
  readonly change: number;
}

/** What a stock has come to. */
export interface Ledger {
  /** At rest, g. Below 0 where more went out than there was: then something was not written down. */
  readonly rest: number;
  /** With what is away in batches, g. */
  readonly total: number;
  readonly away: readonly Away[];
  readonly points: readonly Point[];
  readonly rounds: readonly Round[];
  /** Where those at rest are; null where nobody said. */
  readonly place: Place | null;
  readonly medium: Medium | null;
  /** Since when they have been in the liquid they rest in; null where nobody said. */
  readonly freshSince: Instant | null;
  /** Batches of plant milk that came back since the last round in dairy. */
  readonly plantBatches: number;
  /** When that run began: the last round in dairy, or the first entry; null for a stock without any. */
  readonly runSince: Instant | null;
  /** Whether any weight is known at all. */
  readonly isWeighed: boolean;
}

/**
 * Goes through what was written down, in order of time; of the same minute in the order given. A weighing, also one at a
 * feeding or a move, is of all that is at rest. What comes back is of the batch that has been away longest under the same
 * id. What comes back unweighed counts as it went out. With `failed` of a batch its grains are thrown out, all of
 * them unless grams say how many; without a batch, those at rest. Linear but for the ordering.
 */
export function ledgerOf(entries: readonly Entry[]): Ledger {
  const book = new Book();
  for (const entry of inOrder(entries)) book.write(entry);
  return book.close();
}

/** Sorted once for all; engines keep entries of the same minute as they stand. */
function inOrder(entries: readonly Entry[]): readonly Entry[] {
  const isSorted = entries.every((entry, place) => (entries[place - 1]?.at ?? entry.at) <= entry.at);
  return isSorted ? entries : [...entries].sort((one, other) => one.at - other.at);
}

class Book {
  private rest = 0;
  private sent = 0;
  private readonly away = new Map<string, Away[]>();
  private readonly points: Point[] = [];
  private readonly rounds: Round[] = [];
  private place: Place | null = null;
  private medium: Medium | null = null;
  private freshSince: Instant | null = null;
  private plantBatches = 0;
  private runSince: Instant | null = null;
  private isWeighed = false;
  /** The last weighing of all at rest, while nothing came or went since. */
  private base: Entry | null = null;

  write(entry: Entry): void {
    const before = this.rest + this.sent;
    this.runSince ??= entry.at;
    this.isWeighed ||= entry.grams !== null;
    this.move(entry);
    this.follow(entry);
    const total = this.rest + this.sent;
    this.points.push({ entry, rest: this.rest, total, change: total - before });
  }

  close(): Ledger {
    const { rest, points, rounds, place, medium, freshSince, plantBatches, runSince, isWeighed } = this;
    const away = [...this.away.values()].flat().sort((one, other) => one.out.at - other.out.at);
    return {
      rest,
      total: rest + this.sent,
      away,
      points,
      rounds,
      place,
      medium,
      freshSince,
      plantBatches,
      runSince,
      isWeighed,
    };
  }

  private move(entry: Entry): void {
    const grams = entry.grams ?? 0;
    switch (entry.did) {
      case 'got':
        this.shift(grams);
        break;
      case 'given':
        this.shift(-grams);
        break;
      case 'out':
        this.shift(-grams);
        this.base = null;
        this.send(entry);
        break;
      case 'back':
        this.takeBack(entry);
        break;
      case 'failed':
        this.throwOut(entry);
        break;
      default:
        if (entry.grams !== null) this.weigh(entry, entry.grams);
    }
  }

  private shift(grams: number): void {
    this.rest += grams;
    if (grams !== 0) this.base = null;
  }

  private weigh(entry: Entry, grams: number): void {
    const { base } = this;
    // In the cold they rest, and what the scale shows is no growth.
    const isWarm = base?.place === undefined || base.place === 'room';
    if (base !== null && base.grams !== null && base.medium !== undefined && isWarm && entry.at > base.at)
      this.rounds.push({
        ...{ from: base.at, at: entry.at, before: base.grams, after: grams },
        ...{ source: null, medium: base.medium, name: null },
      });
    this.rest = grams;
    this.base = entry;
  }

  private send(out: Entry): void {
    const key = keyOf(out);
    this.sent += out.grams ?? 0;
    this.away.set(key, [...(this.away.get(key) ?? []), { out, grams: out.grams }]);
  }

  private takeFirst(entry: Entry): Away | null {
    const key = keyOf(entry);
    const [first, ...others] = this.away.get(key) ?? [];
    if (first === undefined) return null;
    if (others.length === 0) this.away.delete(key);
    else this.away.set(key, others);
    this.sent -= first.grams ?? 0;
    return first;
  }

  private takeBack(entry: Entry): void {
    const away = this.takeFirst(entry);
    this.shift(entry.grams ?? away?.grams ?? 0);
    if (away === null) return;
    this.plantBatches += 1;
    const source = entry.source ?? away.out.source ?? null;
    if (entry.grams !== null && away.grams !== null && away.grams > 0)
      this.rounds.push({
        ...{ from: away.out.at, at: entry.at, before: away.grams, after: entry.grams, source },
        ...{ medium: source === null ? (away.out.medium ?? null) : null, name: away.out.name ?? entry.name ?? null },
      });
  }

  private throwOut(entry: Entry): void {
    const away = entry.batch === undefined ? null : this.takeFirst(entry);
    if (away === null) this.shift(-(entry.grams ?? this.rest));
    // What was not thrown out of a batch came back.
    else this.shift((away.grams ?? 0) - (entry.grams ?? away.grams ?? 0));
  }

  private follow({ did, at, place, medium }: Entry): void {
    if (did === 'out' || did === 'given' || did === 'failed') return;
    if (place !== undefined) this.place = place;
    if (medium !== undefined) this.medium = medium;
    if (medium !== undefined || did === 'fed') this.freshSince = at;
    const isDairyRound = medium === 'dairy' && (place ?? this.place ?? 'room') === 'room';
    if (!isDairyRound) return;
    this.plantBatches = 0;
    this.runSince = at;
  }
}

function keyOf({ batch }: Entry): string {
  return batch ?? '';
}
