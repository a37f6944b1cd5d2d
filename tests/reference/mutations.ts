import type { Check } from './check';
import { checks } from './checks';
import { type Figure, figuresIn, findAt, isRecord, type Leaf, type Path, plant } from './figures';
import type { Tables } from './tables';

/** One figure changed, or two exchanged, and how. */
interface Mutation {
  readonly how: string;
  readonly changes: readonly { readonly path: Path; readonly leaf: unknown }[];
}

// Words and where they are from, in which there is no figure: whether a note is a caution is a matter of its own tests.
const inWords: readonly (keyof Tables)[] = ['cautions', 'sourceNotes', 'sweetenerNotes', 'growthModel'];

/** Two neighbouring digits that differ exchanged: 4.07 becomes 0.47, 143 becomes 413. */
function transpositions(number: number): readonly number[] {
  const written = String(Math.abs(number));
  const digits = [...written].map((_, at) => at).filter((at) => /\d/.test(written[at] ?? ''));
  return digits.slice(1).map((second, index) => {
    const first = digits[index] ?? second;
    const exchanged = [...written];
    [exchanged[first], exchanged[second]] = [written[second] ?? '', written[first] ?? ''];
    return Math.sign(number) * Number(exchanged.join(''));
  });
}

function otherLeaves(leaf: Leaf): readonly (readonly [string, Leaf])[] {
  if (leaf === null) return [['made zero', 0]];
  if (typeof leaf === 'boolean') return [['turned round', !leaf]];
  if (leaf === 0) {
    return [
      ['made one', 1],
      ['lost', null],
    ];
  }
  return [
    ['ten times as much', leaf * 10],
    ['a tenth', leaf / 10],
    ['5 % more', leaf * 1.05],
    ['5 % less', leaf * 0.95],
    ['with its sign turned', -leaf],
    ['lost', null],
    ...transpositions(leaf).map((other): readonly [string, Leaf] => ['with two digits exchanged', other]),
  ];
}

function alter({ path, leaf }: Figure): readonly Mutation[] {
  return otherLeaves(leaf)
    .filter(([, other]) => !Object.is(other, leaf) && other !== leaf)
    .map(([how, other]) => ({ how: `${path.join('.')} ${how}`, changes: [{ path, leaf: other }] }));
}

/** A figure exchanged with the next of the same row, and with the same of the next row. */
function exchange(tables: Tables, { path, leaf }: Figure): readonly Mutation[] {
  return path.flatMap((key, depth) => {
    const row = findAt(tables, path.slice(0, depth));
    if (depth === 0 || !isRecord(row)) return [];
    const keys = Object.keys(row);
    const next = keys[keys.indexOf(key) + 1];
    if (next === undefined) return [];
    const beside = path.with(depth, next);
    const other = findAt(tables, beside);
    if (typeof other !== 'number' || other === leaf) return [];
    return [
      {
        how: `${path.join('.')} exchanged with ${beside.join('.')}`,
        changes: [
          { path, leaf: other },
          { path: beside, leaf },
        ],
      },
    ];
  });
}

/** A coefficient said in another unit. */
function misnameUnits(tables: Tables, figures: readonly Figure[]): readonly Mutation[] {
  return figures.flatMap(({ path }) => {
    const at = [...path.slice(0, -1), 'unit'];
    const unit = path.at(-1) === 'value' ? findAt(tables, at) : undefined;
    if (typeof unit !== 'string') return [];
    return [{ how: `${at.join('.')} misnamed`, changes: [{ path: at, leaf: unit === 'g' ? 'mL' : 'g' }] }];
  });
}

/** Every figure of the tables changed in turn, each in several ways. */
export function mutationsOf(tables: Tables): readonly Mutation[] {
  const figures = Object.entries(tables)
    .filter(([name]) => !inWords.some((word) => word === name))
    .flatMap(([name, table]) => figuresIn(table, [name]));
  return [
    ...figures.flatMap(alter),
    ...figures.flatMap((figure) => exchange(tables, figure)),
    ...misnameUnits(tables, figures),
  ];
}

/** The mutations that no check finds. The tables given are a copy, changed and put back; what reads the table is asked first. */
export function survivorsOf(copy: Tables, mutations: readonly Mutation[]): readonly string[] {
  const asked = new Map<string, readonly Check[]>();
  const checksOf = (name: string): readonly Check[] => {
    const known = asked.get(name) ?? checks.filter(({ reads }) => reads.some((table) => table === name));
    asked.set(name, known);
    return known;
  };
  return mutations
    .filter(({ changes }) => {
      const before = changes.map(({ path }) => ({ path, leaf: findAt(copy, path) }));
      for (const { path, leaf } of changes) plant(copy, path, leaf);
      const found = checksOf(changes[0]?.path[0] ?? '').some(({ faults }) => faults(copy).length > 0);
      for (const { path, leaf } of before) plant(copy, path, leaf);
      return !found;
    })
    .map(({ how }) => how);
}
