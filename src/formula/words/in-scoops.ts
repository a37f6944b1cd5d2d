import { roundNumber } from '../../measure/rounding';
import { measureInScoops, type Scooped, type ScoopSet, writeScoops } from '../../measure/scoops';
import type { CupStandardId } from '../../measure/units';
import { kitchen as defaults } from '../../reference/kitchen';

interface Scoops {
  readonly cups: CupStandardId;
  readonly scoops: ScoopSet;
}

/** A volume in mL by the scoops of this kitchen, no finer than a level measure repeats. */
export function inScoops(volume: number, { scoops, cups }: Scoops): Scooped {
  const { scoopEnough, scoopMost } = defaults;
  return measureInScoops(volume, scoops, cups, { enough: scoopEnough.value, most: scoopMost.value });
}

/**
 * Whether scoops do for an amount. Where even the smallest spoon is further off than two level measures of it differ,
 * what can be weighed is better weighed: an eighth of a teaspoon in place of a tenth is no help.
 */
export function doScoopsDo({ error }: Scooped): boolean {
  return Math.abs(error) <= defaults.scoopMost.value;
}

/** The scoops as a cook reads them, "about" where they are off by more than 1 %: "2 tbsp", "about ¾ cup". */
export function writeInScoops(scooped: Scooped): string {
  const written = writeScoops(scooped);
  return percentOff(scooped) === null ? written : `about\u00A0${written}`;
}

/** By how many whole per cent scoops are off, below zero where they hold less; null up to 1 %, and where there are none. */
export function percentOff({ parts, error }: Scooped): number | null {
  return parts.length === 0 || Math.abs(error) <= defaults.scoopSlack.value ? null : roundNumber(100 * error, 0);
}

/** That behind an amount: "4 % short". */
export function writeOff(off: number): string {
  return `${Math.abs(off)}\u00A0%\u00A0${off < 0 ? 'short' : 'over'}`;
}

/** The same where there is little room: "−4 %". */
export function writeOffShort(off: number): string {
  return `${off < 0 ? '−' : '+'}${Math.abs(off)}\u00A0%`;
}
