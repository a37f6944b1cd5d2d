import { convertNumber } from '../../measure/units';
import { writeNumber } from '../../measure/write-quantity';
import { carrollHenry, fermenting } from '../../reference/fermenting';
import { leftTooLong, liveliness } from '../../reference/finished';
import { changeRecipe } from '../advice/typed-change';
import { type Formulation, formulate } from '../engine/formulate';
import { leftOutAt } from '../rows/pressure-left-out';
import { writeElapsed } from '../time/elapsed-words';
import { bothUnits } from '../words/both-units';
import { lowerFirst } from '../words/lower-first';
import { type Kitchen, writeValue } from '../words/write-row';
import type { Fizz, InPlace, Standing, TightLid, Verdict } from './fizz';

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

/** What the bottle comes to after its hours, with how far that may be off, and how lively it is. */
export function writeLikely({ standing, likely }: Fizz, kitchen: Kitchen): string {
  const [meant] = standing;
  if (meant === undefined || likely === null) return 'What it comes to can’t be told at this temperature.';
  const hours = writeValue(meant.hours, 'time', null, kitchen).metric;
  const volumes = writeVolumes(likely.volumes, kitchen);
  return `After ${hours} likely ${writePressure(likely.pressure, kitchen)}, from ${writeRange(meant, kitchen)}. That is ${volumes} of gas: ${livelinessOf(likely.volumes)}.`;
}

function livelinessOf(volumes: number): string {
  return liveliness.bands.find(({ most }) => volumes <= most)?.words ?? '';
}

/** What a pressure may be, in the kitchen’s own unit alone. */
export function writeRange({ least, most }: Standing, kitchen: Kitchen): string {
  const own = (bar: number): string => {
    const { metric, us } = writeValue(bar, 'pressure', null, kitchen);
    return kitchen.leads === 'us' ? (us ?? metric) : metric;
  };
  return `${own(least)} to ${own(most)}`;
}

/** How long a bottle stands, as the name of a line of the drawing. */
export function writeStanding({ longer, hours }: Standing, kitchen: Kitchen): string {
  const time = (some: number): string => writeValue(some, 'time', null, kitchen).metric;
  if (longer === 0) return `After ${time(hours)}`;
  return longer === leftTooLong.at(-1) ? 'Left a week longer' : `Left ${time(longer)} longer`;
}

/** What the pressures are held against. */
export function nameLine({ limit, line }: Fizz, kitchen: Kitchen): string {
  const bar = writePressure(line, kitchen);
  return limit === null ? `${bar}: beyond it trust no bottle but one made for fizz` : `the maker’s limit, ${bar}`;
}

/** All the sugar through yeast, in one sentence. */
export function describeBound({ forgotten, alcoholMost }: Fizz, kitchen: Kitchen): string {
  const alcohol = writeNumber(alcoholMost, 1, kitchen.decimalComma);
  return `Forgotten until all its sugar has gone through yeast, in a warm kitchen, it would come to some ${writePressure(forgotten.pressure, kitchen)} and ${alcohol} % alcohol by volume.`;
}

const verdicts: Readonly<Record<Verdict, string>> = {
  holds: 'Holds',
  close: 'Close',
  rough: 'Can’t be told',
  over: 'Could go over',
  noLimit: 'Bottles made for fizz only',
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
      return 'Ordinary jars and bottles are rated for no pressure: count on none. Chill it in time.';
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

/** A second ferment as it is asked for at one press: its text, and the name of the button. */
export function offerSecond(kitchen: Kitchen): { readonly text: string; readonly label: string } {
  const text = writeValue(fermenting.bottleTime.value, 'time', null, kitchen).metric;
  return { text, label: `Add a second ferment of ${text}` };
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
  return `Estimates, above the air outside: yeast differs from jar to jar, so go by the first bottle that gets hard. The last is no upper bound either: ${leftOut(forgotten.pressure, kitchen)}`;
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
export function describeFizz(fizz: Fizz, kitchen: Kitchen, isTyped = false): string {
  const { standing } = fizz;
  const parts = standing.map(
    (one) =>
      `${lowerFirst(writeStanding(one, kitchen))} likely ${writePressure(one.likely.pressure, kitchen)}, from ${writeRange(one, kitchen)}`,
  );
  const told = parts.length === 0 ? ['likely: can’t be told at this temperature'] : parts;
  const unread = fizz.limit === null && isTyped ? ['the maker’s limit can’t be read'] : [];
  return `Pressure of a sealed bottle: ${[...told, nameLine(fizz, kitchen), ...unread].join('; ')}.`;
}

/** A jar whose lid is tight through the first ferment. */
export function describeTightLid({ likely, forgotten, tooFull }: TightLid, kitchen: Kitchen): string {
  const by = likely === null ? '' : `likely ${writePressure(likely.pressure, kitchen)} by the time it is ready, `;
  const full = tooFull ? ' It is filled so high that the liquid alone can burst it as it warms.' : '';
  return `If the lid of the jar is tight in the first ferment: ${by}forgotten some ${writePressure(forgotten.pressure, kitchen)}. Jars have no pressure rating: loosen the lid.${full}`;
}
