import { convertNumber } from '../../measure/units';
import { isGrains } from '../../reference/grains';
import { handwork } from '../../reference/handwork';
import type { Coefficient } from '../../reference/origins';
import { isFromItsMaker } from '../advice/caution-conditions';
import type { Formulation, RowResult } from '../engine/formulate';
import { readGiven } from '../engine/givens';
import { type NumericRowId, type StockId, stockRows } from '../recipe/order';
import { numericRows } from '../rows/sheet';
import { labelDaysOf } from '../steps/label-text';
import { minutesHot } from '../steps/step-work';
import { dayMinutes } from '../time/span';
import { turnTimeOf } from '../time/turn-time';
import { describeProblem } from '../words/words';
import type { Kitchen } from '../words/write-row';
import type { Making, Wait } from './making';

/** The batch that is planned, beside what is worked out of it. */
export interface PlannedBatch {
  readonly id: string;
  readonly name: string;
  readonly opened?: { readonly days: number };
}

/**
 * What a plan has to know of a batch that is worked out. Times are whole minutes in steps of five. A homemade milk is
 * never planned to stand longer than the hours in which it has to turn sour, unless it is likely slower than that.
 * Where it may be slower, its pH is checked by that line. Daily checks are only for a carton opened for this batch.
 */
export function makingOf(formulation: Formulation, { id, name, opened }: PlannedBatch, kitchen: Kitchen): Making {
  const { choices } = formulation;
  const second = secondOf(formulation);
  const isCarton = isFromItsMaker(formulation);
  const turnsBy = isCarton ? null : minutesOf(turnTimeOf(formulation).plain);
  const isSlow = turnsBy !== null && mayTake(formulation) > turnsBy;
  const keep = labelDaysOf(formulation);
  return {
    batch: id,
    name,
    soak: soakOf(formulation),
    make: makeOf(formulation),
    ferment: fermentOf(formulation, turnsBy, kitchen),
    taste: handwork.taste.value,
    strain: strainOf(formulation),
    second,
    chill: chillOf(keep, second),
    keep,
    checks: isCarton && opened !== undefined ? opened.days : isSlow ? 1 : null,
    turnsBy,
    grains: grainsOf(formulation),
    jars: {
      kind: formulation.recipe.vessel,
      name: choices.jar.name,
      need: numberAt(formulation, 'vesselCount') ?? 1,
      have: stockOf(formulation, 'jars'),
    },
  };
}

/** Straining the grains out of each jar; a starter is only stirred, and its jars go into the cold. */
function strainOf(formulation: Formulation): number {
  const jars = numberAt(formulation, 'vesselCount');
  return isGrains(formulation.recipe.grains)
    ? workOn(handwork.strain.value, handwork.strainJar.value, jars)
    : workOn(handwork.fridge.value, handwork.bottleEach.value, jars);
}

function grainsOf(formulation: Formulation): Making['grains'] {
  const { grains: kind } = formulation.recipe;
  if (!isGrains(kind)) return null;
  const need = numberAt(formulation, 'grainMass') ?? 0;
  return { kind, name: formulation.choices.grain.name, need, have: stockOf(formulation, 'grains') };
}

function minutesOf(hours: number): number {
  const { value: step } = handwork.step;
  return Math.round(convertNumber(hours, 'h', 'min') / step) * step;
}

function waitOf(low: number, likely: number, high: number): Wait {
  return { low: minutesOf(low), likely: minutesOf(likely), high: minutesOf(high) };
}

/** A time that was typed is as long as that; else it may be as long as is usual. */
function rangedWait({ status }: RowResult, likely: number, { low, high }: Partial<Coefficient>): Wait {
  if (status === 'given') return waitOf(likely, likely, likely);
  return waitOf(Math.min(low ?? likely, likely), likely, Math.max(high ?? likely, likely));
}

function numberAt({ rows }: Formulation, id: NumericRowId): number | null {
  const { value } = rows[id];
  return typeof value === 'number' ? value : null;
}

/** What steeps in its blending water is stood beside, and its few minutes count as work. */
function soakOf(formulation: Formulation): Making['soak'] {
  const { soak } = formulation.choices.source;
  const hours = numberAt(formulation, 'soakTime') ?? soak?.hours.value ?? 0;
  if (soak === null || soak.place === 'blending water' || hours <= 0) return null;
  return { minutes: handwork.soak.value, wait: rangedWait(formulation.rows.soakTime, hours, soak.hours) };
}

function makeOf(formulation: Formulation): number {
  const { recipe, choices } = formulation;
  const { soak, form } = choices.source;
  const loads = Math.ceil(numberAt(formulation, 'blenderLoads') ?? 1);
  const steep = soak?.place === 'blending water' ? minutesOf(numberAt(formulation, 'soakTime') ?? soak.hours.value) : 0;
  const milk = form === 'liquid' ? handwork.pour.value : handwork.weigh.value + steep + loads * handwork.load.value;
  const heat = (['source', 'milk'] as const).reduce((sum, what) => {
    const minutes = minutesHot({ choices, recipe }, what);
    return minutes === null ? sum : sum + handwork.heat.value + minutes;
  }, 0);
  return workOn(
    milk + Math.max(heat, 0) + handwork.setUp.value,
    handwork.jar.value,
    numberAt(formulation, 'vesselCount'),
  );
}

/** For how long milk stands about while it is made, in minutes: from the first load until the last jar is filled. */
export function standsAbout(formulation: Formulation): number {
  const isPoured = formulation.choices.source.form === 'liquid';
  const loads = Math.ceil(numberAt(formulation, 'blenderLoads') ?? 1);
  const milk = isPoured ? handwork.pour.value : loads * handwork.load.value;
  return workOn(milk, handwork.jar.value, numberAt(formulation, 'vesselCount'));
}

/** So many minutes once and so many for each jar or bottle, of which there is at least one, in whole steps. */
function workOn(once: number, each: number, count: number | null): number {
  const { value: step } = handwork.step;
  return Math.ceil((once + each * Math.max(Math.ceil(count ?? 1), 1)) / step) * step;
}

/** How long the first ferment may take, in minutes, whatever a plan allows it; 0 where it has no time. */
export function mayTake({ rows }: Formulation): number {
  const { value, range } = rows.readyTime;
  return typeof value === 'number' ? minutesOf(Math.max(range?.high ?? value, value)) : 0;
}

function fermentOf(formulation: Formulation, turnsBy: number | null, kitchen: Kitchen): Making['ferment'] {
  const { value, range, problems } = formulation.rows.readyTime;
  if (typeof value !== 'number') {
    const [why] = problems;
    return { why: why === undefined ? 'The sheet has no time for the first ferment.' : describeProblem(why, kitchen) };
  }
  const { low, likely, high } = waitOf(range?.low ?? value, value, range?.high ?? value);
  const most = turnsBy === null || likely > turnsBy ? high : Math.min(high, turnsBy);
  return { wait: { low: Math.min(low, likely), likely, high: Math.max(most, likely) } };
}

function secondOf(formulation: Formulation): Making['second'] {
  const row = formulation.rows.bottleTime;
  const hours = numberAt(formulation, 'bottleTime') ?? 0;
  if (hours <= 0) return null;
  const usual = numericRows.bottleTime.usual?.(formulation.evaluation) ?? {};
  const bottles = numberAt(formulation, 'bottleCount');
  return {
    bottle: workOn(handwork.bottle.value, handwork.bottleEach.value, bottles),
    wait: rangedWait(row, hours, usual),
    fridge: workOn(handwork.fridge.value, handwork.fridgeEach.value, bottles),
  };
}

/** Cold through after some hours, and drunk while it is at its best; within a day where that is not known. */
function chillOf(keep: Making['keep'], second: Making['second']): Wait {
  const low = minutesOf(handwork.chill.value);
  const keeps = keep === null ? low + dayMinutes : keep.best * dayMinutes;
  const gone = second === null ? 0 : second.bottle + second.wait.high + second.fridge;
  return { low, likely: low, high: Math.max(low, keeps - gone) };
}

/** What there is of a stock, in the unit of its row; null where nothing readable was typed. */
function stockOf({ recipe, evaluation }: Formulation, stock: StockId): number | null {
  const have = recipe.onHand?.[stock];
  if (have === undefined) return null;
  const row = stockRows[stock];
  const read = readGiven(evaluation, row, numericRows[row], have);
  return typeof read === 'number' ? read : null;
}
