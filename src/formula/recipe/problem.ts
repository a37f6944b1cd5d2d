import type { Kind } from '../../measure/units';
import type { CoefficientId } from './coefficients';
import type { NumericRowId, RowId, StockId } from './order';

/**
 * What a user can have caused, as a value: a code, the row it stands at, its parameters. Its sentence is in `words.ts`.
 * `refusal`: the cell has no usable number, or what is typed there leaves others without one. `conflict`: what was typed stays, but the sheet counts otherwise.
 * `caution`, `note`: the number stands, and this is worth knowing.
 */
export type Problem = { readonly at: RowId } & ProblemBody;

type ProblemBody =
  | { readonly code: 'unreadable' }
  | { readonly code: 'notPositive'; readonly typed: number }
  | { readonly code: 'negative'; readonly typed: number }
  | { readonly code: 'tooLarge'; readonly typed: number; readonly most: number; readonly kind: Kind }
  | { readonly code: 'tooSmall'; readonly typed: number; readonly least: number; readonly kind: Kind }
  | { readonly code: 'notWhole'; readonly typed: number }
  | { readonly code: 'notTyped' }
  | { readonly code: 'noCupWeight'; readonly food: string }
  | { readonly code: 'wrongKind' }
  | { readonly code: 'headspaceTooDeep'; readonly depth: number }
  | { readonly code: 'roomTooLarge'; readonly brimful: number }
  | { readonly code: 'fillOverBrim'; readonly brimful: number }
  | { readonly code: 'jarTooSmall'; readonly least: number }
  | { readonly code: 'overBrim'; readonly over: number; readonly fits: number }
  | { readonly code: 'runsOver'; readonly over: number; readonly fits: number }
  /** `least`: a water ratio to type, just above the one at which the slurry is as wet as the pulp. */
  | { readonly code: 'gels'; readonly least: number; readonly gelling: boolean }
  | { readonly code: 'noRatio'; readonly rows: readonly [RowId, RowId] }
  | { readonly code: 'noSolids' }
  /** What was typed leaves a figure to be worked out from itself. */
  | { readonly code: 'roundabout' }
  /** Working the batch out failed for a reason that no other problem names. */
  | { readonly code: 'notWorkedOut' }
  | { readonly code: 'belowNative'; readonly native: number }
  | { readonly code: 'noRoomForMilk'; readonly fill: number }
  | { readonly code: 'nothingToFerment'; readonly sweetener: string; readonly reason: string }
  | { readonly code: 'sharesOff'; readonly sum: number }
  | { readonly code: 'coefficientRefused'; readonly coefficient: CoefficientId; readonly typed: number }
  | { readonly code: 'waits'; readonly for: RowId }
  | {
      readonly code: 'conflict';
      readonly typed: number;
      readonly computed: number;
      readonly with: readonly NumericRowId[];
    }
  | {
      readonly code: 'nearlyAgrees';
      readonly typed: number;
      readonly computed: number;
      readonly with: readonly NumericRowId[];
    }
  | { readonly code: 'headspaceKept'; readonly asked: number; readonly actual: number }
  | { readonly code: 'fullerThanUsual'; readonly usual: number; readonly jars: number }
  | { readonly code: 'headspaceUnderWise'; readonly actual: number; readonly wise: number; readonly over: number }
  | { readonly code: 'severalJars'; readonly jars: number }
  | { readonly code: 'outsideUsual'; readonly low: number; readonly high: number; readonly kind: Kind }
  | { readonly code: 'noCan'; readonly food: string }
  | { readonly code: 'noPacket'; readonly food: string }
  | { readonly code: 'fruitInEach'; readonly name: string; readonly grams: number }
  | { readonly code: 'ownWater'; readonly volume: number }
  /** More stays in the bag than runs through it; g of milk. */
  | { readonly code: 'mostlyPulp'; readonly milk: number }
  | { readonly code: 'sugarEstimated'; readonly low: number; readonly high: number; readonly byLabel: boolean }
  | { readonly code: 'nativeCounted'; readonly native: number; readonly lowered: number }
  | { readonly code: 'measuredOff'; readonly planned: number; readonly measured: number }
  /** The bound that it breaks, where what went in sets one. */
  | {
      readonly code: 'measuredImpossible';
      readonly planned: number;
      readonly least: number | null;
      readonly most: number | null;
    }
  /** `meant`: the same number in another unit, in g or mL. */
  | { readonly code: 'unitMeant'; readonly planned: number; readonly unit: 'g' | 'mL'; readonly meant: number }
  | { readonly code: 'moreOutThanIn'; readonly into: number; readonly out: number }
  | { readonly code: 'hardlyPressed'; readonly planned: number }
  /** It stands as measured, and nothing can follow from it until that row is mended. */
  | { readonly code: 'notCounted'; readonly for: RowId }
  | {
      readonly code: 'outsideModels';
      readonly celsius: number;
      readonly coolest: number;
      readonly warmest: number;
    }
  | { readonly code: 'nothingToRipen' }
  | { readonly code: 'slowerThanLine'; readonly latest: number; readonly hours: number }
  | { readonly code: 'bottleTooFull'; readonly least: number }
  /** `unsweetened`: so it would be with nothing added, neither to the milk nor to the bottle. */
  | { readonly code: 'overLimit'; readonly limit: number; readonly unsweetened: boolean }
  | { readonly code: 'noSugarUnderLimit' }
  | { readonly code: 'sealedLong'; readonly longest: number }
  | { readonly code: 'overGlass'; readonly line: number }
  | { readonly code: 'beyondFormula'; readonly most: number }
  | { readonly code: 'notAcid'; readonly measured: number; readonly hours: number }
  | { readonly code: 'notSoaked' }
  | { readonly code: 'ownCapacity' }
  | { readonly code: 'ownAssumed' }
  | { readonly code: 'labelTooMuch'; readonly sum: number }
  | { readonly code: 'weighWater' }
  | { readonly code: 'labelAssumed'; readonly sugar: number; readonly serving: number }
  | {
      readonly code: 'moreThanOnHand';
      readonly stock: StockId;
      readonly text: string;
      readonly have: number;
      readonly needed: number;
    };

export type ProblemCode = ProblemBody['code'];
export type Severity = 'refusal' | 'conflict' | 'caution' | 'note';

export const severities: Readonly<Record<ProblemCode, Severity>> = {
  unreadable: 'refusal',
  notPositive: 'refusal',
  negative: 'refusal',
  tooLarge: 'refusal',
  tooSmall: 'refusal',
  notWhole: 'refusal',
  notTyped: 'refusal',
  noCupWeight: 'refusal',
  noCan: 'refusal',
  noPacket: 'refusal',
  wrongKind: 'refusal',
  headspaceTooDeep: 'refusal',
  roomTooLarge: 'refusal',
  fillOverBrim: 'refusal',
  jarTooSmall: 'refusal',
  overBrim: 'refusal',
  runsOver: 'conflict',
  gels: 'refusal',
  noRatio: 'refusal',
  noSolids: 'refusal',
  roundabout: 'refusal',
  notWorkedOut: 'refusal',
  belowNative: 'refusal',
  noRoomForMilk: 'refusal',
  nothingToFerment: 'caution',
  sharesOff: 'caution',
  coefficientRefused: 'caution',
  waits: 'refusal',
  conflict: 'conflict',
  nearlyAgrees: 'note',
  headspaceKept: 'note',
  headspaceUnderWise: 'caution',
  fullerThanUsual: 'caution',
  severalJars: 'note',
  outsideUsual: 'caution',
  ownWater: 'note',
  fruitInEach: 'note',
  mostlyPulp: 'caution',
  sugarEstimated: 'note',
  nativeCounted: 'note',
  measuredOff: 'note',
  measuredImpossible: 'caution',
  unitMeant: 'caution',
  moreOutThanIn: 'caution',
  hardlyPressed: 'caution',
  notCounted: 'caution',
  outsideModels: 'refusal',
  nothingToRipen: 'refusal',
  slowerThanLine: 'caution',
  bottleTooFull: 'refusal',
  overLimit: 'caution',
  noSugarUnderLimit: 'caution',
  beyondFormula: 'note',
  overGlass: 'note',
  sealedLong: 'caution',
  notAcid: 'caution',
  notSoaked: 'note',
  ownCapacity: 'note',
  ownAssumed: 'caution',
  labelTooMuch: 'caution',
  weighWater: 'note',
  labelAssumed: 'note',
  moreThanOnHand: 'conflict',
};
