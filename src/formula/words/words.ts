import type { Kind } from '../../measure/units';
import { writeNumber } from '../../measure/write-quantity';
import { kitchen as defaults } from '../../reference/kitchen';
import { isRow } from '../engine/evaluate';
import type { RowId } from '../recipe/order';
import type { Problem, ProblemCode } from '../recipe/problem';
import { numericRows } from '../rows/sheet';
import { bothUnits } from './both-units';
import { coefficientNames } from './coefficient-names';
import { labelOf } from './labels';
import { type Kitchen, writeValue } from './write-row';

interface Write {
  (value: number, kind?: Kind): string;
  number(value: number, places: number): string;
}
type Sentences = {
  readonly [C in ProblemCode]: (problem: Extract<Problem, { readonly code: C }>, write: Write, row: string) => string;
};

function writerFor(problem: Problem, kitchen: Kitchen): Write {
  const own = isRow(problem.at) ? numericRows[problem.at].kind : 'count';
  const write = (value: number, kind: Kind = own): string => {
    return bothUnits(writeValue(value, kind, null, kitchen), kitchen.leads);
  };
  return Object.assign(write, {
    number: (value: number, places: number) => writeNumber(value, places, kitchen.decimalComma),
  });
}

function list(rows: readonly RowId[]): string {
  return rows.map((id) => `“${labelOf(id)}”`).join(' and ');
}

function rest(rows: readonly RowId[]): string {
  return rows.length === 0 ? 'the rest of the sheet' : list(rows);
}

function runsOver({ over, fits }: { readonly over: number; readonly fits: number }, write: Write): string {
  return `Each jar would run over by ${write(over, 'volume')}: it holds ${write(fits, 'volume')} to the rim. Use more jars, a bigger jar, or make less.`;
}

function percentOff(typed: number, computed: number, write: Write): string {
  const share = Math.abs(typed - computed) / Math.max(Math.abs(computed), Number.MIN_VALUE);
  return `${write.number(100 * Math.min(share, 1000), share < 1 ? 1 : 0)}\u00A0%`;
}

/** So many times the most a cell takes, a number is hundreds of digits that help nobody. */
const farOver = 1000; // tolerance

const sentences: Sentences = {
  unreadable: () => 'This can’t be read as an amount. Write a number and a unit, such as 170 g or 1 ½ cups.',
  notPositive: (_, __, row) => `${row} must be more than 0. Type an amount, or clear the cell to have it worked out.`,
  negative: (_, __, row) => `${row} can’t be less than 0. Leave out the minus sign, or clear the cell.`,
  tooLarge: ({ typed, most, kind }, write) =>
    `${typed > farOver * most ? 'This' : write(typed, kind)} is more than this sheet takes (${write(most, kind)} at most). Check the unit.`,
  tooSmall: ({ least, kind }, write) =>
    `This is less than the sheet takes: ${write(least, kind)} at least. Check the unit.`,
  notWhole: () => 'Jars come whole. Type 1, 2, 3 and so on.',
  notTyped: (_, __, row) => `${row} can’t be typed: it is worked out, or measured in its working.`,
  noCupWeight: ({ food }) => `No cup weight is published for this (${food}). Type it in grams or ounces.`,
  noPacket: ({ food }) => `This is not counted in packets (${food}). Type it in grams or tablespoons.`,
  noCan: ({ food }) => `This is not counted in cans (${food}). Type it in grams, ounces or cups.`,
  wrongKind: () => 'That unit measures something else. Use one that fits this row.',
  headspaceTooDeep: ({ depth }, write) =>
    `The jar is only ${write(depth)} deep inside. Type a smaller headspace, or choose a bigger jar.`,
  roomTooLarge: ({ at, brimful }, write) => {
    const vessel = at === 'bottleHeadspace' ? 'bottle' : 'jar';
    return `The whole ${vessel} holds ${write(brimful)}. Leave less room, or choose a bigger ${vessel}.`;
  },
  fillOverBrim: ({ brimful }, write) =>
    `That is over the brim: the jar holds ${write(brimful)} to the very rim. Type less, or choose a bigger jar.`,
  jarTooSmall: ({ least }, write) =>
    `A neck and shoulder of this shape alone hold ${write(least)}. Type more, or choose a smaller kind of jar.`,
  overBrim: runsOver,
  runsOver,
  gels: ({ least, gelling }, write) =>
    gelling
      ? `This gels: it needs at least ${write.number(least, 1)} g of water per g of seed for milk to run through.`
      : `So little water stays in the pulp: it needs at least ${write.number(least, 1)} g per g of nut or seed for milk to run through.`,
  noRatio: ({ rows }) =>
    `No amount of water makes ${list(rows)} fit together. Change one of them, or clear one to have it worked out.`,
  noSolids: () =>
    'No amount of water gives milk of these solids from this nut or seed. Type another figure, or clear the cell.',
  roundabout: () => 'What is typed leaves this to be worked out from itself. Clear one of the typed amounts.',
  notWorkedOut: () =>
    'This batch can’t be worked out: something in it is more than this page can handle. Everything in it is kept. Save a copy of it, undo the last change, or remove it.',
  belowNative: ({ native }, write) =>
    `The milk brings ${write(native)} of its own. Type at least that, or clear the cell.`,
  noRoomForMilk: ({ fill }, write) =>
    `The sweetener and culture you typed leave no room for milk in ${write(fill, 'volume')}. Type less of them.`,
  nothingToFerment: ({ sweetener, reason }) =>
    reason === ''
      ? `${sweetener}: nothing is added, so there is nothing to measure here. Choose a sweetener first.`
      : `${sweetener} can’t feed the grains. ${reason}`,
  sharesOff: () => 'The shares of a blend must add up to 100 %.',
  coefficientRefused: ({ coefficient }) =>
    `Your own figure for “${coefficientNames[coefficient].label}” is outside what is possible, so the table’s is used.`,
  waits: ({ for: root }) => `Waits for “${labelOf(root)}”, which needs mending first.`,
  conflict: ({ typed, computed, with: rows }, write) =>
    `You typed ${write(typed)}, but ${rest(rows)} ${rows.length > 1 ? 'make' : 'makes'} it ${write(computed)}: ${percentOff(typed, computed, write)} apart. The sheet counts with ${write(computed)}. Clear one of them.`,
  nearlyAgrees: ({ typed, computed, with: rows }, write) =>
    `You typed ${write(typed)}; with ${rest(rows)} it comes to ${write(computed)}, which is as near as a kitchen measures.`,
  headspaceKept: ({ asked, actual }, write) =>
    `You asked for at least ${write(asked)}; this batch leaves ${write(actual)}.`,
  fullerThanUsual: ({ usual, jars }, write) =>
    `Less than the usual ${write(usual)}, so that ${jars === 1 ? 'one jar takes' : `${jars} jars take`} it all. Room enough; stand ${jars === 1 ? 'it' : 'them'} in a dish.`,
  headspaceUnderWise: ({ wise, over }, write) =>
    `Under ${write(wise)} there is little room for rising: it may run over.${over > 0 ? ` Keep ${write(over, 'volume')} of the milk to drink.` : ''}`,
  severalJars: ({ jars }, write) =>
    `More than one jar of this kind takes with its headspace, so it is shared among ${write.number(jars, 0)}.`,
  outsideUsual: ({ low, high, kind }, write) => `Usual is ${write(low, kind)} to ${write(high, kind)}.`,
  ownWater: ({ volume }, write) => `Besides its own ${write(volume, 'volume')} of liquid, which goes in first.`,
  fruitInEach: ({ name, grams }, write) => `From ${write(grams, 'mass')} of ${name} in each bottle.`,
  mostlyPulp: ({ milk }, write) =>
    `More stays in the bag than runs through it: only ${write(milk, 'mass')} of milk. With more water less of it stays.`,
  sugarEstimated: ({ low, high, byLabel }, write) => {
    const [one, other] = [write(low), write(high)];
    const ends = one === other ? '' : ` It may be ${one} to ${other}.`;
    return byLabel
      ? `An estimate until the working of the source has what the label says.${ends}`
      : `An estimate: no table gives its sugars one by one.${ends}`;
  },
  nativeCounted: ({ native, lowered }, write) =>
    `Lowered by ${write(lowered)}, since the milk brings ${write(native)} of its own.`,
  measuredOff: ({ planned }, write) => `${write(planned)} was planned; the sheet goes on with what is really there.`,
  measuredImpossible: ({ least, most }, write) => {
    const end = most === null ? least : most;
    const bound = end === null ? '' : `: it is ${write(end)} at ${most === null ? 'least' : 'most'}`;
    return `That can’t be, from what went in${bound}. Read the scale or jug again.`;
  },
  unitMeant: ({ planned, meant, unit }, write) =>
    `That is far from the ${write(planned)} expected. Did you mean ${write(meant, unit === 'g' ? 'mass' : 'volume')}?`,
  moreOutThanIn: ({ into, out }, write) =>
    `Milk and pulp together would weigh ${write(out, 'mass')}, but nut or seed and water were only ${write(into, 'mass')}. Read the scale or jug again.`,
  hardlyPressed: () =>
    'So heavy a pulp still holds milk: it is as wet as what went into the bag. Press it again, and weigh it again.',
  notCounted: ({ for: root }) => `Not counted yet: “${labelOf(root)}” needs mending first.`,
  notAcid: ({ measured, hours }, write) =>
    `${write(measured)} is above ${write.number(defaults.acidityLine.value, 1)}. If a homemade milk has not got there within ${write(hours, 'time')}, throw it out; taste is no test.`,
  outsideModels: ({ at, celsius, coolest, warmest }, write) => {
    const [typed, least, most] = [celsius, coolest, warmest].map((degrees) => write(degrees, 'temperature'));
    // A hair outside must not read as the end itself.
    const hair = typed === least ? 'just under ' : typed === most ? 'just over ' : '';
    const shown = `${hair}${typed}`;
    const why = `the published models part ways outside ${least} to ${most}.`;
    return at === 'bottlePressureLikely'
      ? `At ${shown} no likely pressure can be told: ${why} What a forgotten bottle can reach still holds.`
      : `At ${shown} no time can be told: ${why} ${celsius < coolest ? 'Find a warmer place.' : 'Find a cooler place.'}`;
  },
  nothingToRipen: () => 'There is no fermentable sugar in this milk, so nothing ripens. Add a sweetener.',
  slowerThanLine: ({ hours }, write) =>
    `At this warmth a homemade milk has ${write(hours, 'time')} to reach pH\u00A0${write.number(defaults.acidityLine.value, 1)}, and this may take longer. ${hours < defaults.acidityTime.value ? 'Use' : 'Find a warmer place, or use'} more culture.`,
  bottleTooFull: ({ least }, write) =>
    `Leave at least ${write(least, 'volume')} empty: in a fuller bottle the liquid alone can burst the glass as it warms.`,
  overLimit: ({ limit, unsweetened }, write) =>
    `Forgotten in a warm kitchen, this bottle could go over the ${write(limit)} its maker allows. ${unsweetened ? 'The milk’s own sugar alone is enough for that, so less of it added is no way out: leave more empty, seal none of it, or measure what sugar is left. Then the first ferment counts.' : 'Use less sugar, leave more empty, or measure what sugar is left: then the first ferment counts.'}`,
  noSugarUnderLimit: () =>
    'What is dissolved already can bring a forgotten bottle over that limit. Don’t seal this in such a bottle.',
  beyondFormula: ({ most }, write) => `Over ${write(most, 'pressure')} the figure is only rough.`,
  overGlass: ({ line }, write) =>
    `Ordinary glass is rated for no pressure, and this may pass ${write(line)}. Use bottles made for fizz, and chill them in time.`,
  sealedLong: ({ longest }, write) =>
    `Sealed and warm for more than ${write(longest)}, a bottle goes on to what a forgotten one has: it may burst. Chill it sooner.`,
  ownCapacity: () => 'Counted as a jar of your own: the capacity you typed, in the shape of this kind.',
  ownAssumed: () =>
    'Counted as a usual nut until you type what its label says, in the working of this row. Its allergens are for you to name.',
  labelTooMuch: ({ sum }, write) =>
    `What its label says comes to ${write.number(sum, 1)} g in 100 g, which is more than there is. Check each figure.`,
  weighWater: () =>
    'Fill your jar with water to the very rim, weigh the water, and type that weight here, such as 1050 g.',
  labelAssumed: ({ sugar, serving }, write) =>
    `Its sugars are taken as ${write.number(sugar, 1)} g in ${write(serving, 'volume')}. Put what the label says in the working of this row.`,
  moreThanOnHand: ({ text, needed }, write) =>
    `You have ${text}, and this batch takes ${write(needed)}. Make less, or get more.`,
  notSoaked: () => 'This one is not soaked, so nothing is worked out from this.',
};

/** What to do about a problem, in a plain sentence or two, amounts in both units. */
export function describeProblem(problem: Problem, kitchen: Kitchen): string {
  return say(problem.code, problem, writerFor(problem, kitchen));
}

function say<C extends ProblemCode>(code: C, problem: Problem, write: Write): string {
  const row = `“${labelOf(problem.at)}”`;
  return isOf(code, problem) ? sentences[code](problem, write, row) : '';
}

function isOf<C extends ProblemCode>(code: C, problem: Problem): problem is Extract<Problem, { readonly code: C }> {
  return problem.code === code;
}
