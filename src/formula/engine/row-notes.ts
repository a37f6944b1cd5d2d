import { nearly } from '../../measure/nearly';
import type { Kind } from '../../measure/units';
import { writeMetric, writeUS } from '../../measure/write-quantity';
import { bottles } from '../../reference/bottles';
import { carrollHenry, fermenting } from '../../reference/fermenting';
import { kitchen } from '../../reference/kitchen';
import { isHeatTreated } from '../composition/heat-treated';
import { isLabelRead, nativeSugarRange } from '../composition/native';
import { turnTimeAt } from '../models/turn-time';
import { depthBelowRim } from '../models/vessel';
import {
  type CoefficientId,
  coefficientIds,
  coefficientKey,
  coefficients,
  hasYours,
  isAllowed,
  labelIds,
  sharesOf,
} from '../recipe/coefficients';
import { type NumericRowId, type RowId, stockIds, stockRows } from '../recipe/order';
import type { Problem } from '../recipe/problem';
import { jarProfile } from '../rows/jar-profile';
import { numericRows } from '../rows/sheet';
import type { Evaluation } from './evaluate';
import { readGiven } from './givens';

/** What is worth knowing about a number that stands: outside its usual range, several jars, an estimated sugar. */
export function notesFor(id: RowId, x: Evaluation): readonly Problem[] {
  const own = [...refusedCoefficients(id, x), ...(byRow[id]?.(x) ?? none)];
  return isNumericRow(id) ? [...own, ...moreThanOnHand(id, x), ...outsideUsual(id, x)] : own;
}

/** Where the batch takes more of something than there is. */
function moreThanOnHand(id: NumericRowId, x: Evaluation): readonly Problem[] {
  if (x.recipe.onHand === undefined) return none;
  const stock = stockIds.find((one) => stockRows[one] === id);
  const onHand = stock === undefined ? undefined : x.recipe.onHand[stock];
  if (stock === undefined || onHand === undefined) return none;
  const have = readGiven(x, id, numericRows[id], onHand);
  const needed = x.of(id);
  const isMore = typeof have === 'number' && needed > have * (1 + kitchen.agreement.value);
  if (!isMore || !Number.isFinite(needed)) return none;
  return [{ code: 'moreThanOnHand', at: id, stock, text: onHand.text, have, needed }];
}

const none: readonly Problem[] = [];

/** Where a refused figure of the cook's own is told of, if it belongs to the kitchen and not to a choice. */
const homes: Readonly<Partial<Record<CoefficientId, RowId>>> = {
  headspaceUsual: 'headspaceDepth',
  headspaceShare: 'headspaceDepth',
  headspaceShareLeast: 'vesselCount',
  jarSlack: 'vesselCount',
  blenderCapacity: 'blenderLoads',
  sugarUsual: 'sugarRate',
  nativeThreshold: 'sugarRate',
  sugarRoom: 'sweetenerMass',
  servingUsual: 'servingSize',
  roomUsual: 'roomTemperature',
  pace: 'readyTime',
  doseMost: 'readyTime',
  doseExponent: 'readyTime',
  sugarExponent: 'readyTime',
  carriedOver: 'bottlePressureLikely',
  bottleTimeUsual: 'bottleTime',
  bottleVolumeUsual: 'bottleVolume',
  bottleRoomUsual: 'bottleHeadspace',
};

function refusedCoefficients(id: RowId, { recipe }: Evaluation): readonly Problem[] {
  if (!hasYours(recipe)) return none;
  return Object.entries(recipe.yours).flatMap(([key, { value }]) => {
    const coefficient = coefficientIds.find((one) => coefficientKey(one, recipe) === key);
    if (coefficient === undefined || isAllowed(coefficient, value)) return [];
    const { owner } = coefficients[coefficient];
    const home = owner === 'kitchen' ? homes[coefficient] : owner;
    return home === id ? [{ code: 'coefficientRefused', at: id, coefficient, typed: value }] : [];
  });
}

/** A soak typed or weighed for what needs none. */
function notSoaked(at: NumericRowId, x: Evaluation): readonly Problem[] {
  return x.choices.source.soak?.drained === true || (at === 'soakTime' && x.choices.source.soak !== null)
    ? []
    : [{ code: 'notSoaked', at }];
}

function isNumericRow(id: RowId): id is NumericRowId {
  return id in numericRows;
}

function outsideUsual(id: NumericRowId, x: Evaluation): readonly Problem[] {
  const row = numericRows[id];
  const value = x.of(id);
  const range = row.usual?.(x) ?? null;
  if (range === null || !Number.isFinite(value)) return none;
  const { kind } = row;
  const end = value < range.low ? range.low : range.high;
  if ((value >= range.low && value <= range.high) || isWrittenAs(end, value, kind)) return none;
  return [{ code: 'outsideUsual', at: id, low: range.low, high: range.high, kind }];
}

/** Whether two amounts are the same to whoever reads them, in metric or in US units: 64 °F and 18 °C are. */
function isWrittenAs(one: number, other: number, kind: Kind): boolean {
  const us = writeUS(one, kind, false);
  return (
    writeMetric(one, kind, false) === writeMetric(other, kind, false) ||
    (us !== null && us === writeUS(other, kind, false))
  );
}

/** Ends that no kitchen tells apart are not told of. */
function estimated(
  at: 'sweetenerMass' | 'startingSugar',
  low: number,
  high: number,
  byLabel = false,
): readonly Problem[] {
  const [one, other] = [low, high].map((end) => writeMetric(end, numericRows[at].kind, false));
  return high - low < kitchen.agreement.value * high || one === other
    ? none
    : [{ code: 'sugarEstimated', at, low, high, byLabel }];
}

/** The solubility of gas is published for low pressures only. */
function beyondFormula(at: 'bottlePressureLikely' | 'bottlePressureForgotten', x: Evaluation): readonly Problem[] {
  const most = carrollHenry.pressureTo;
  return x.of(at) > most ? [{ code: 'beyondFormula', at, most }] : none;
}

function isOverUnsweetened(x: Evaluation): boolean {
  const native = (nativeSugarRange(x).high * x.of('milkVolume')) / x.of('liquid');
  return !x.standing.values.has('sugarLeft') && native > x.of('bottleSugarMost');
}

/** How much more goes into the jars than is wise where the batch says how much, mL; 0 where the jars do. */
function overWise(x: Evaluation): number {
  return x.plan.ways.vesselCount === 'fewest' ? x.of('totalFill') - x.of('vesselCount') * x.of('fillMost') : 0;
}

/** The least depth that is wise in this jar, cm: what is usual at least, and deep enough for the least share. */
function leastWise(x: Evaluation): number {
  const share = kitchen.headspaceShareLeast.value / 100;
  return Math.max(kitchen.headspaceDepth.low ?? 0, depthBelowRim(jarProfile(x), share * x.of('brimful')));
}

/** Whether the label of a source of the cook's own is typed, and can be. */
function ofOwnLabel(x: Evaluation): readonly Problem[] {
  const typed = labelIds.filter((id) => x.recipe.yours[coefficientKey(id, x.recipe)] !== undefined);
  const sum = labelIds.reduce((all, id) => all + x.c(id), 0);
  if (sum > 100) return [{ code: 'labelTooMuch', at: 'source', sum }];
  return typed.length === 0 ? [{ code: 'ownAssumed', at: 'source' }] : none;
}

const byRow: Readonly<Partial<Record<RowId, (x: Evaluation) => readonly Problem[]>>> = {
  sweetener: (x) => {
    const refused = x.choices.sweetener
      .filter(({ entry }) => entry.refused !== undefined)
      .map(
        ({ entry }): Problem => ({
          code: 'nothingToFerment',
          at: 'sweetener',
          sweetener: entry.name,
          reason: entry.refused ?? '',
        }),
      );
    const sum = sharesOf(x.recipe);
    const typedSlack = 1e-6; // tolerance
    return nearly(sum, 1, typedSlack) ? refused : [...refused, { code: 'sharesOff', at: 'sweetener', sum }];
  },
  vessel: (x) => (x.plan.accepted.has('brimful') ? [{ code: 'ownCapacity', at: 'vessel' }] : none),
  source: (x) => {
    if (x.choices.source.ownLabel !== undefined) return ofOwnLabel(x);
    if (isLabelRead(x)) return none;
    return [{ code: 'labelAssumed', at: 'source', sugar: x.c('labelSugar'), serving: x.c('labelServing') }];
  },
  soakWater: (x) => notSoaked('soakWater', x),
  soakTime: (x) => notSoaked('soakTime', x),
  vesselCount: (x) => {
    const jars = x.of('vesselCount');
    const chosen = x.plan.accepted.has('vesselCount') || x.plan.sizedFrom === 'jar';
    return jars > 1 && !chosen ? [{ code: 'severalJars', at: 'vesselCount', jars }] : [];
  },
  brimful: ({ recipe, plan }) =>
    recipe.vessel === 'own' &&
    !plan.accepted.has('brimful') &&
    recipe.yours[coefficientKey('brimfulUsual', recipe)] === undefined
      ? [{ code: 'weighWater', at: 'brimful' }]
      : none,
  headspaceDepth: (x) => {
    const actual = x.of('headspaceDepth');
    const isUnder = (depth: number): boolean => actual < depth && !nearly(actual, depth);
    const wise = leastWise(x);
    if (isUnder(wise)) return [{ code: 'headspaceUnderWise', at: 'headspaceDepth', actual, wise, over: overWise(x) }];
    const usual = x.of('headspaceAsked');
    const isPacked = x.plan.ways.vesselCount === 'fewest' && !x.plan.asksHeadspace && isUnder(usual);
    return isPacked ? [{ code: 'fullerThanUsual', at: 'headspaceDepth', usual, jars: x.of('vesselCount') }] : none;
  },
  blendWater: (x) => {
    const own = x.of('ownLiquid');
    return own > 0 ? [{ code: 'ownWater', at: 'blendWater', volume: own / x.of('waterDensity') }] : [];
  },
  pulpMass: (x) => {
    const milk = x.of('milkMass');
    const isPlanned = !x.standing.values.has('pulpMass');
    return isPlanned && x.of('pulpMass') > milk ? [{ code: 'mostlyPulp', at: 'pulpMass', milk }] : none;
  },
  sugarRate: (x) => {
    if (x.plan.sugarBy !== 'usual') return [];
    const lowered = x.c('sugarUsual') - x.of('sugarRate');
    return lowered > 0 ? [{ code: 'nativeCounted', at: 'sugarRate', native: x.of('nativeSugar'), lowered }] : [];
  },
  sweetenerMass: (x) => {
    const { value, low, high } = x.settled.fermentable;
    if (!(high > low) || !(low > 0)) return [];
    const mass = x.of('sweetenerMass') * value;
    return estimated('sweetenerMass', mass / high, mass / low);
  },
  startingSugar: (x) => {
    const { low, high } = nativeSugarRange(x);
    const added = x.of('sugarRate');
    if (!(high > low) || !Number.isFinite(added)) return none;
    return estimated('startingSugar', added + low, added + high, !isLabelRead(x));
  },
  readyTime: (x) => {
    const latest = x.of('readyLatest');
    const isHomemade = !isHeatTreated(x.choices.source, x.of('waterRatio'));
    const hours = turnTimeAt(x.of('roomTemperature'));
    return isHomemade && latest > hours ? [{ code: 'slowerThanLine', at: 'readyTime', latest, hours }] : [];
  },
  bottleTime: (x) => {
    const longest = bottles.longestSealed.value;
    const isWarm = x.of('bottleTemperature') >= fermenting.ripeningCoolest.value;
    return x.of('bottleTime') > longest && isWarm ? [{ code: 'sealedLong', at: 'bottleTime', longest }] : none;
  },
  bottlePressureLikely: (x) => {
    const line = bottles.unknownGlass.value;
    const isOver = x.of('bottleLimit') === 0 && x.of('pressureMost') > line;
    const over: readonly Problem[] = isOver ? [{ code: 'overGlass', at: 'bottlePressureLikely', line }] : none;
    return [...over, ...beyondFormula('bottlePressureLikely', x)];
  },
  bottlePressureForgotten: (x) => {
    const limit = x.of('bottleLimit');
    const rough = beyondFormula('bottlePressureForgotten', x);
    return limit > 0 && x.of('bottlePressureForgotten') > x.of('limitCounted')
      ? [{ code: 'overLimit', at: 'bottlePressureForgotten', limit, unsweetened: isOverUnsweetened(x) }, ...rough]
      : rough;
  },
  bottleSugar: ({ recipe: { fruit } }) =>
    fruit === undefined ? none : [{ code: 'fruitInEach', at: 'bottleSugar', name: fruit.name, grams: fruit.grams }],
  bottleSugarMost: (x) => {
    if (x.of('bottleSugarMost') === 0) return [{ code: 'noSugarUnderLimit', at: 'bottleSugarMost' }];
    const most = carrollHenry.pressureTo;
    return x.of('limitCounted') > most ? [{ code: 'beyondFormula', at: 'bottleSugarMost', most }] : none;
  },
  finalPH: (x) => {
    const measured = x.of('finalPH');
    const line = kitchen.acidityLine.value;
    if (!x.standing.values.has('finalPH') || !(measured > line)) return [];
    return [{ code: 'notAcid', at: 'finalPH', measured, hours: turnTimeAt(x.of('roomTemperature')) }];
  },
};
