import { convertNumber } from '../../measure/units';
import { writeNumber } from '../../measure/write-quantity';
import { carrollHenry, fermenting } from '../../reference/fermenting';
import { changeRecipe } from '../advice/typed-change';
import { type Formulation, formulate } from '../engine/formulate';
import { leftOutAt } from '../rows/pressure-left-out';
import { writeElapsed } from '../time/elapsed-words';
import { bothUnits } from '../words/both-units';
import { type Kitchen, writeValue } from '../words/write-row';
import type { Fizz, InPlace, TightLid, Verdict } from './fizz';

/** A pressure as it is read: bar and psi, the kitchen’s own first. */
export function writePressure(bar: number, kitchen: Kitchen): string {
  return both(bar, 'pressure', kitchen);
}

/** Volumes of carbon dioxide, as bottlers state them. */
export function writeVolumes(volumes: number, kitchen: Kitchen): string {
  return `${writeNumber(volumes, 1, kitchen.decimalComma)} volumes`;
}

function both(value: number, kind: 'pressure' | 'temperature', kitchen: Kitchen): string {
  return bothUnits(writeValue(value, kind, null, kitchen), kitchen.leads);
}

const verdicts: Readonly<Record<Verdict, string>> = {
  holds: 'Holds',
  close: 'Close',
  rough: 'Can’t be told',
  over: 'Could go over',
  noLimit: 'No limit typed',
};

/** What a bottle comes to, in a few words; `isTyped` says that something stands in the field of its limit. */
export function writeVerdict({ verdict }: Fizz, isTyped = false): string {
  return verdict === 'noLimit' && isTyped ? 'The limit can’t be read: see its field' : verdicts[verdict];
}

/** The rest of the verdict: what was held against what. */
export function explainVerdict({ verdict, forgotten, limit }: Fizz, kitchen: Kitchen): string {
  const reach = writePressure(forgotten.pressure, kitchen);
  const allowed = limit === null ? '' : writePressure(limit, kitchen);
  switch (verdict) {
    case 'noLimit':
      return `Forgotten in the warmth, a bottle can reach some ${reach}. Ordinary jars and bottles have no rating: count on none unless the maker of yours states one.`;
    case 'over':
      return `Forgotten, it can reach some ${reach}; its maker allows ${allowed}.`;
    case 'close':
      return `Forgotten, it can reach some ${reach} of the ${allowed} its maker allows. That is too near to count on: ${leftOut(forgotten.pressure, kitchen)}`;
    case 'rough':
      return `Forgotten, it comes to some ${reach}. ${whyRough(forgotten.pressure, kitchen)} Don’t count on the bottle.`;
    case 'holds':
      return `Even forgotten it stays under ${allowed}: some ${reach}, and what these sums leave out adds up to ${writePressure(leftOutAt(forgotten.pressure), kitchen)}.`;
  }
}

function whyRough(pressure: number, kitchen: Kitchen): string {
  const [most, warmest] = [carrollHenry.pressureTo, fermenting.forgottenTemperature.value];
  return pressure > most
    ? `Over ${writePressure(most, kitchen)} these sums are only rough.`
    : `Over ${both(warmest, 'temperature', kitchen)} more is left out than these sums know.`;
}

/** What to do with sealed bottles, in the order of doing it; short enough to be read with wet hands. */
export function adviseFizz({ rows, of }: Formulation, kitchen: Kitchen): readonly string[] {
  const { value } = rows.bottleTime;
  const hours = typeof value === 'number' ? ` after ${writeValue(value, 'time', null, kitchen).metric}, sooner` : '';
  return [
    `Chill them${hours} if one gets hard or fizzy. Leave none in the warmth.`,
    'Open each cold, over the sink, in a towel, away from your face.',
    of('sugarRate') === 0 && of('bottleSugar') === 0
      ? 'All this gas is of the milk’s own sugar. Chill it sooner for less, or seal none of it.'
      : 'For less pressure use less sugar, in the jar and in the bottle.',
  ];
}

/** The likely pressure where the plan lets the bottles stand for other hours than the sheet says; null where it does not. */
export function describePlanned({ recipe, rows }: Formulation, hours: number | null, kitchen: Kitchen): string | null {
  const { value } = rows.bottleTime;
  const time = (some: number): string => writeValue(some, 'time', null, kitchen).metric;
  if (hours === null || typeof value !== 'number' || time(hours) === time(value)) return null;
  const standing = { do: 'type', row: 'bottleTime', text: `${hours} h`, kind: 'time', amount: hours } as const;
  const likely = formulate(changeRecipe(recipe, [standing])).rows.bottlePressureLikely.value;
  const by = typeof likely === 'number' ? `: likely ${writePressure(likely, kitchen)} by then` : '';
  const elapsed = writeElapsed(convertNumber(hours, 'h', 'min'), kitchen.decimalComma);
  return `Your plan lets them stand for ${elapsed} instead${by}.`;
}

function leftOut(pressure: number, kitchen: Kitchen): string {
  const most = writePressure(leftOutAt(pressure), kitchen);
  return `warm air, vapour, the swelling of the liquid and that no gas is ideal are left out, and can add up to ${most}.`;
}

/** What the figures rest on and leave out. */
export function explainFizz({ forgotten }: Fizz, kitchen: Kitchen): string {
  return `Estimates, above the air outside. “Likely” can come out higher. “If forgotten” takes all the sugar through yeast in a warm kitchen, and is no upper bound either: ${leftOut(forgotten.pressure, kitchen)}`;
}

const places: Readonly<Record<InPlace['place'], string>> = {
  fridge: 'In the fridge',
  bottle: 'Where it ferments',
  room: 'In the room',
  warm: 'In a warm kitchen',
};

/** Where the bottle stands, and how warm it is there. */
export function writePlace({ place, celsius }: InPlace, kitchen: Kitchen): string {
  return `${places[place]}, ${both(celsius, 'temperature', kitchen)}`;
}

/** The same as the drawing, in a sentence. */
export function describeFizz({ likely, forgotten, limit }: Fizz, kitchen: Kitchen, isTyped = false): string {
  const none = isTyped ? 'the limit can’t be read' : 'no limit typed';
  const parts = [
    likely === null ? 'likely: can’t be told at this temperature' : `likely ${writePressure(likely.pressure, kitchen)}`,
    `if forgotten some ${writePressure(forgotten.pressure, kitchen)}`,
    limit === null ? none : `the maker’s limit ${writePressure(limit, kitchen)}`,
  ];
  return `Pressure of a sealed bottle: ${parts.join('; ')}.`;
}

/** A jar whose lid is tight through the first ferment. */
export function describeTightLid({ likely, forgotten, tooFull }: TightLid, kitchen: Kitchen): string {
  const by = likely === null ? '' : `likely ${writePressure(likely.pressure, kitchen)} by the time it is ready, `;
  const full = tooFull ? ' It is filled so high that the liquid alone can burst it as it warms.' : '';
  return `If the lid of the jar is tight in the first ferment: ${by}forgotten some ${writePressure(forgotten.pressure, kitchen)}. Jars have no pressure rating: loosen the lid.${full}`;
}
