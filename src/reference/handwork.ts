import { type Coefficient, judgement } from './origins';

const each = 'Our own guess at an unhurried cook; nothing published was found.';

function minutes(value: number, reason: string): Coefficient {
  return { value, unit: 'min', origin: judgement(`${reason} ${each}`) };
}

const table = {
  soak: minutes(10, 'Weighing out, checking over and covering with water.'),
  weigh: minutes(15, 'Draining, rinsing and weighing out all that goes in.'),
  load: minutes(10, 'Blending and straining one load of the blender.'),
  pour: minutes(5, 'Opening, shaking and pouring a ready milk.'),
  setUp: minutes(10, 'Sweetening, adding the grains and washing up.'),
  jar: minutes(3, 'Filling, covering and labelling one jar.'),
  heat: minutes(30, 'Warming up to a heat step and cooling down after it, besides the step itself.'),
  taste: minutes(5, 'A spoonful, a pH strip and a look.'),
  strain: minutes(15, 'Straining the grains out, feeding them, and the kefir into the fridge.'),
  bottle: minutes(15, 'Sweetening, filling and closing the bottles.'),
  fridge: minutes(5, 'Moving bottles or jars into the fridge.'),
  chill: {
    value: 4,
    unit: 'h',
    origin: judgement('A litre from a warm room is cold through after about this long in a fridge; not measured.'),
  },
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

/** How long the work by hand takes, and how finely a plan is made. */
export const handwork: Readonly<Record<keyof typeof table, Coefficient>> = table;
