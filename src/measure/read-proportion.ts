import { doubleOf, type Exact } from './exact';
import { matchAt, readNumber } from './read-number';
import type { Fault } from './read-problem';
import { roundTo } from './rounding';
import { writeOneWay } from './write-one-way';

export type ProportionRead =
  /** `told` where the text says what goes to what, and nothing was taken for granted. */
  { readonly ok: true; readonly value: Exact; readonly told: boolean } | { readonly ok: false; readonly fault: Fault };

const colon = / ?: ?/y;
// "4.5 parts", "4.5 parts water to 1 of almonds, by weight": it says itself which of them is the water.
const partsOfWater = / ?parts?(?: (?:of )?water)?(?: to 1(?: of .+)?)?$/iuy;
const places = 4;

/**
 * Reads "1:5" or "5 parts" from a place to the end of a normalised text, as recipes say how much water goes to how much
 * source: 5.
 * Null where there is no such text. With more in front than behind, which is which is asked for (`eitherWay`).
 */
export function readProportion(text: string, at: number, decimalComma: boolean): ProportionRead | null {
  const source = readNumber(text, at, decimalComma);
  if (source.ok && matchAt(partsOfWater, text, source.end) !== null)
    return { ok: true, value: source.value, told: true };
  const parted = source.ok ? matchAt(colon, text, source.end) : null;
  if (!source.ok || parted === null) return null;
  const water = readNumber(text, source.end + parted[0].length, decimalComma);
  if (!water.ok) return water;
  if (water.end !== text.length) return { ok: false, fault: { code: 'unexpected', from: water.end, to: text.length } };
  const [over, under] = [water.value, source.value];
  if (over.numerator === 0n || under.numerator === 0n)
    return { ok: false, fault: { code: 'divisionByZero', from: at, to: text.length } };
  if (over.compare(under) >= 0) return { ok: true, value: over.div(under), told: false };
  const readings = [under.div(over), over.div(under)].map((ratio) =>
    writeOneWay(roundTo(doubleOf(ratio), places), decimalComma),
  );
  return { ok: false, fault: { code: 'eitherWay', from: 0, to: text.length, readings } };
}
