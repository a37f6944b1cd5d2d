import type { Formulation } from '../engine/formulate';
import { leading } from '../words/leading';
import { type Kitchen, writeRow, writeValue } from '../words/write-row';
import type { NextBatch } from './next-batch';
import type { HasteRowId } from './ready-in';
import { writeTyped } from './ready-in-way';

const things: Readonly<Record<HasteRowId, { readonly more: string; readonly less: string }>> = {
  roomTemperature: { more: 'A warmer place', less: 'A cooler place' },
  grainRate: { more: 'More grains', less: 'Fewer grains' },
  startingSugar: { more: 'More sugar at the start', less: 'Less sugar at the start' },
};

/** What to do next time, in a sentence such as `More grains: 60 g/L instead of 54 g/L, so 45 g.` */
export function describeNext(next: NextBatch, kitchen: Kitchen): string {
  switch (next.do) {
    case 'asItIs':
      return 'It was to your taste: make it as it is.';
    case 'wait':
      return 'It was looked at before its time: make it as it is, and look later.';
    case 'longer':
      return 'Leave it longer, and nothing else.';
    case 'sooner':
      return 'Strain it sooner, and nothing else.';
    case 'change': {
      const { row, now, way, after } = next;
      const to = after.rows[row].value;
      const thing = things[row][typeof to === 'number' && to < now ? 'less' : 'more'];
      return `${thing}: ${way.text} instead of ${writeTyped(row, now, kitchen)}${onScale(row, after, kitchen)}.`;
    }
  }
}

/** What the change comes to on the scale; nothing for a place. */
function onScale(row: HasteRowId, after: Formulation, kitchen: Kitchen): string {
  if (row === 'roomTemperature') return '';
  const written = writeRow(after, row === 'grainRate' ? 'grainMass' : 'sweetenerMass', kitchen);
  if (written === null) return '';
  return `, so ${leading(written, kitchen.leads).first} of ${row === 'grainRate' ? 'grains' : 'sweetener'}`;
}

/** When to taste the next batch: `Next time taste from 7.7 h, likely 11.6 h; it was 12 h.` */
export function describeNextTime({ rows }: Formulation, was: number | null, kitchen: Kitchen): string | null {
  const { value, range } = rows.readyTime;
  if (typeof value !== 'number' || range === null) return null;
  const write = (hours: number): string => writeValue(hours, 'time', null, kitchen).metric;
  const before = was === null || write(was) === write(value) ? '' : `; it was ${write(was)}`;
  return `Next time taste from ${write(range.low)}, likely ${write(value)}${before}.`;
}
