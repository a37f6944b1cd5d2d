import type { Formulation } from '../../formula/formulate';
import { describeAbsence } from '../../formula/labels';
import type { NumericRowId } from '../../formula/order';
import { type Kitchen, type Written, writeRow } from '../../formula/write-row';
import { leading } from '../jar/leading';
import { sayings } from './lines';
import type { CellPlace } from './use-cell';

interface Props {
  readonly id: NumericRowId;
  readonly place: CellPlace;
  readonly formulation: Formulation;
  /** The figures that stand in for those that wait for a refused cell; null where none do. */
  readonly good: Formulation | null;
  readonly kitchen: Kitchen;
  /** What was typed, as typed; null where nothing was. */
  readonly typed: string | null;
}

interface Shown {
  readonly first: string;
  readonly second: string | null;
  /** How it came to be there; `stale` from before a slip, `wrong` what was typed and can't be counted. */
  readonly how: 'given' | 'measured' | 'workedOut' | 'absent' | 'stale' | 'wrong' | 'none';
}

/** What a cell of numbers shows: the amount in both units, and how it came to be there. */
export function CellBody(props: Props) {
  const { first, second, how } = showCell(props);
  return (
    <div class={`cell-body ${how}`}>
      <span class="lead">
        <span>{first}</span>
        {how === 'given' && <Pencil />}
        {how === 'measured' && <span class="tag">measured</span>}
      </span>
      {second !== null && <span class="second">{second}</span>}
    </div>
  );
}

const hows: Readonly<Record<Shown['how'], string>> = {
  given: 'typed',
  measured: 'measured',
  workedOut: 'worked out',
  absent: '',
  stale: 'from before, until what is marked is mended',
  wrong: 'typed, and not counted',
  none: '',
};

/** The same as one hears it. */
export function sayCell(props: Props): string {
  const { first, second, how } = showCell(props);
  const as = how === 'given' && props.typed !== null ? `typed as ${props.typed}` : hows[how];
  return [first, second ?? '', as].filter((text) => text !== '').join(', ');
}

function showCell({ id, place, formulation, good, kitchen, typed }: Props): Shown {
  const result = formulation.rows[id];
  if (result.status === 'absent' && result.absence !== null) {
    return { first: place === 'much' ? '–' : describeAbsence(result.absence), second: null, how: 'absent' };
  }
  const own = written(id, place, formulation, kitchen);
  if (own !== null)
    return { ...own, how: result.status === 'given' || result.status === 'measured' ? result.status : 'workedOut' };
  if (typed !== null) return { first: typed, second: null, how: 'wrong' };
  const before = good === null ? null : written(id, place, good, kitchen);
  return before === null ? { first: '–', second: null, how: 'none' } : { ...before, how: 'stale' };
}

function written(id: NumericRowId, place: CellPlace, formulation: Formulation, kitchen: Kitchen) {
  const row = writeRow(formulation, id, kitchen);
  if (row === null) return null;
  const { each, range } = row;
  // One short line under the amount: of spoons and ounces, the spoons. The ounces are in the working.
  const inCell = (one: Written) => leading({ ...one, us: one.spoons ?? one.us }, kitchen.leads);
  const value = inCell(row);
  // What is never one number leads with its range.
  const { first, second } = range === null ? value : { first: range, second: `likely ${value.first}` };
  if (place === 'how') {
    const said = sayings[id]?.(first) ?? first;
    return { first: second === null ? said : `${said} · ${second}`, second: null };
  }
  const jars = formulation.rows.vesselCount.value;
  if (id === 'fillVolume' && typeof jars === 'number')
    return {
      first: jars > 1 ? `${jars} × ${first}` : first,
      second: `${jars > 1 ? `${jars} jars` : '1 jar'} · ${second}`,
    };
  const shared = each === null ? null : `each jar ${inCell(each).first}`;
  return { first, second: [second, shared].filter((text) => text !== null).join(' · ') || null };
}

function Pencil() {
  return (
    <svg class="pencil" viewBox="0 0 16 16" aria-hidden="true">
      <path d="m2 14 1-4L11 2l3 3-8 8-4 1Zm8-11 3 3" />
    </svg>
  );
}
