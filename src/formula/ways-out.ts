import { type JarId, jars } from '../reference/jars';
import { isRow } from './evaluate';
import { type Formulation, formulate } from './formulate';
import { labelOf } from './labels';
import { type NumericRowId, type RowId, type StockId, stockRows } from './order';
import { type Problem, severities } from './problem';

/** One change to what is typed; a way out is a few of them, taken together. */
export type Change =
  | { readonly do: 'clear'; readonly row: NumericRowId }
  | { readonly do: 'type'; readonly row: NumericRowId; readonly text: string; readonly use?: 'onHand' }
  | { readonly do: 'vessel'; readonly vessel: JarId }
  | { readonly do: 'forget'; readonly stock: StockId };

/** A way out of a problem, as a button: it does what it says and nothing else. */
export interface WayOut {
  readonly label: string;
  readonly changes: readonly Change[];
}

/** The ways out of a problem, the least intrusive first; none where it only tells. */
export function waysOut(problem: Problem, formulation: Formulation): readonly WayOut[] {
  switch (problem.code) {
    case 'overBrim':
    case 'headspaceUnderWise':
      return roomier(formulation, problem.at);
    case 'conflict': {
      const asksRoom = problem.at === 'headspaceDepth' || problem.at === 'headspaceVolume';
      const first = asksRoom ? [moreJars(formulation), nextJarUp(formulation)].filter((way) => way !== null) : [];
      return [...first, ...letGo([problem.at, ...problem.with], formulation)];
    }
    case 'noRatio':
      return letGo(problem.rows, formulation);
    case 'gels': {
      const typed = typedRows(formulation);
      const ratios = typed.filter((row) => row === 'waterRatio' || row === 'milkSolids');
      return letGo(ratios.length > 0 ? ratios : typed.filter((row) => settlesRatio.includes(row)), formulation);
    }
    case 'noRoomForMilk':
      return letGo(
        typedRows(formulation).filter((row) => takesRoom.includes(row)),
        formulation,
      );
    case 'moreThanOnHand':
      return [
        {
          label: `Make the largest batch from ${problem.text}`,
          changes: makeFrom(problem.stock, problem.text, formulation),
        },
        { label: 'Forget what is on hand', changes: [{ do: 'forget', stock: problem.stock }] },
      ];
    default:
      return severities[problem.code] === 'refusal' ? letGo([problem.at], formulation) : [];
  }
}

/** Typed amounts that settle the water ratio between them, and typed amounts that leave the milk its room. */
const settlesRatio: readonly NumericRowId[] = ['sourceMass', 'blendWater', 'milkVolume', 'fillVolume', 'drinkVolume'];
const takesRoom: readonly NumericRowId[] = [
  'sweetenerMass',
  'caneEquivalent',
  'grainMass',
  'drinkVolume',
  'fillVolume',
];

function typedRows({ recipe }: Formulation): readonly NumericRowId[] {
  return recipe.given.map(({ row }) => row);
}

/** Clearing each of these rows, of those that are typed. */
function letGo(rows: readonly RowId[], formulation: Formulation): readonly WayOut[] {
  const typed = typedRows(formulation);
  return [...new Set(rows)]
    .filter((row): row is NumericRowId => isRow(row) && typed.includes(row))
    .map((row) => ({ label: `Let “${labelOf(row)}” go`, changes: [{ do: 'clear', row }] }));
}

/** More room: more jars, the next jar up, or letting go of what asks for so much in so few. */
function roomier(formulation: Formulation, at: RowId): readonly WayOut[] {
  const { sizedFrom } = formulation;
  const others: readonly RowId[] = sizedFrom === 'jar' ? [] : [sizedFrom];
  const made = [moreJars(formulation), nextJarUp(formulation)].filter((way) => way !== null);
  return [...made, ...letGo(['vesselCount', at, ...others], formulation)];
}

/** The fewest jars of this kind that keep the headspace; null where the batch is made to fill its jars. */
function moreJars({ of, sizedFrom }: Formulation): WayOut | null {
  if (sizedFrom === 'jar' || sizedFrom === 'vesselCount' || sizedFrom === 'fillVolume') return null;
  const slack = 1e-9; // tolerance
  const needed = Math.ceil(of('totalFill') / of('fillAllowed') - slack);
  if (!Number.isFinite(needed) || needed <= of('vesselCount')) return null;
  return { label: `Use ${needed} jars`, changes: [{ do: 'type', row: 'vesselCount', text: String(needed) }] };
}

/** The smallest kind of jar, among those bigger than this one, in which the same batch keeps its headspace. */
function nextJarUp(formulation: Formulation): WayOut | null {
  const { recipe, of } = formulation;
  const asked = of('headspaceAsked');
  const brimful = of('brimful');
  const ownCapacity = recipe.given.some(({ row }) => row === 'brimful');
  const given = recipe.given.filter(({ row }) => row !== 'brimful');
  for (const vessel of jarsBySize) {
    if (jars[vessel].brimful.value <= brimful) continue;
    const { rows } = formulate({ ...recipe, given, vessel });
    const depth = rows.headspaceDepth.value;
    const slack = 1e-9; // tolerance
    if (typeof depth !== 'number' || depth < asked - slack || rows.headspaceVolume.status === 'refused') continue;
    const name = jars[vessel].name;
    return ownCapacity
      ? {
          label: `Take “${name}” and let “${labelOf('brimful')}” go`,
          changes: [
            { do: 'clear', row: 'brimful' },
            { do: 'vessel', vessel },
          ],
        }
      : { label: `Take “${name}”`, changes: [{ do: 'vessel', vessel }] };
  }
  return null;
}

function isJar(id: string): id is JarId {
  return Object.hasOwn(jars, id);
}

const jarsBySize: readonly JarId[] = Object.keys(jars)
  .filter(isJar)
  .filter((id) => id !== 'own')
  .sort((a, b) => jars[a].brimful.value - jars[b].brimful.value);

/** Sizes the batch from what is on hand: lets go of every other amount and types the stock into its row. */
export function makeFrom(stock: StockId, text: string, formulation: Formulation): readonly Change[] {
  const sizing: readonly NumericRowId[] = [
    ...(['vesselCount', 'fillVolume', 'sourceMass', 'blendWater', 'milkVolume', 'drinkVolume', 'servings'] as const),
    ...(['sweetenerMass', 'caneEquivalent', 'grainMass'] as const),
  ];
  const cleared = typedRows(formulation).filter((row) => sizing.includes(row));
  const row = stockRows[stock];
  const use = stock === 'sweetener' || stock === 'grains' ? { use: 'onHand' as const } : {};
  return [...cleared.map((each): Change => ({ do: 'clear', row: each })), { do: 'type', row, text, ...use }];
}
