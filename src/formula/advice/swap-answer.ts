import { grains } from '../../reference/grains';
import { sweetenerNotes } from '../../reference/sweetener-notes';
import { type SweetenerId, sweeteners } from '../../reference/sweeteners';
import type { Spread } from '../foods/look-up';
import { type Blend, fermentableOf, weightOf } from '../models/blend';
import type { SweetenerPart } from '../recipe/recipe';

/** So much of one sweetener in another, or in a blend, at equal fermentable sugar. */
export interface SwapAnswer {
  /** g of all that goes in; wider than what went out where a table or an unread label leaves its sugars open. */
  readonly mass: Spread;
  /** Each sweetener of it, g, in the order asked for; the shares are of the weight. */
  readonly parts: readonly { readonly id: SweetenerId; readonly grams: Spread; readonly weight: number | null }[];
  /** g of fermentable sugar, as hexose, on both sides. */
  readonly hexose: number;
  /** What to know of it, such as that honey is never for a child under 12 months. */
  readonly cautions: readonly string[];
}

export type SwapAnswerResult =
  | { readonly ok: true; readonly answer: SwapAnswer }
  /** Why the grains can do nothing with one of the two. */
  | { readonly ok: false; readonly why: string };

/**
 * What an amount of a sweetener, g, is in others at equal fermentable sugar: m₂ = m₁·f₁/f₂, without a batch. Shares of a
 * blend go by weight and count in proportion. Both kinds of grains take the sugars of all sweeteners alike, so none is
 * asked for; water grains are taken. Refused where one of them holds nothing that ferments.
 */
export function answerSwap(grams: Spread, from: SweetenerId, to: readonly SweetenerPart[]): SwapAnswerResult {
  const refused = [from, ...to.map(({ id }) => id)]
    .map((id) => sweeteners[id].refused)
    .find((why) => why !== undefined);
  if (refused !== undefined) return { ok: false, why: refused };
  const { takes } = grains.water;
  const total = to.reduce((sum, { share }) => sum + share, 0);
  const blend: Blend = to.map(({ id, share }) => ({ entry: sweeteners[id], share: share / total }));
  const out = fermentableOf([{ entry: sweeteners[from], share: 1 }], takes);
  const into = fermentableOf(blend, takes);
  if (!(total > 0) || !(into.low > 0) || !(out.value > 0)) return { ok: false, why: nothing };
  const mass = unchanged(from, to)
    ? grams
    : {
        low: (grams.low * out.low) / into.high,
        likely: (grams.likely * out.value) / into.value,
        high: (grams.high * out.high) / into.low,
      };
  return {
    ok: true,
    answer: {
      mass,
      parts: to.map(({ id, share }) => ({
        id,
        grams: scale(mass, share / total),
        weight: weightOf([{ entry: sweeteners[id], share: 1 }]),
      })),
      hexose: grams.likely * out.value,
      cautions: to.flatMap(({ id }) => sweetenerNotes[id].caution?.text ?? []),
    },
  };
}

const nothing = 'There is nothing in it that the grains can ferment, so no amount of it is the same.';

/** A sweetener for itself is as much of it, however little its label tells. */
function unchanged(from: SweetenerId, to: readonly SweetenerPart[]): boolean {
  return to.every(({ id, share }) => id === from || share === 0);
}

function scale({ low, likely, high }: Spread, by: number): Spread {
  return { low: low * by, likely: likely * by, high: high * by };
}
