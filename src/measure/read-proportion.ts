import { type Big, decimal } from './decimal';
import { matchAt, readNumber } from './read-number';
import type { Fault } from './read-problem';
import { writeOneWay } from './write-one-way';

export type ProportionRead = { readonly ok: true; readonly value: Big } | { readonly ok: false; readonly fault: Fault };

const colon = / ?: ?/y;
const places = 4;

/**
 * Reads "1:5" from a place to the end of a normalised text, as recipes say how much water goes to how much source: 5.
 * Null where there is no such text. With more in front than behind, which is which is asked for (`eitherWay`).
 */
export function readProportion(text: string, at: number, decimalComma: boolean): ProportionRead | null {
  const source = readNumber(text, at, decimalComma);
  const parted = source.ok ? matchAt(colon, text, source.end) : null;
  if (!source.ok || parted === null) return null;
  const water = readNumber(text, source.end + parted[0].length, decimalComma);
  if (!water.ok) return water;
  if (water.end !== text.length) return { ok: false, fault: { code: 'unexpected', from: water.end, to: text.length } };
  const over = water.value.numerator.times(source.value.denominator);
  const under = water.value.denominator.times(source.value.numerator);
  if (over.eq(0) || under.eq(0)) return { ok: false, fault: { code: 'divisionByZero', from: at, to: text.length } };
  if (over.gte(under)) return { ok: true, value: decimal(over.div(under)) };
  const readings = [under.div(over), over.div(under)].map((ratio) => writeOneWay(ratio.toFixed(places), decimalComma));
  return { ok: false, fault: { code: 'eitherWay', from: 0, to: text.length, readings } };
}
