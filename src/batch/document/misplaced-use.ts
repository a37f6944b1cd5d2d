import { isOnHandRow } from '../../formula/recipe/order';

type Data = Readonly<Record<string, unknown>>;

/**
 * The data of a sheet without the mark that a typed amount is all there is where none can bear it: read as not there,
 * and nothing else of the sheet is changed. The very data where there is no such mark.
 */
export function withoutMisplacedUse(data: unknown): unknown {
  return changeList(data, 'batches', (batch) => changeList(batch, 'given', withoutUse));
}

function withoutUse(cell: unknown): unknown {
  if (!isData(cell) || cell.use === undefined) return cell;
  if (typeof cell.row !== 'string' || isOnHandRow(cell.row)) return cell;
  const { use: _, ...rest } = cell;
  return rest;
}

function changeList(data: unknown, key: string, change: (one: unknown) => unknown): unknown {
  const list = isData(data) ? data[key] : null;
  if (!isData(data) || !Array.isArray(list)) return data;
  const changed = list.map(change);
  return changed.every((one, at) => one === list[at]) ? data : { ...data, [key]: changed };
}

function isData(data: unknown): data is Data {
  return typeof data === 'object' && data !== null && !Array.isArray(data);
}
