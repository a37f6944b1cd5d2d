import { type Coefficient, judgement, published } from './origins';

const each = 'Our own guess at an unhurried cook; nothing published was found.';

function minutes(value: number, reason: string): Coefficient {
  return { value, unit: 'min', origin: judgement(`${reason} ${each}`) };
}

const twoHours = published(
  'fsis-danger-zone',
  'page, the two-hour rule',
  'The figures of the caution about it: 2 h, or 1 h in a room above 32 °C (90 °F), until the grains are in.',
);

const table = {
  soak: minutes(10, 'Weighing out, checking over and covering with water.'),
  weigh: minutes(15, 'Draining, rinsing and weighing out all that goes in.'),
  load: minutes(10, 'Blending and straining one load of the blender.'),
  pour: minutes(5, 'Opening, shaking and pouring a ready milk.'),
  setUp: minutes(10, 'Sweetening, adding the grains and washing up.'),
  jar: minutes(3, 'Filling, covering and labelling one jar.'),
  heat: minutes(30, 'Warming up to a heat step and cooling down after it, besides the step itself.'),
  taste: minutes(5, 'A spoonful, a pH strip and a look.'),
  strain: minutes(10, 'Getting the sieve and bowls ready, feeding the grains, and washing up.'),
  strainJar: minutes(4, 'Testing and straining one jar, and its kefir into the fridge.'),
  bottle: minutes(10, 'Sweetening the kefir, getting the bottles ready, and washing up.'),
  bottleEach: minutes(2, 'Filling, wiping and closing one bottle.'),
  fridge: minutes(3, 'Making room in the fridge.'),
  fridgeEach: minutes(0.5, 'Moving one bottle into the fridge.'),
  chill: {
    value: 4,
    unit: 'h',
    origin: judgement('A litre from a warm room is cold through after about this long in a fridge; not measured.'),
  },
  outOfCold: { value: 2, unit: 'h', origin: twoHours },
  outOfColdHot: { value: 1, unit: 'h', origin: twoHours },
  hotRoom: { value: 32, unit: '°C', origin: twoHours },
  step: minutes(5, 'No plan of a kitchen is finer than this.'),
  search: minutes(15, 'Other starts are tried this far apart, so that what is offered is easy to remember.'),
  drawn: {
    value: 28,
    unit: 'day',
    origin: judgement('Over more days on one line the hours of work are too thin to see.'),
  },
  reach: {
    value: 2,
    unit: 'day',
    origin: judgement('Another start is looked for this far away; every hour of a day has come by then.'),
  },
} satisfies Record<string, Coefficient>;

/** How long the work by hand takes, how long milk may stand about meanwhile, and how finely a plan is made. */
export const handwork: Readonly<Record<keyof typeof table, Coefficient>> = table;
