import { type AmountRowId, amountRows, isOnHandRow, type NumericRowId, type RowId } from '../recipe/order';
import type { Given } from '../recipe/recipe';
import type { Plan } from '../recipe/sizing';

/** What the recipe fixes by itself, needed before any number is worked out. */
export interface Setting {
  /** Whether the usual recipe of this source takes tap water at all. */
  readonly takesWater: boolean;
  /** Whether the sweetener holds anything the grains can ferment. */
  readonly sweetens: boolean;
  /** Whether the culture stays in the drink, rather than being strained out. */
  readonly stays: boolean;
}

const ofSugar: readonly NumericRowId[] = ['sugarRate', 'startingSugar', 'caneEquivalent', 'sweetenerMass'];

/** Rows of which one settles the other: the first typed counts, a second must agree with it. */
const rivals: readonly (readonly NumericRowId[])[] = [
  ['waterRatio', 'milkSolids'],
  ['headspaceDepth', 'headspaceVolume'],
  ofSugar,
  ['grainRate', 'grainMass'],
];

const ofScale: readonly NumericRowId[] = ['milkVolume', 'drinkVolume', 'servings'];
const ofRatio: readonly NumericRowId[] = ['waterRatio', 'milkSolids'];
const ofSource: readonly NumericRowId[] = ['sourceMass', 'blendWater'];

class Joining {
  readonly accepted = new Set<NumericRowId>();
  readonly against = new Map<NumericRowId, readonly NumericRowId[]>();
  /** Typed rows in the balance of source, water and milk; two settle it. */
  readonly balance: NumericRowId[] = [];
  scale: NumericRowId | null = null;
  fill = false;

  has(...rows: readonly NumericRowId[]): boolean {
    return rows.some((row) => this.accepted.has(row));
  }

  refuse(row: NumericRowId, against: readonly NumericRowId[]): boolean {
    this.against.set(row, against);
    return false;
  }

  /** Takes a row into the balance if there is still something open in it. */
  join(row: NumericRowId): boolean {
    if (this.balance.length < 2) {
      this.balance.push(row);
      this.accepted.add(row);
      return true;
    }
    return this.refuse(row, this.balance);
  }
}

const plans = new Map<string, Plan>();

/** The plan for what is typed, found once for all batches of which the same is typed in the same order. */
export function planFor(given: readonly Given[], setting: Setting): Plan {
  let shape = `${setting.takesWater ? 'w' : ''}${setting.sweetens ? 's' : ''}${setting.stays ? 'k' : ''}`;
  for (const { row, use } of given) shape += use === 'onHand' ? ` +${row}` : ` ${row}`;
  const known = plans.get(shape);
  if (known !== undefined) return known;
  if (plans.size > 1000) plans.clear();
  const plan = planBatch(given, setting);
  plans.set(shape, plan);
  return plan;
}

/**
 * Decides, from which rows are typed and in what order, how the batch is worked out: the row it is sized from, which
 * rates are joined by two typed amounts, and which typed value can't be joined to those before it. No number is needed
 * for this, and none is worked out here.
 */
export function planBatch(given: readonly Given[], setting: Setting): Plan {
  const joining = new Joining();
  const typed = given.map(({ row }) => row);
  const counts = (row: NumericRowId): boolean => setting.sweetens || !ofSugar.includes(row);
  // Of nothing else can it be said that it is all there is: elsewhere the mark is read as not there.
  const isOnHand = ({ use, row }: Given): boolean => use === 'onHand' && isOnHandRow(row) && counts(row);
  const onHand = new Set(given.filter(isOnHand).map(({ row }) => row));
  const sharesGlasses = typed.includes('servings') && !typed.includes('servingSize') && sizedOtherwise(typed, onHand);
  for (const row of typed) {
    if (counts(row)) place(row, joining, onHand, sharesGlasses);
    else joining.refuse(row, []);
  }
  return settle(joining, onHand, sharesGlasses, setting, typed);
}

/** Whether something else than the glasses sizes the batch, so that the glass follows from their number. */
function sizedOtherwise(typed: readonly NumericRowId[], onHand: ReadonlySet<NumericRowId>): boolean {
  const sizing: readonly NumericRowId[] = ['sourceMass', 'blendWater', 'milkVolume', 'drinkVolume', 'fillVolume'];
  return typed.some((row) => sizing.includes(row)) || onHand.size > 0;
}

function place(row: NumericRowId, joining: Joining, onHand: ReadonlySet<NumericRowId>, sharesGlasses: boolean): void {
  const rival = rivals
    .find((group) => group.includes(row))
    ?.find((other) => other !== row && joining.has(other) && !standsBeside(row, other, onHand));
  if (rival !== undefined) joining.refuse(row, [rival]);
  else if (ofSource.includes(row)) placeSource(row, joining, onHand);
  else if (ofRatio.includes(row)) joining.join(row);
  else if (row === 'servings' && sharesGlasses) joining.accepted.add(row);
  else if (onHand.has(row) || ofScale.includes(row)) placeScale(row, joining, onHand.has(row));
  else if (row === 'fillVolume') placeFill(joining);
  else joining.accepted.add(row);
}

/** What is on hand sizes the batch, so it stands beside a typed rate; beside a typed weight of sugar it does not. */
function standsBeside(row: NumericRowId, other: NumericRowId, onHand: ReadonlySet<NumericRowId>): boolean {
  return (onHand.has(row) || onHand.has(other)) && row !== 'caneEquivalent' && other !== 'caneEquivalent';
}

/** What is on hand sizes the usual recipe; it is not solved for a ratio, whichever of the two is typed first. */
function placeSource(row: NumericRowId, joining: Joining, onHand: ReadonlySet<NumericRowId>): void {
  if (joining.scale !== null && onHand.has(joining.scale)) joining.refuse(row, [joining.scale]);
  else joining.join(row);
}

function placeScale(row: NumericRowId, joining: Joining, onHand: boolean): void {
  if (joining.scale !== null) joining.refuse(row, [joining.scale]);
  else if (joining.fill) joining.refuse(row, ['fillVolume']);
  else if (onHand && joining.has(...ofSource)) joining.refuse(row, joining.balance);
  else if (joining.join(row)) joining.scale = row;
}

function placeFill(joining: Joining): void {
  if (joining.scale !== null) joining.refuse('fillVolume', [joining.scale]);
  else if (joining.join('fillVolume')) joining.fill = true;
}

function settle(
  joining: Joining,
  onHand: ReadonlySet<NumericRowId>,
  sharesGlasses: boolean,
  setting: Setting,
  typed: readonly NumericRowId[],
): Plan {
  const { accepted, scale } = joining;
  const ways: Partial<Record<NumericRowId, string>> = {};
  const sourceTyped = joining.has('sourceMass', 'blendWater');
  const bothTyped = accepted.has('sourceMass') && accepted.has('blendWater');
  const ratioTyped = joining.has('waterRatio', 'milkSolids');
  const depthTyped = joining.has('headspaceDepth', 'headspaceVolume');
  const fromScale = scale !== null;
  const openRatio = sourceTyped && !bothTyped && !ratioTyped;
  const poured = accepted.has('blendWater') && !setting.takesWater;
  // A typed headspace pins the jar's side only where the water ratio is still open to take it up.
  const pinned = !fromScale && (joining.fill || (openRatio && (depthTyped || poured)));
  const joined = openRatio && (fromScale || pinned);
  const fromSource = sourceTyped && !fromScale && !pinned;
  const fillFromRoom = !fromScale && !fromSource;

  const sweetenerFixed =
    joining.has('caneEquivalent') || (accepted.has('sweetenerMass') && !onHand.has('sweetenerMass'));
  const grainsFixed = accepted.has('grainMass') && !onHand.has('grainMass');

  ways.waterRatio = accepted.has('milkSolids')
    ? 'fromSolids'
    : bothTyped
      ? 'fromSourceAndWater'
      : joined
        ? 'joined'
        : 'usual';
  ways.sourceMass = accepted.has('blendWater') ? 'fromBlendWater' : 'fromMilk';
  ways.milkVolume = milkWay(scale, onHand, joined, fromSource);
  const hasUsualFill = setting.takesWater || accepted.has('sourceMass');
  ways.vesselCount = countWay(joining, {
    fromScale,
    fromSource,
    joined: joined && pinned && hasUsualFill,
    sweetens: setting.sweetens,
    glasses: joining.fill && sharesGlasses && !joined,
  });
  ways.fillVolume = fillFromRoom ? 'fromRoom' : 'shared';
  const roomIsTyped = accepted.has('headspaceVolume');
  const depthRules = fillFromRoom && !joining.fill;
  ways.headspaceVolume = depthRules && !roomIsTyped ? 'fromDepth' : 'fromFill';
  ways.headspaceDepth = depthRules && !roomIsTyped ? 'usual' : 'fromRoom';
  ways.drinkVolume = scale === 'servings' ? 'fromServings' : setting.stays ? 'whole' : 'strained';
  ways.servingSize = sharesGlasses && accepted.has('servings') ? 'fromServings' : 'usual';
  ways.sugarRate = sugarWay(joining, setting, sweetenerFixed);
  ways.sweetenerMass = accepted.has('caneEquivalent') ? 'fromCane' : 'rate';
  ways.grainRate = grainsFixed ? 'fromMass' : 'usual';
  return {
    sizedFrom: sizedFrom(typed, accepted, onHand, { sharesGlasses, onlyHolds: fromScale || fromSource || joined }),
    accepted: depthRules ? accepted : without(accepted, ['headspaceDepth', 'headspaceVolume']),
    ways,
    against: joining.against,
    joinedBy: joined ? joinedBy(scale) : null,
    sweetenerFixed,
    grainsFixed,
    stays: setting.stays,
    sugarBy: sugarBy(joining, setting, sweetenerFixed),
    depthIsLeast: depthTyped && !depthRules,
    asksHeadspace: depthTyped,
  };
}

function without(rows: ReadonlySet<NumericRowId>, left: readonly NumericRowId[]): ReadonlySet<NumericRowId> {
  return new Set([...rows].filter((row) => !left.includes(row)));
}

function milkWay(
  scale: NumericRowId | null,
  onHand: ReadonlySet<NumericRowId>,
  joined: boolean,
  fromSource: boolean,
): string {
  if (scale !== null && onHand.has(scale)) return scale === 'grainMass' ? 'fromGrains' : 'fromSweetener';
  if (joined || fromSource) return 'fromSource';
  return scale === null ? 'fromFill' : 'fromDrink';
}

function countWay(
  joining: Joining,
  how: { fromScale: boolean; fromSource: boolean; joined: boolean; sweetens: boolean; glasses: boolean },
): string {
  if (how.joined) return how.sweetens ? 'nearest' : 'nearestUnsweetened';
  if (how.glasses) return 'nearestGlasses';
  if (how.fromScale && joining.against.has('fillVolume')) return 'nearestFill';
  return how.fromScale || how.fromSource ? 'fewest' : 'usual';
}

function joinedBy(scale: NumericRowId | null): Plan['joinedBy'] {
  if (scale === null) return 'fill';
  return scale === 'milkVolume' ? 'milk' : 'drink';
}

function sugarWay(joining: Joining, setting: Setting, fixed: boolean): string {
  if (!setting.sweetens) return 'none';
  if (fixed) return 'fromMass';
  return joining.has('startingSugar') ? 'fromStart' : 'usual';
}

function sugarBy(joining: Joining, setting: Setting, fixed: boolean): Plan['sugarBy'] {
  if (!setting.sweetens) return 'none';
  if (fixed) return 'mass';
  if (joining.has('startingSugar')) return 'start';
  return joining.has('sugarRate') ? 'rate' : 'usual';
}

function sizedFrom(
  typed: readonly NumericRowId[],
  accepted: ReadonlySet<NumericRowId>,
  onHand: ReadonlySet<NumericRowId>,
  how: { readonly sharesGlasses: boolean; readonly onlyHolds: boolean },
): RowId | 'jar' {
  const isAmount = (row: NumericRowId): row is AmountRowId => amountRows.some((amount) => amount === row);
  // Glasses that only share the drink, and jars that only hold a batch sized from something else, size nothing.
  const idle = (row: NumericRowId): boolean =>
    (row === 'servings' && how.sharesGlasses) || (row === 'vesselCount' && how.onlyHolds);
  const sizes = (row: NumericRowId): boolean => !idle(row) && (isAmount(row) || onHand.has(row));
  return typed.find((row) => accepted.has(row) && sizes(row)) ?? 'jar';
}
