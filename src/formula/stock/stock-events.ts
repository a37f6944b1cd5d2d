import type { GrainKind } from '../../reference/grains';
import { stockRest } from '../../reference/stock-rest';
import type { Instant, TimelineEvent } from '../time/event';
import { dayMinutes, isInNight, type WallClock } from '../time/span';
import type { Kitchen } from '../words/write-row';
import type { Ledger } from './ledger';
import { dairyRoundMinutes, plantBatchesLeft, refreshOf, restLiquid } from './rest';
import { describeFeeding, describeLiquid } from './stock-words';

/** A stock, as its dates are worked out. */
export interface KeptStock {
  readonly key: string;
  readonly name: string;
  readonly grains: GrainKind;
  /** Sugar of its resting jar, g/L; absent for the usual. */
  readonly strength?: number;
}

/**
 * What is still to be done for a stock, as events of a calendar: fresh liquid when the last is used up, and for milk
 * grains a round in dairy once it is due. One that is late stands at the same time of the next day, and none in the quiet
 * hours: a jar waits a night, and an alarm wakes the house. The id and what it was
 * planned for stay the same as long as nobody fed them, so that a later file moves it.
 */
export function stockEvents(
  { key, name, grains, strength }: KeptStock,
  ledger: Ledger,
  { clock, present, kitchen }: { readonly clock: WallClock; readonly present: Instant; readonly kitchen: Kitchen },
): readonly TimelineEvent[] {
  const of = { batch: `grains-${key}`, batchName: name, minutes: stockRest.feeding.value, hands: true };
  const refresh = refreshOf(grains, ledger, clock);
  const events: TimelineEvent[] = [];
  const liquid = grains === 'milk' ? 'fresh dairy milk' : 'fresh sugar water';
  if (refresh !== null)
    events.push({
      ...{ ...of, id: 'feed', plannedFor: ledger.freshSince ?? refresh.due, title: `Give the grains ${liquid}` },
      ...{
        text: describeFeeding(grains, ledger.rest, strength, kitchen),
        at: awake(stillToCome(refresh.due, present, clock), of.minutes, clock),
      },
    });
  if (grains === 'milk' && ledger.rest > 0 && plantBatchesLeft(ledger) <= 0) {
    const round = restLiquid('milk', ledger.rest);
    events.push({
      ...{ ...of, id: 'dairy', plannedFor: ledger.runSince ?? present, title: 'A day in dairy milk' },
      text: `${ledger.plantBatches} batches of plant milk since the last. Put them into ${describeLiquid(round, kitchen)} on the worktop for ${stockRest.dairyRound.value} h.`,
      at: awake(stillToCome(ledger.points.at(-1)?.entry.at ?? present, present, clock), of.minutes, clock),
      minutes: dairyRoundMinutes,
      hands: false,
    });
  }
  return events;
}

/** A time that is not past: itself, or the same time on the wall of a day to come. */
function stillToCome(due: Instant, present: Instant, clock: Pick<WallClock, 'later'>): Instant {
  if (due >= present) return due;
  const days = Math.floor((present - due) / dayMinutes);
  const next = clock.later(due, days);
  return next >= present ? next : clock.later(due, days + 1);
}

/** The time itself, or on the same day what is out of the quiet hours: done before they begin, or as they end. */
function awake(at: Instant, minutes: number, clock: WallClock): Instant {
  const night = clock.nights(at, at + minutes).find((one) => isInNight(at, minutes, [one]));
  if (night === undefined) return at;
  return clock.midnights(at + 1, night.to).length > 0 ? night.from - minutes : night.to;
}
