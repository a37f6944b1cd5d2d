import { learning } from '../../reference/pace';
import { deviationOfScale } from '../models/logistic';
import { type Look, makesOf, type TimedLook } from './looks';
import { findMostProbable, type Observation } from './most-probable';
import { effectsOf, type PaceKey, type PaceOf } from './pace-keys';

/** How fast batches of one kind of grains and one source ripen against the usual: 2 is twice as fast. */
export interface LearnedPace {
  /** The most probable k. */
  readonly pace: number;
  readonly low: number;
  readonly high: number;
}

/** What was found at the jars of a kitchen, in numbers. */
export interface LearnedPaces {
  /** Of what the makes were that taught it. */
  readonly makes: readonly PaceOf[];
  /** The factors whose product is the pace of a batch, by the key of the coefficient that each of them is. */
  readonly factors: ReadonlyMap<PaceKey, number>;
  /** The pace of batches of these grains and this source; of what was never logged, that of all others. */
  readonly of: (batch: PaceOf) => LearnedPace;
  /** The pace of their own kind of batch, had these looks at one make not been written down; null where they teach nothing. */
  readonly without: (looks: readonly Look[]) => number | null;
}

/** Between which values ln(expected ÷ ready time) of one make lies. */
interface Interval {
  readonly from: number;
  readonly to: number;
}

interface Make {
  readonly looks: readonly TimedLook[];
  readonly of: PaceOf;
}

const everywhere: Interval = { from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY };

/**
 * How fast this kitchen ripens, with each kind of grains and of each source, from what was found at its jars; null where
 * nothing teaches it. Looks at one make are one observation. The true ready time is t = expected ÷ k · e^ε, with ln k the
 * sum of an effect of the kitchen, one of the kind of grains and one of the source. These have normal priors about 0, so
 * that what little is known of one kind leans on all the others, and ε is logistic: one slip of the pen can pull only so
 * hard. `held` are factors that the cook has typed; they are taken as they are.
 *
 * t is when it first tastes ready, and it stays ready until `ripeSpan` times t. Found flat at h: t > h. Ready, just now:
 * between h ÷ `justSpan` and h; for a while: between h ÷ ripeSpan and h. Too sour: t < h ÷ ripeSpan. Looks at one make
 * that contradict each other leave t between the two bounds that do, so that a look that says “slower” can never make k
 * larger. The range is by the curvature at the top of the posterior.
 */
export function learnPaces(
  looks: readonly Look[],
  held: Readonly<Partial<Record<string, number>>> = {},
): LearnedPaces | null {
  const kinds = new Map<string, PaceOf>();
  const makes = makesOf(looks.filter(teaches), learning.sameMake.value).map((all): Make => {
    const of = kindOf(all);
    const key = JSON.stringify(of);
    const kind = kinds.get(key) ?? of;
    kinds.set(key, kind);
    return { looks: all, of: kind };
  });
  if (makes.length === 0) return null;
  const effects = new Map<PaceKey, { readonly place: number; readonly spread: number }>();
  for (const of of kinds.values()) {
    for (const { key, spread } of effectsOf(of)) {
      if (held[key] === undefined && !effects.has(key)) effects.set(key, { place: effects.size, spread });
    }
  }
  const placesOf = (batch: PaceOf): readonly number[] =>
    effectsOf(batch).flatMap(({ key }) => effects.get(key)?.place ?? []);
  const places = new Map([...kinds.values()].map((kind) => [kind, placesOf(kind)]));
  const typed = new Map(
    [...kinds.values()].map((kind) => [
      kind,
      effectsOf(kind).reduce((sum, { key }) => sum + Math.log(held[key] ?? 1), 0),
    ]),
  );
  const observe = ({ of }: Make, { from, to }: Interval): Observation => {
    const known = typed.get(of) ?? 0;
    return { of: places.get(of) ?? [], from: from - known, to: to - known };
  };
  const list = [...effects.values()];
  const scale = learning.batchSpread.value / deviationOfScale;
  const observations = makes.map((make) => observe(make, intervalOf(make.looks)));
  const found = findMostProbable(list, observations, scale);
  const lnOf = (batch: PaceOf, values: readonly number[]): number =>
    effectsOf(batch).reduce((sum, { key }) => {
      const effect = effects.get(key);
      return sum + (effect === undefined ? Math.log(held[key] ?? 1) : (values[effect.place] ?? 0));
    }, 0);
  const placeOfMake = new Map<Look, number>();
  for (const [place, make] of makes.entries()) for (const look of make.looks) placeOfMake.set(look, place);
  return {
    makes: makes.map(({ of }) => of),
    factors: new Map([...effects].map(([key, { place }]) => [key, Math.exp(found.effects[place] ?? 0)])),
    of(batch) {
      const unknown = effectsOf(batch).filter(({ key }) => !effects.has(key) && held[key] === undefined);
      const variance = unknown.reduce((sum, { spread }) => sum + spread ** 2, found.varianceOf(placesOf(batch)));
      const [middle, half] = [lnOf(batch, found.effects), learning.likelyWidth.value * Math.sqrt(variance)];
      return { pace: Math.exp(middle), low: Math.exp(middle - half), high: Math.exp(middle + half) };
    },
    without(gone) {
      const [place] = gone.flatMap((look) => placeOfMake.get(look) ?? []);
      const make = place === undefined ? undefined : makes[place];
      if (place === undefined || make === undefined) return null;
      const rest = make.looks.filter((look) => !gone.includes(look));
      const others =
        rest.length === 0
          ? observations.toSpliced(place, 1)
          : observations.with(place, observe(make, intervalOf(rest)));
      return Math.exp(lnOf(make.of, findMostProbable(list, others, scale, found.effects).effects));
    },
  };
}

/** Whether a look says anything about the pace: more than “just looked”, with its hours and what was expected, both sensible. */
export function teaches({ found, hours, expected }: Look): boolean {
  return found !== 'looked' && isSensible(hours) && isSensible(expected);
}

function isSensible(hours: number | null): boolean {
  return hours !== null && hours >= learning.leastHours.value && hours <= learning.mostHours.value;
}

/** The grains and the source of a make: those of the first look that says, whatever order the looks came in. */
function kindOf(looks: readonly TimedLook[]): PaceOf {
  const grains = looks.flatMap((look) => look.grains ?? []).sort()[0];
  const source = looks.flatMap((look) => look.source ?? []).sort()[0];
  return { ...(grains === undefined ? {} : { grains }), ...(source === undefined ? {} : { source }) };
}

function intervalOf(make: readonly TimedLook[]): Interval {
  const { from, to } = make
    .map(boundsOf)
    .reduce((all, one) => ({ from: Math.max(all.from, one.from), to: Math.min(all.to, one.to) }), everywhere);
  return from <= to ? { from, to } : { from: to, to: from };
}

function boundsOf({ found, hours, expected, holds }: TimedLook): Interval {
  const atOnce = Math.log(expected ?? 1) - Math.log(hours);
  const before = atOnce + Math.log(learning.ripeSpan.value);
  switch (found) {
    case 'flat':
      return { ...everywhere, to: atOnce };
    case 'ready':
      return { from: atOnce, to: holds === 'just' ? atOnce + Math.log(learning.justSpan.value) : before };
    case 'sour':
      return { ...everywhere, from: before };
    case 'looked':
      return everywhere;
  }
}
