import { growthAt } from '../../../src/formula/models/ripening';
import { cardinalTemperatures, fermenting } from '../../../src/reference/fermenting';
import { fromMemory } from '../../../src/reference/origins';
import { kept, type Reference } from '../outside';

const degrees = (value: number) => ({ value, unit: '°C', origin: fromMemory() });
const example = { name: 'Example', minimum: degrees(5), optimum: degrees(20), maximum: degrees(30) };
const { plantarum, starter, yeast } = cardinalTemperatures;

export const growthPackage: Reference = {
  citation:
    'Manual page of a package for the growth of seaweed: the cardinal temperature model, least 5, best 20, most 30 °C.',
  seen: 'the page with its printed output',
  kind: 'result',
  tolerance: 'Half of the last digit printed.',
  rows: (
    [
      [6, 0.02, 2],
      [7, 0.07215686, 8],
      [10, 0.3333333, 7],
      [15, 0.8, 1],
      [19, 0.9912644, 7],
      [22, 0.9633333, 7],
      [25, 0.7619048, 7],
      [29, 0.1969231, 7],
    ] as const
  ).map(([celsius, printed, digits]) => ({
    what: `growth at ${celsius} °C`,
    printed,
    ours: growthAt(celsius, example),
    within: 0.51 * 10 ** -digits,
  })),
};

export const yeastTemperatures: Reference = {
  citation: 'Salvadó Z. and others (2011), Appl. Environ. Microbiol. 77: 2292–2302, Saccharomyces cerevisiae.',
  seen: 'abstract only',
  kind: 'carried over',
  tolerance: 'As printed.',
  rows: [kept('best, °C', 32.3, yeast.optimum.value), kept('most, °C', 45.4, yeast.maximum.value)],
};

export const starterTemperatures: Reference = {
  citation: 'Medveďová A., Šipošová P., Mančušková T., Valík Ľ. (2019), Fermentation 5(1): 2, a dairy starter in milk.',
  seen: 'abstract only',
  kind: 'carried over',
  tolerance: 'As printed.',
  rows: [
    kept('least, °C', 4, starter.minimum.value),
    kept('best, °C', 38.3, starter.optimum.value),
    kept('most, °C', 49.6, starter.maximum.value),
  ],
};

export const plantarumTemperatures: Reference = {
  citation: 'Matejčeková Z. and others (2019), J. Food Nutr. Res. 58(2): 125–134, in lactose-free milk.',
  seen: 'abstract only',
  kind: 'carried over',
  tolerance: 'As printed.',
  rows: [
    kept('least, °C', 5.4, plantarum.minimum.value),
    kept('best, °C', 34.2, plantarum.optimum.value),
    kept('most, °C', 41.4, plantarum.maximum.value),
  ],
};

export const kefirEthanol: Reference = {
  citation: 'Zajšek K., Goršek A. (2010), Biochem. Eng. J., kinetics of ethanol made by kefir grains, and a companion.',
  seen: 'abstracts only',
  kind: 'carried over',
  tolerance: 'As printed.',
  rows: [kept('activation energy, J/mol', 64300, fermenting.ethanolActivation.value)],
};
