import type { KeptBlend, KeptClass, Stock, StockLine } from '../document/document';
import { mostStockLines } from '../document/document-limits';
import { type ListName, listWords } from '../document/kept-lists';
import { writeSorted } from '../document/same-data';
import type { SheetLists } from '../document/sheet-lists';

/** What of each list a sheet has no room for, by name. */
export type NoRoomInLists = { readonly [K in ListName]: readonly string[] };

interface JoinedLists {
  readonly joined: SheetLists;
  readonly noRoom: NoRoomInLists;
}

/** Under which id a batch of the file goes here. */
type MoveTo = (named: { readonly batch: string; readonly name: string | null }) => string;

/**
 * The lists of a sheet joined with those of a file: of what has one name yours stays, a jar of grains that both know, by a
 * line that both have, has the lines of both, and a class or a blend that differs comes in under a key of its own. `moveTo` says under which id a
 * batch of the file goes here.
 */
export function joinLists(mine: SheetLists, theirs: SheetLists, moveTo: MoveTo): JoinedLists {
  const stocks = joinStocks(mine.stocks, theirs.stocks, moveTo);
  const lists = {
    ownFoods: keepRoom(
      'ownFoods',
      addNew(mine.ownFoods, theirs.ownFoods, ({ name }) => name),
      ({ name }) => name,
    ),
    stocks: keepRoom('stocks', stocks.joined, ({ name }) => name),
    cartons: keepRoom(
      'cartons',
      addNew(mine.cartons, theirs.cartons, ({ name }) => name),
      ({ name }) => name,
    ),
    packages: keepRoom(
      'packages',
      addNew(mine.packages, theirs.packages, ({ food }) => food),
      ({ name, food }) => name ?? food,
    ),
    classes: keepRoom(
      'classes',
      addOthers(
        mine.classes,
        theirs.classes.map((one) => moveClass(one, moveTo)),
        sayingOfClass,
      ),
      ({ name }) => name,
    ),
    blends: keepRoom(
      'blends',
      addOthers(
        mine.blends,
        theirs.blends.map((one) => moveBlend(one, moveTo)),
        sayingOfBlend,
      ),
      ({ name }) => name,
    ),
  };
  const { ownFoods, cartons, packages, classes, blends } = lists;
  return {
    joined: {
      ownFoods: ownFoods.kept,
      stocks: lists.stocks.kept,
      cartons: cartons.kept,
      packages: packages.kept,
      classes: classes.kept,
      blends: blends.kept,
    },
    noRoom: {
      ownFoods: ownFoods.over,
      stocks: [...lists.stocks.over, ...stocks.full],
      cartons: cartons.over,
      packages: packages.over,
      classes: classes.over,
      blends: blends.over,
    },
  };
}

function keepRoom<T>(list: ListName, joined: readonly T[], nameOf: (one: T) => string) {
  const { most } = listWords[list];
  return { kept: joined.slice(0, most), over: joined.slice(most).map(nameOf) };
}

/** Those of the file that are not there by this name, after yours. */
function addNew<T>(mine: readonly T[], theirs: readonly T[], nameOf: (one: T) => string): readonly T[] {
  const known = new Set(mine.map(nameOf));
  return [...mine, ...theirs.filter((one) => !known.has(nameOf(one)))];
}

interface Keyed {
  readonly key: string;
}

/** Those of the file that differ from all of yours, whatever their keys, each under a key that none has. */
function addOthers<T extends Keyed>(
  mine: readonly T[],
  theirs: readonly T[],
  sayingOf: (one: T) => string,
): readonly T[] {
  const said = new Set(mine.map(sayingOf));
  const keys = new Set(mine.map(({ key }) => key));
  const added = theirs.filter((one) => {
    const saying = sayingOf(one);
    if (said.has(saying)) return false;
    said.add(saying);
    return true;
  });
  return [...mine, ...added.map((one) => ({ ...one, key: freeKey(one.key, keys) }))];
}

/** This key, or one like it that is free; taken from now on. */
function freeKey(key: string, taken: Set<string>): string {
  let free = key;
  for (let number = 2; taken.has(free); number += 1) free = `k${number}`;
  taken.add(free);
  return free;
}

function joinStocks(mine: readonly Stock[], theirs: readonly Stock[], moveTo: MoveTo) {
  const joined = [...mine];
  const keys = new Set(mine.map(({ key }) => key));
  const known = mine.map(({ lines }) => new Set(lines.map(sayingOfLine)));
  const full: string[] = [];
  for (const one of theirs) {
    const moved = { ...one, lines: one.lines.map((line) => moveLine(line, moveTo)) };
    const place = placeOfSame(mine, known, one);
    const own = joined[place];
    if (own === undefined) {
      joined.push({ ...moved, key: freeKey(one.key, keys) });
      continue;
    }
    const lines = addNew(own.lines, moved.lines, sayingOfLine);
    if (lines.length > mostStockLines) full.push(one.name);
    else joined[place] = { ...own, lines };
  }
  return { joined, full };
}

const ofNoLine = 0.5;

/**
 * Where the same jar of grains is here: the one that most of its lines are in. Its key says nothing, as everybody’s first
 * jar has the same one; only of a jar without a line there is nothing else to go by, and a line in common says more.
 * -1 where it is not here.
 */
function placeOfSame(mine: readonly Stock[], known: readonly ReadonlySet<string>[], one: Stock): number {
  const lines = [...new Set(one.lines.map(sayingOfLine))];
  const alike = mine.map((other, at): number => {
    if (other.grains !== one.grains) return 0;
    const isEmpty = lines.length === 0 || other.lines.length === 0;
    if (isEmpty)
      return other.key === one.key || (lines.length === other.lines.length && other.name === one.name) ? ofNoLine : 0;
    return lines.filter((line) => known[at]?.has(line)).length;
  });
  const most = Math.max(0, ...alike);
  return most === 0 ? -1 : alike.indexOf(most);
}

function moveLine(line: StockLine, moveTo: MoveTo): StockLine {
  return line.batch === undefined ? line : { ...line, batch: moveTo({ batch: line.batch, name: line.name ?? '' }) };
}

function moveClass(one: KeptClass, moveTo: MoveTo): KeptClass {
  return { ...one, of: moveTo({ batch: one.of, name: null }) };
}

function moveBlend(one: KeptBlend, moveTo: MoveTo): KeptBlend {
  return { ...one, parts: one.parts.map((part) => ({ ...part, of: moveTo({ batch: part.of, name: part.name }) })) };
}

/** What a line says, under whatever id its batch goes here. */
function sayingOfLine({ batch: _, ...rest }: StockLine): string {
  return writeSorted(rest);
}

function sayingOfClass({ key: _, ...rest }: KeptClass): string {
  return writeSorted(rest);
}

function sayingOfBlend({ key: _, parts, ...rest }: KeptBlend): string {
  return writeSorted([rest, parts.map(({ of: __, ...part }) => part)]);
}
