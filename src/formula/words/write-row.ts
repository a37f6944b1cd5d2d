import type { ScoopSet } from '../../measure/scoops';
import type { CupStandardId, Kind } from '../../measure/units';
import { writeMetric, writeNumber, writeTrimmed, writeUS } from '../../measure/write-quantity';
import { isRow } from '../engine/evaluate';
import type { Formulation } from '../engine/formulate';
import { rowWeight } from '../engine/givens';
import type { NumericRowId, RowId } from '../recipe/order';
import { numericRows } from '../rows/sheet';
import { doScoopsDo, inScoops, percentOff, writeInScoops, writeOff } from './in-scoops';
import { onScale } from './on-scale';

/** How this cook measures and reads. */
export interface Kitchen {
  readonly leads: 'metric' | 'us';
  readonly cups: CupStandardId;
  readonly scoops: ScoopSet;
  readonly decimalComma: boolean;
  /** What the scale reads to, g; absent where the cook has not said. */
  readonly scale?: number;
}

export interface Written {
  readonly metric: string;
  /** In US kitchen measure, a solid in spoons and in ounces; null for what has no other unit (a count, a share, a time). */
  readonly us: string | null;
  /** By scoops alone, such as "about ¾ cup"; null for what is not scooped, or better weighed. */
  readonly spoons: string | null;
  /** By how many per cent the scoops are off, below zero where they hold less; null where by no more than 1 %. */
  readonly off: number | null;
}

export interface WrittenRow extends Written {
  /** From where to where it lies, for what is never one number; null for the rest. */
  readonly range: string | null;
  /** From where to where it may come out, for what one number is planned with; null for the rest. */
  readonly spread: string | null;
  /** How much goes into each jar, where there are several and the row is shared among them. */
  readonly each: Written | null;
}

const sharedAmongJars: readonly RowId[] = ['milkVolume', 'sweetenerMass', 'grainMass', 'drinkVolume'];

/** A value in base units as a cook reads it, solids also by the cup where `weight` (g per mL) is known. */
export function writeValue(value: number, kind: Kind, weight: number | null, kitchen: Kitchen): Written {
  const shown = kind === 'mass' ? onScale(value, kitchen.scale) : value;
  const metric = writeMetric(shown, kind, kitchen.decimalComma);
  const us = writeUS(value, kind, kitchen.decimalComma);
  const volume = kind === 'volume' ? value : kind === 'mass' && weight !== null ? value / weight : null;
  if (volume === null) return { metric, us, spoons: null, off: null };
  const scooped = inScoops(volume, kitchen);
  if (us !== null && Number.isFinite(value) && !doScoopsDo(scooped))
    return { metric, us: `${us}, weigh${hardSpace}it`, spoons: null, off: null };
  const spoons = writeInScoops(scooped);
  const off = percentOff(scooped);
  const told = off === null ? spoons : `${spoons}, ${writeOff(off)}`;
  return { metric, us: us === null ? told : `${told} · ${us}`, spoons, off };
}

const hardSpace = '\u00A0';

/** A numeric row's value in metric and US kitchen measure, and the share of each jar; null where it has no value. */
export function writeRow(formulation: Formulation, id: RowId, kitchen: Kitchen): WrittenRow | null {
  const { value } = formulation.rows[id];
  if (typeof value !== 'number' || !isRow(id)) return null;
  const { metric, us, spoons, off } = writeNumeric(formulation, id, value, kitchen);
  const jars = formulation.rows.vesselCount.value;
  const shares = typeof jars === 'number' && jars > 1 && sharedAmongJars.includes(id);
  const range = writeRange(formulation, id, kitchen);
  const planned = numericRows[id].typed !== 'never';
  return {
    metric,
    us,
    spoons,
    off,
    range: planned ? null : range,
    spread: planned ? range : null,
    each: shares ? writeNumeric(formulation, id, value / jars, kitchen) : null,
  };
}

/** The range that a row lies in, such as `8–16 h`. */
function writeRange(formulation: Formulation, id: NumericRowId, kitchen: Kitchen): string | null {
  const { range } = formulation.rows[id];
  if (range === null) return null;
  const [low, high] = [range.low, range.high].map((end) => {
    const { metric, us } = writeAmount(formulation, id, end, kitchen);
    // A volume in cups and spoons is too long to stand twice, and has its likely one beside it.
    return kitchen.leads === 'us' && numericRows[id].kind === 'pressure' ? (us ?? metric) : metric;
  });
  if (low === undefined || high === undefined || low === high) return null;
  const [number = low, unit] = low.split(hardSpace);
  return unit !== undefined && high.endsWith(`${hardSpace}${unit}`) ? `${number}–${high}` : `${low} – ${high}`;
}

/** Any value of a row's kind, written as that row is: also one that was typed, planned or measured. */
export function writeNumeric(formulation: Formulation, id: NumericRowId, value: number, kitchen: Kitchen): Written {
  const written = writeAmount(formulation, id, value, kitchen);
  const { shareOf } = numericRows[id];
  if (shareOf === undefined) return written;
  const brimful = formulation.rows[shareOf].value;
  if (typeof brimful !== 'number') return written;
  const share = writeNumber((100 * value) / brimful, 0, kitchen.decimalComma);
  return { ...written, metric: `${written.metric} (${share}${hardSpace}%)` };
}

/** The same without the share that a room is written with, which a difference is no share of. */
export function writeAmount(formulation: Formulation, id: NumericRowId, value: number, kitchen: Kitchen): Written {
  const row = numericRows[id];
  const plain = writeValue(value, row.kind, rowWeight(formulation.evaluation, row), kitchen);
  const written = row.weighing === 'grains' ? inPackets(plain, value, formulation, kitchen) : plain;
  return row.unit === undefined ? written : { ...written, metric: `${written.metric}${hardSpace}${row.unit}` };
}

/** What is sold by the packet is counted in packets in place of spoons. */
function inPackets(plain: Written, value: number, { choices, evaluation }: Formulation, kitchen: Kitchen): Written {
  if (choices.grain.starter?.packet === undefined) return plain;
  const packets = writeTrimmed(value / evaluation.c('packet'), 1, kitchen.decimalComma);
  const told = `${packets}${hardSpace}${packets === '1' ? 'packet' : 'packets'}`;
  return { ...plain, us: told, spoons: null, off: null };
}
