import { writeNumber } from '../measure/write-quantity';
import { carrollHenry } from '../reference/fermenting';
import { type Fizz, type InPlace, leftOutAt, type TightLid, type Verdict } from './fizz';
import { type Kitchen, writeValue } from './write-row';

/** A pressure as it is read: bar and psi, the kitchen’s own first. */
export function writePressure(bar: number, kitchen: Kitchen): string {
  return both(bar, 'pressure', kitchen);
}

/** Volumes of carbon dioxide, as bottlers state them. */
export function writeVolumes(volumes: number, kitchen: Kitchen): string {
  return `${writeNumber(volumes, 1, kitchen.decimalComma)} volumes`;
}

function both(value: number, kind: 'pressure' | 'temperature', kitchen: Kitchen): string {
  const { metric, us } = writeValue(value, kind, null, kitchen);
  if (us === null) return metric;
  return kitchen.leads === 'us' ? `${us} (${metric})` : `${metric} (${us})`;
}

const verdicts: Readonly<Record<Verdict, string>> = {
  holds: 'Holds',
  close: 'Close',
  rough: 'Can’t be told',
  over: 'Could go over',
  noLimit: 'No limit typed',
};

/** What a bottle comes to, in two or three words. */
export function writeVerdict({ verdict }: Fizz): string {
  return verdicts[verdict];
}

/** The rest of the verdict: what was held against what. */
export function explainVerdict({ verdict, forgotten, limit }: Fizz, kitchen: Kitchen): string {
  const reach = writePressure(forgotten.pressure, kitchen);
  const allowed = limit === null ? '' : writePressure(limit, kitchen);
  switch (verdict) {
    case 'noLimit':
      return 'Ordinary jars and bottles have no rating. If the maker of yours states one, type it; else count on none.';
    case 'over':
      return `Forgotten, it can reach ${reach}; its maker allows ${allowed}.`;
    case 'close':
      return `Forgotten, it can reach ${reach} of the ${allowed} its maker allows. That is too near to count on: ${leftOut(forgotten.pressure, kitchen)}`;
    case 'rough':
      return `Forgotten, it comes to some ${reach}. Over ${writePressure(carrollHenry.pressureTo, kitchen)} these sums are only rough, and no bottle is meant for it.`;
    case 'holds':
      return `Even forgotten it stays under ${allowed}: ${reach} at most, by these sums.`;
  }
}

function leftOut(pressure: number, kitchen: Kitchen): string {
  const most = writePressure(leftOutAt(pressure), kitchen);
  return `warm air, vapour, the swelling of the liquid and that no gas is ideal are left out, up to ${most}.`;
}

/** What the figures rest on and leave out. */
export function explainFizz({ forgotten }: Fizz, kitchen: Kitchen): string {
  return `Estimates, above the air outside. “Likely” can come out higher. “If forgotten” takes all the sugar through yeast in a warm kitchen; ${leftOut(forgotten.pressure, kitchen)}`;
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
export function describeFizz({ likely, forgotten, limit }: Fizz, kitchen: Kitchen): string {
  const parts = [
    likely === null ? 'likely: can’t be told at this temperature' : `likely ${writePressure(likely.pressure, kitchen)}`,
    `if forgotten up to ${writePressure(forgotten.pressure, kitchen)}`,
    limit === null ? 'no limit typed' : `the maker’s limit ${writePressure(limit, kitchen)}`,
  ];
  return `Pressure of a sealed bottle: ${parts.join('; ')}.`;
}

/** A jar whose lid is tight through the first ferment. */
export function describeTightLid({ likely, forgotten, tooFull }: TightLid, kitchen: Kitchen): string {
  const by = likely === null ? '' : `likely ${writePressure(likely.pressure, kitchen)} by the time it is ready, `;
  const full = tooFull ? ' It is filled so high that the liquid alone can burst it as it warms.' : '';
  return `If the lid of the jar is tight in the first ferment: ${by}forgotten up to ${writePressure(forgotten.pressure, kitchen)}. Jars have no pressure rating: loosen the lid.${full}`;
}
