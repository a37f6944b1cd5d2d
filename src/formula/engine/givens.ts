import { convertNumber } from '../../measure/units';
import type { NumericRowId } from '../recipe/order';
import type { Problem } from '../recipe/problem';
import type { Amount } from '../recipe/recipe';
import type { Access, NumericRow, Weighing } from '../rows/row';

// Converting is exact and takes its time, so not at each batch.
const tablespoon = convertNumber(1, 'tbsp', 'mL');
const litre = convertNumber(1, 'L', 'mL');

/** Weight of 1 mL of what a row measures, g; NaN where no weight of a cup of it is published. */
function weightOf(x: Access, weighing: Weighing): number {
  switch (weighing) {
    case 'source':
      return x.of('sourceWeight');
    case 'sweetener':
      return x.of('sweetenerWeight');
    case 'cane':
      return x.of('caneWeight');
    case 'grains':
      return x.c('grainSpoon') / tablespoon;
    case 'water':
      return x.of('waterDensity');
    case 'milk':
      return x.of('usualMilkDensity');
  }
}

/** Weight of 1 mL of what this row measures, g; null where it has none or none is published. */
export function rowWeight(x: Access, row: NumericRow): number | null {
  if (row.weighing === undefined) return null;
  const weight = weightOf(x, row.weighing);
  return Number.isFinite(weight) && weight > 0 ? weight : null;
}

/** Whether a cook may type this row, rather than only measure it or read it. */
export function isTypable({ typed }: NumericRow): boolean {
  return typed !== 'never' && typed !== 'measured';
}

/**
 * A typed amount in the row's own unit: a volume typed for a solid goes through that food's published cup weight, a
 * mass typed for a liquid through its density, a share through the row it is a share of, what goes into each bottle
 * through what fills it. Gives a problem where what was typed can't stand in this row.
 */
export function readGiven(x: Access, id: NumericRowId, row: NumericRow, typed: Amount): number | Problem {
  if (!isTypable(row)) return { code: 'notTyped', at: id };
  if (typed.amount === null) return { code: 'unreadable', at: id };
  // Adding 0 turns a negative zero into a plain one.
  const value = inRowUnit(x, id, row, typed.kind, typed.amount + 0);
  return typeof value === 'number' ? (checkRange(id, row, value) ?? row.check?.(x, value) ?? value) : value;
}

function inRowUnit(
  x: Access,
  id: NumericRowId,
  row: NumericRow,
  kind: Amount['kind'],
  amount: number,
): number | Problem {
  if (kind === row.kind) return amount;
  if (kind === 'share' && row.shareOf !== undefined) {
    const whole = x.of(row.shareOf);
    return Number.isNaN(whole) ? { code: 'waits', at: id, for: row.shareOf } : (amount / 100) * whole;
  }
  if (kind === 'share' && row.ofMilk === true) return (amount / 100) * 1000 * x.of('usualMilkDensity');
  if (kind === 'count' && row.weighing === 'source') return inCans(x, id, amount);
  if (kind === 'count' && row.weighing === 'grains') return inPackets(x, id, amount);
  if (kind === 'mass' && row.inEach !== undefined) return inEachBottle(x, id, amount);
  const weight = rowWeight(x, row);
  const weighs = (kind === 'volume' && row.kind === 'mass') || (kind === 'mass' && row.kind === 'volume');
  if (!weighs) return { code: 'wrongKind', at: id };
  if (weight === null) return { code: 'noCupWeight', at: id, food: x.choices.source.name };
  return kind === 'volume' ? amount * weight : amount / weight;
}

/** So many cans of the source, g; only of what is sold in cans. */
function inCans(x: Access, id: NumericRowId, cans: number): number | Problem {
  const { can, name } = x.choices.source;
  const weight = x.of('sourceWeight');
  return can === undefined ? { code: 'noCan', at: id, food: name } : cans * x.c('canSize') * weight;
}

/** So many packets of the culture, g; only of what is sold by the packet. */
function inPackets(x: Access, id: NumericRowId, packets: number): number | Problem {
  const { starter, name } = x.choices.grain;
  return starter?.packet === undefined ? { code: 'noPacket', at: id, food: name } : packets * x.c('packet');
}

/** So many g in each bottle, in g per litre of what fills it; nothing where no bottle is filled. */
function inEachBottle(x: Access, id: NumericRowId, grams: number): number | Problem {
  for (const row of ['bottleVolume', 'bottleHeadspace'] as const) {
    if (Number.isNaN(x.of(row))) return { code: 'waits', at: id, for: row };
  }
  const litres = (x.of('bottleVolume') - x.of('bottleHeadspace')) / litre;
  return litres > 0 ? grams / litres : 0;
}

function checkRange(id: NumericRowId, row: NumericRow, value: number): Problem | null {
  const { least, most, whole, zero } = row.range;
  if (!Number.isFinite(value)) return { code: 'unreadable', at: id };
  if (value < 0 && least >= 0) return { code: 'negative', at: id, typed: value };
  if (value === 0 && zero !== true) return { code: 'notPositive', at: id, typed: value };
  if (value > most) return { code: 'tooLarge', at: id, typed: value, most, kind: row.kind };
  if (value < least) return { code: 'tooSmall', at: id, typed: value, least, kind: row.kind };
  if (whole === true && !Number.isInteger(value)) return { code: 'notWhole', at: id, typed: value };
  return null;
}
