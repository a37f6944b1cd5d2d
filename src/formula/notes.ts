import { kitchen } from '../reference/kitchen';
import type { Evaluation } from './evaluate';
import { fermentableOf } from './models/blend';
import { nativeRange } from './native';
import type { NumericRowId, RowId } from './order';
import type { Problem } from './problem';
import { numericRows } from './sheet';

/** What is worth knowing about a number that stands: outside its usual range, several jars, an estimated sugar. */
export function notesFor(id: RowId, x: Evaluation): readonly Problem[] {
  const own = byRow[id]?.(x) ?? [];
  return id in numericRows && isNumericRow(id) ? [...own, ...outsideUsual(id, x)] : own;
}

function isNumericRow(id: RowId): id is NumericRowId {
  return id in numericRows;
}

function outsideUsual(id: NumericRowId, x: Evaluation): readonly Problem[] {
  const row = numericRows[id];
  const value = x.of(id);
  const range = row.usual?.(x) ?? null;
  if (range === null || !Number.isFinite(value)) return [];
  const slack = 1e-9; // tolerance
  if (value >= range.low * (1 - slack) && value <= range.high * (1 + slack)) return [];
  return [{ code: 'outsideUsual', at: id, low: range.low, high: range.high, kind: row.kind }];
}

const byRow: Readonly<Partial<Record<RowId, (x: Evaluation) => readonly Problem[]>>> = {
  sweetener: (x) =>
    x.choices.sweetener
      .filter(({ entry }) => entry.refused !== undefined)
      .map(({ entry }) => ({
        code: 'nothingToFerment',
        at: 'sweetener',
        sweetener: entry.name,
        reason: entry.refused ?? '',
      })),
  vesselCount: (x) => {
    const jars = x.of('vesselCount');
    const chosen = x.plan.accepted.has('vesselCount') || x.plan.sizedFrom === 'jar';
    return jars > 1 && !chosen ? [{ code: 'severalJars', at: 'vesselCount', jars }] : [];
  },
  headspaceDepth: (x) => {
    const actual = x.of('headspaceDepth');
    const wise = kitchen.headspaceDepth.low ?? 0;
    const slack = 1e-9; // tolerance
    return actual < wise * (1 - slack) ? [{ code: 'headspaceUnderWise', at: 'headspaceDepth', actual, wise }] : [];
  },
  blendWater: (x) => {
    const own = x.of('ownLiquid');
    return own > 0 ? [{ code: 'ownWater', at: 'blendWater', volume: own / x.of('waterDensity') }] : [];
  },
  sugarRate: (x) => {
    if (x.plan.sugarBy !== 'usual') return [];
    const lowered = x.c('sugarUsual') - x.of('sugarRate');
    return lowered > 0 ? [{ code: 'nativeCounted', at: 'sugarRate', native: x.of('nativeSugar'), lowered }] : [];
  },
  sweetenerMass: (x) => {
    const { value, low, high } = fermentableOf(x.choices.sweetener, x.choices.grain.takes);
    if (!(high > low) || !(low > 0)) return [];
    const mass = x.of('sweetenerMass') * value;
    return [{ code: 'sugarEstimated', at: 'sweetenerMass', low: mass / high, high: mass / low }];
  },
  startingSugar: (x) => {
    const { low, high, value } = nativeRange(x);
    const native = x.of('nativeSugar');
    if (!(high > low) || !(value > 0)) return [];
    const added = x.of('sugarRate');
    const slack = 1e-3; // tolerance
    if ((high - low) / value < slack) return [];
    return [
      {
        code: 'sugarEstimated',
        at: 'startingSugar',
        low: added + (native * low) / value,
        high: added + (native * high) / value,
      },
    ];
  },
  finalPH: (x) => {
    const measured = x.of('finalPH');
    const line = kitchen.acidityLine.value;
    return x.standing.values.has('finalPH') && measured >= line ? [{ code: 'notAcid', at: 'finalPH', measured }] : [];
  },
};
