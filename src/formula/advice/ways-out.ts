import { rounding, wholeAbove } from '../../measure/nearly';
import { writeTrimmed } from '../../measure/write-quantity';
import { type JarId, jars } from '../../reference/jars';
import { isRow } from '../engine/evaluate';
import { type Formulation, formulate } from '../engine/formulate';
import { amountRows, isMeasuredRow, measuredRows, type NumericRowId, type RowId } from '../recipe/order';
import { type Problem, type ProblemCode, severities } from '../recipe/problem';
import { numericRows } from '../rows/sheet';
import { labelOf } from '../words/labels';
import { emptierBottle, roomWithinModels, underLimit, unsealed } from './bottle-ways-out';
import { makeFrom } from './on-hand';
import { inOtherDegrees } from './other-degrees';
import { type Change, changeRecipe } from './typed-change';
import { letGo, typedRows, type WayOut } from './way-out';

export type { WayOut } from './way-out';

/**
 * The ways out of a problem, the least intrusive first; none where it only tells. Each is tried before it is offered:
 * after it the row no longer has this problem.
 */
export function waysOut(problem: Problem, formulation: Formulation): readonly WayOut[] {
  return proposals(problem, formulation).filter((way) => isWayOut(way, problem, formulation));
}

function isWayOut({ changes }: WayOut, { at, code }: Problem, { recipe }: Formulation): boolean {
  const { rows } = formulate(changeRecipe(recipe, changes));
  // What is sized from another row runs over there instead.
  const [row, gone] = code === 'runsOver' ? (['headspaceVolume', 'overBrim'] as const) : [at, code];
  // What is typed on the way must stand as well: a figure refused elsewhere would only hide the problem.
  const typed = changes.flatMap((change) => (change.do === 'type' ? [change.row] : []));
  return (
    rows[row].problems.every((problem) => problem.code !== gone) &&
    (!bottleProblems.includes(code) || [row, ...typed].every((id) => rows[id].status !== 'refused'))
  );
}

/** What belongs to a bottle: a way out of it must leave a bottle that can be worked out, or none. */
const bottleProblems: readonly ProblemCode[] = ['overLimit', 'noSugarUnderLimit', 'bottleTooFull', 'outsideModels'];

function proposals(problem: Problem, formulation: Formulation): readonly WayOut[] {
  switch (problem.code) {
    case 'overBrim':
    case 'runsOver':
    case 'headspaceUnderWise':
      return [...roomier(formulation), ...forgetMeasured(measuredRows, formulation)];
    case 'headspaceTooDeep':
      return letGo([problem.at, 'brimful'], formulation);
    case 'measuredImpossible':
    case 'hardlyPressed':
      return forgetMeasured([problem.at], formulation);
    case 'moreOutThanIn':
      return forgetMeasured(['milkVolume', 'pulpMass'], formulation);
    case 'unitMeant':
      return [...asMeant(problem), ...forgetMeasured([problem.at], formulation)];
    case 'conflict': {
      const asksRoom = problem.at === 'headspaceDepth' || problem.at === 'headspaceVolume';
      const first = asksRoom ? [moreJars(formulation), nextJarUp(formulation)].filter((way) => way !== null) : [];
      return [...first, ...letGo([problem.at, ...problem.with], formulation)];
    }
    case 'nearlyAgrees':
      return letGo([problem.at], formulation);
    case 'severalJars':
      return fewerJars(problem.jars - 1, formulation);
    case 'noRatio':
      return letGo(problem.rows, formulation);
    case 'gels': {
      const typed = typedRows(formulation);
      const ratios = typed.filter((row) => row === 'waterRatio' || row === 'milkSolids');
      return [
        wetEnough(problem.least),
        ...letGo(ratios.length > 0 ? ratios : typed.filter((row) => settlesRatio.includes(row)), formulation),
      ];
    }
    case 'noRoomForMilk':
      return letGo(
        typedRows(formulation).filter((row) => takesRoom.includes(row)),
        formulation,
      );
    case 'overLimit':
      return [...underLimit(formulation), ...unsealed];
    case 'noSugarUnderLimit':
      return unsealed;
    case 'bottleTooFull':
      return [...emptierBottle(problem.least), ...letGo([problem.at], formulation)];
    case 'outsideModels':
      return roomWithinModels(problem, formulation);
    case 'tooLarge':
    case 'tooSmall':
      return [...degreesMeant(problem), ...takeBack(problem.at, formulation)];
    case 'moreThanOnHand':
      return [
        {
          label: `Make the largest batch from ${problem.text}`,
          changes: makeFrom(problem.stock, formulation),
        },
        { label: `Forget the ${problem.stock} on hand`, changes: [{ do: 'forget', stock: problem.stock }] },
      ];
    default:
      return severities[problem.code] === 'refusal' ? takeBack(problem.at, formulation) : [];
  }
}

/** Without what was typed or measured there. */
function takeBack(row: RowId, formulation: Formulation): readonly WayOut[] {
  return [...letGo([row], formulation), ...forgetMeasured([row], formulation)];
}

function degreesMeant({ at, typed, kind }: Extract<Problem, { readonly code: 'tooLarge' | 'tooSmall' }>) {
  return kind === 'temperature' && isRow(at) ? inOtherDegrees(at, typed) : [];
}

/** The least water that gives milk. */
function wetEnough(ratio: number): WayOut {
  const text = `${writeTrimmed(ratio, 1, false)} parts`;
  return { label: `Make it ${text}`, changes: [{ do: 'type', row: 'waterRatio', text, kind: 'ratio', amount: ratio }] };
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

/** The same number in the unit that was meant. */
function asMeant({ at, unit, meant }: Extract<Problem, { readonly code: 'unitMeant' }>): readonly WayOut[] {
  if (!isMeasuredRow(at)) return [];
  const text = `${writeTrimmed(meant, 1, false)} ${unit}`;
  const kind = unit === 'g' ? 'mass' : 'volume';
  return [{ label: `Make it ${text}`, changes: [{ do: 'measure', row: at, text, kind, amount: meant }] }];
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
  const needed = wholeAbove(of('totalFill') / of('fillMost'));
  const { most } = numericRows.vesselCount.range;
  if (!(needed <= most) || needed <= of('vesselCount')) return null;
  return { label: `Use ${needed} jars`, changes: [typeJars(needed)] };
}

function typeJars(amount: number): Change {
  return { do: 'type', row: 'vesselCount', text: String(amount), kind: 'count', amount };
}

/** Jars of a bigger kind, so that there are fewer; none where the jars settle the water. */
function fewerJars(most: number, formulation: Formulation): readonly WayOut[] {
  const { evaluation } = formulation;
  const beyond = most > numericRows.vesselCount.range.most;
  if (evaluation.plan.ways.vesselCount !== 'fewest' || beyond) return [];
  const bigger = nextJarUp(formulation, most);
  return bigger === null ? [] : [bigger];
}

/**
 * The smallest kind of jar, among those bigger than this one, in which the same batch keeps its headspace; in so many
 * jars at most, where that is asked.
 */
function nextJarUp(formulation: Formulation, most = Number.POSITIVE_INFINITY): WayOut | null {
  const { recipe, of, evaluation } = formulation;
  const least = evaluation.plan.asksHeadspace ? of('headspaceAsked') : 0;
  const brimful = of('brimful');
  const ownCapacity = recipe.given.some(({ row }) => row === 'brimful');
  const given = recipe.given.filter(({ row }) => row !== 'brimful');
  for (const vessel of jarsBySize) {
    if (jars[vessel].brimful.value <= brimful) continue;
    const { rows } = formulate({ ...recipe, given, vessel });
    const depth = rows.headspaceDepth.value;
    const count = rows.vesselCount.value;
    if (typeof count !== 'number' || count > most) continue;
    if (typeof depth !== 'number' || depth < least - rounding || rows.headspaceVolume.status === 'refused') continue;
    if (rows.headspaceDepth.problems.some(({ code }) => code === 'headspaceUnderWise')) continue;
    const name = jars[vessel].name;
    // Several jars are still several, so their number is typed to be the cook’s own.
    const several = Number.isFinite(most) && count > 1;
    return {
      label: `Take “${name}”${ownCapacity ? ` and clear “${labelOf('brimful')}”` : ''}${several ? ` and use ${count} jars` : ''}`,
      changes: [
        ...(ownCapacity ? [{ do: 'clear', row: 'brimful' } as const] : []),
        { do: 'vessel', vessel },
        ...(several ? [typeJars(count)] : []),
      ],
    };
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
