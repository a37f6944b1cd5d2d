import type { Batch } from '../../batch/document/document';
import type { Store } from '../../batch/store/store';
import type { Formulation, RowResult } from '../../formula/engine/formulate';
import { isMeasuredRow, type NumericRowId } from '../../formula/recipe/order';
import { type Problem, severities } from '../../formula/recipe/problem';
import { numericRows } from '../../formula/rows/sheet';
import { describeAbsence, labelOf } from '../../formula/words/labels';
import { leadingInShort } from '../../formula/words/leading';
import { type Kitchen, type Written, writeRow } from '../../formula/words/write-row';
import { sayings } from './lines';
import type { CellPlace } from './use-cell';

/** What a cell of numbers shows and says: the amount in both units, and how it came to be there. */
export interface CellView extends Shown {
  /** The whole cell as one hears it. */
  readonly name: string;
  readonly status: RowResult['status'];
  /** Whether what can't stand stands here. */
  readonly isWrong: boolean;
}

interface Shown {
  readonly first: string;
  readonly second: string | null;
  /** How it came to be there; `stale` from before a slip, `wrong` what was typed and can't be counted. */
  readonly how: 'given' | 'measured' | 'workedOut' | 'absent' | 'stale' | 'wrong' | 'none';
}

/** The view of one cell of a batch. */
export function viewCell(id: NumericRowId, place: CellPlace, batch: Batch, store: Store): CellView {
  const formulation = store.formulationOf(batch);
  const kitchen = store.settings.value;
  const typed = typedText(id, batch);
  const shown = show(id, place, formulation, store.lastGoodOf(batch), kitchen, typed);
  const { status, problems } = formulation.rows[id];
  return {
    ...shown,
    name: `${labelOf(id)}, ${batch.name}: ${say(shown, typed)}`,
    status,
    isWrong: problems.some(isOwnRefusal),
  };
}

/** What was typed into a cell or, in a row that is only measured, measured; null where nothing was. */
export function typedText(id: NumericRowId, batch: Batch): string | null {
  const given = batch.given.find(({ row }) => row === id);
  if (given !== undefined) return given.text;
  return numericRows[id].typed === 'measured' && isMeasuredRow(id) ? (batch.measured[id]?.text ?? null) : null;
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

function say({ first, second, how }: Shown, typed: string | null): string {
  const as = how === 'given' && typed !== null ? `typed as ${typed}` : hows[how];
  return [first, second ?? '', as].filter((text) => text !== '').join(', ');
}

/** What can't stand is wrong where it stands, not in the cells that wait for it. */
function isOwnRefusal({ code }: Problem): boolean {
  return code !== 'waits' && (severities[code] === 'refusal' || severities[code] === 'conflict');
}

/** Where the figure is missing, what was typed instead; else the figure from before a slip. */
function show(
  id: NumericRowId,
  place: CellPlace,
  formulation: Formulation,
  good: Formulation | null,
  kitchen: Kitchen,
  typed: string | null,
): Shown {
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
  const inCell = (one: Written) => leadingInShort(one, kitchen.leads);
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
      second: jars > 1 ? `${jars} jars · ${second}` : second,
    };
  const shared = each === null ? null : `each jar ${inCell(each).first}`;
  return { first, second: [second, shared].filter((text) => text !== null).join(' · ') || null };
}
