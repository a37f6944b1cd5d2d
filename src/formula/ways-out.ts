import { type JarId, jars } from '../reference/jars';
import { type Change, changeRecipe } from './change';
import { isRow } from './evaluate';
import { type Formulation, formulate } from './formulate';
import { labelOf } from './labels';
import { makeFrom } from './on-hand';
import { amountRows, isMeasuredRow, measuredRows, type NumericRowId, type RowId } from './order';
import { type Problem, severities } from './problem';
import { numericRows } from './sheet';

/** A way out of a problem, as a button: it does what it says and nothing else. */
export interface WayOut {
  readonly label: string;
  readonly changes: readonly Change[];
}

/**
 * The ways out of a problem, the least intrusive first; none where it only tells. Each is tried before it is offered:
 * after it the row no longer has this problem.
 */
export function waysOut(problem: Problem, formulation: Formulation): readonly WayOut[] {
  return proposals(problem, formulation).filter((way) => isWayOut(way, problem, formulation));
}

function isWayOut({ changes }: WayOut, { at, code }: Problem, { recipe }: Formulation): boolean {
  const { problems } = formulate(changeRecipe(recipe, changes)).rows[at];
  return problems.every((problem) => problem.code !== code);
}

function proposals(problem: Problem, formulation: Formulation): readonly WayOut[] {
  switch (problem.code) {
    case 'overBrim':
    case 'headspaceUnderWise':
      return [...roomier(formulation), ...forgetMeasured(measuredRows, formulation)];
    case 'headspaceTooDeep':
      return letGo([problem.at, 'brimful'], formulation);
    case 'measuredImpossible':
      return forgetMeasured([problem.at], formulation);
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
          changes: makeFrom(problem.stock, formulation),
        },
        { label: `Forget the ${problem.stock} on hand`, changes: [{ do: 'forget', stock: problem.stock }] },
      ];
    default:
      return severities[problem.code] === 'refusal'
        ? [...letGo([problem.at], formulation), ...forgetMeasured([problem.at], formulation)]
        : [];
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

/** Forgetting what was measured in each of these rows. */
function forgetMeasured(rows: readonly RowId[], { recipe }: Formulation): readonly WayOut[] {
  return rows
    .filter(isMeasuredRow)
    .filter((row) => recipe.measured[row] !== undefined)
    .map((row) => ({
      label: `Forget what was measured for “${labelOf(row)}”`,
      changes: [{ do: 'unmeasure', row }],
    }));
}

/** More room: more jars, the next jar up, or letting go of what asks for so much in so few. */
function roomier(formulation: Formulation): readonly WayOut[] {
  const made = [moreJars(formulation), nextJarUp(formulation)].filter((way) => way !== null);
  return [
    ...made,
    ...letGo(['vesselCount', 'headspaceDepth', 'headspaceVolume', 'brimful', ...amountRows], formulation),
  ];
}

/** The fewest jars of this kind that keep the headspace; null where the batch is made to fill its jars. */
function moreJars({ of, evaluation }: Formulation): WayOut | null {
  if (evaluation.plan.ways.fillVolume !== 'shared') return null;
  const slack = 1e-9; // tolerance
  const needed = Math.ceil(of('totalFill') / of('fillAllowed') - slack);
  const { most } = numericRows.vesselCount.range;
  if (!(needed <= most) || needed <= of('vesselCount')) return null;
  return {
    label: `Use ${needed} jars`,
    changes: [{ do: 'type', row: 'vesselCount', text: String(needed), kind: 'count', amount: needed }],
  };
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
