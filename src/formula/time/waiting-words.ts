import { writeMetric, writeTrimmed } from '../../measure/write-quantity';
import { kitchen } from '../../reference/kitchen';
import type { Waiting, WaitingReason } from './waiting';

interface Words {
  /** The usual line, such as `pH 4.6`. */
  readonly line: string;
  /** The time there is, such as `24 h` or `3 days`. */
  readonly time: string;
  /** The time there is while it is falling. */
  readonly falling: string;
  /** The first day, such as `24 h`. */
  readonly day: string;
}

const sentences = {
  acidEnough: ({ line, time }) => `It reached ${line} within ${time}: acid enough by the usual line.`,
  notYet: ({ line, time }) => `Not at ${line} yet. Measure again before ${time} are over.`,
  stillFalling: ({ line, falling }) =>
    `Not at ${line} yet, but on its way: falling, it may stand until ${falling} are over, no longer. Measure again by then.`,
  notInTime: ({ line, time }) => `It did not reach ${line} within ${time}: throw it out.`,
  noReading: ({ time }) =>
    `No pH yet, so nobody can tell. Measure by strip or meter before ${time} are over; if you have neither, buy strips first.`,
  measureNow: ({ day }) => `No pH in ${day}, so nobody can tell. Measure now.`,
  noReadingInTime: ({ time }) =>
    `No pH was measured within ${time}, so nobody can tell whether it turned in time. Germs that make people sick leave no taste: whoever drinks it takes that risk, and nobody who is pregnant, under 5, old or weakened should. Buy strips before the next batch.`,
  readingTooLate: ({ line, time }) =>
    `The first reading of ${line} or less came after ${time}; when it got there nobody can tell. The careful answer is to throw it out.`,
  undatedReading: ({ line }) =>
    `It reads ${line} or less, but the sheet does not know when it got there. Log when the reading was taken.`,
  undatedAfter: ({ line, time }) =>
    `It reads ${line} or less, but the sheet does not know when it got there, and ${time} are over. Log when the reading was taken; if that was later, the careful answer is to throw it out.`,
  tasteOnly: ({ line }) =>
    `It tastes ready. Whether it has reached ${line} nobody can tell without a reading. Measure now.`,
  noSign: ({ line, time }) => `Over after ${time}, with no reading of ${line} and no “ready”: throw it out.`,
} satisfies Record<WaitingReason, (words: Words) => string>;

/** What the waiting comes to, in a sentence or two that say what to do. */
export function describeWaiting({ reason, allowed, days, turn }: Waiting, decimalComma: boolean): string {
  const hours = (value: number): string => writeMetric(value, 'time', decimalComma);
  const time = allowed ? (days === 1 ? '1 day' : `${days} days`) : hours(turn.plain);
  const sentence: (words: Words) => string = sentences[reason];
  return sentence({
    line: `pH\u00A0${writeTrimmed(kitchen.acidityLine.value, 1, decimalComma)}`,
    time,
    falling: hours(turn.falling),
    day: hours(kitchen.acidityTime.value),
  });
}
