import type { Starter } from '../../reference/grains';
import { kitchenLines } from '../../reference/kitchen-lines';
import { holdsFor, isWarm } from '../advice/caution-conditions';
import { expectedAcidityOf, firstReading } from '../time/expected-acidity';
import { turnTimeOf } from '../time/turn-time';
import { cultureNoun } from '../words/culture-words';
import { labelOf } from '../words/labels';
import type { StepDraft } from './step';
import { type StepWriter, say } from './step-writer';

/** Cooling what was warmed or heated; null where nothing was. */
export function coolStep(writer: StepWriter): StepDraft | null {
  if (!isWarm(writer.formulation)) return null;
  const most = writer.quantity(kitchenLines.grainTemperatureLimit.value, 'temperature');
  const { starter } = writer.formulation.choices.grain;
  const goIn = starter === undefined ? 'the grains go in' : 'the starter goes in';
  return { id: 'cool', title: 'Cool the milk', text: `Cool the milk to ${most} or less before ${goIn}.` };
}

/** The grains, their dose, and where they gather; of a starter, how it is stirred in. */
export function cultureStep(writer: StepWriter): StepDraft {
  const { floats, dairy, starter } = writer.formulation.choices.grain;
  if (starter !== undefined) return starterStep(writer, starter);
  const each = writer.eachJar('grainMass');
  const text = say(
    dairy ? 'Rinse the dairy milk off the grains with cool boiled water; some milk protein stays in them.' : null,
    `Drain the grains and add ${writer.amount('grainMass')}.`,
    floats ? 'Milk grains float.' : 'Water grains sink.',
  );
  const step: StepDraft = { id: 'culture', title: 'Add the grains', text };
  return each === null ? step : { ...step, perJar: `Grains for each jar: ${each}.` };
}

function starterStep(writer: StepWriter, { packet }: Starter): StepDraft {
  const each = writer.eachJar('grainMass');
  const text =
    packet === undefined
      ? `Shake the finished kefir and stir in ${writer.amount('grainMass')} of it.`
      : `Starter powder: ${writer.amount('grainMass')}. Stir it smooth with a little of the milk, then into all of it.`;
  const step: StepDraft = { id: 'culture', title: 'Add the starter', text };
  return each === null ? step : { ...step, perJar: `Starter for each jar: ${each}.` };
}

/** Filling to the headspace, in how many jars, and a cover that lets gas escape. */
export function coverStep(writer: StepWriter): StepDraft {
  const { jar, grain } = writer.formulation.choices;
  const [{ name }, noun] = [jar, cultureNoun(grain)];
  const jars = writer.value('vesselCount');
  const fill = writer.amount('fillVolume');
  const cover = 'Cover with a cloth, an airlock, or a lid that is not tightened.';
  const room = `Leave ${writer.amount('headspaceDepth')} free below the rim.`;
  const step = { id: 'cover', title: 'Fill and cover' } as const;
  if (jars === 1) return { ...step, text: say(`${name}, filled with milk and ${noun}: ${fill}.`, room, cover) };
  const count = writer.amount('vesselCount');
  const filled = jars === null ? `Jars (${name}): ${count}.` : `${count} jars (${name}): share the milk equally.`;
  const text = say(filled, room, cover);
  return { ...step, text, perJar: `Milk and ${noun} in each jar: ${fill}.` };
}

/** When to taste: the range of hours of this batch, as an estimate; the row to mend where no time can be told. */
export function waitStep(writer: StepWriter): StepDraft {
  const { range } = writer.formulation.rows.readyTime;
  const from = range === null ? null : writer.quantity(range.low, 'time');
  const to = range === null ? null : writer.quantity(range.high, 'time');
  const room = writer.amount('roomTemperature');
  const told = writer.value('readyTime') !== null;
  const likely = told
    ? `Likely ready after ${writer.amount('readyTime')}`
    : `How long can’t be told: see “${labelOf('readyTime')}”`;
  return {
    id: 'wait',
    title: 'Wait and taste',
    text: say(
      from === null ? `Leave it at ${room}.` : `Leave it at ${room} and taste it from ${from} on.`,
      to === null ? `${likely}.` : `${likely}, perhaps only after ${to}: an estimate, not a promise.`,
      'Ready, it is tart and fresh, smells a little of yeast, and has thickened or parted: a head over a clear layer is normal, stir it in.',
      holdsFor('acidityLine', writer.formulation) ? readings(writer) : null,
    ),
  };
}

/** When a homemade milk is measured, what to expect then, and what follows; without strips nobody can tell. */
function readings(writer: StepWriter): string {
  const { formulation } = writer;
  const { plain, falling } = turnTimeOf(formulation);
  const first = firstReading(plain);
  const [early, time, longest] = [first, plain, falling].map((hours) => writer.quantity(hours, 'time'));
  const expected = expectedAcidityOf(formulation, first);
  return say(
    `Measure its pH when you first taste it, by ${early} at the latest${expected === null ? '' : ` (expect ${writer.acidity(expected.low, expected.high)})`}: at ${writer.onItsWay()} and falling, let it go on.`,
    falling > plain ? `Still falling after ${time}, it may stand until ${longest}, no longer.` : null,
    `${writer.acidityLine()} or less by strip or meter within ${falling > plain ? longest : time}, or throw it out.`,
    'No strips or meter? Buy some first: without them nobody can tell.',
  );
}

/** Straining the grains out, what there is to drink, and where the grains go; a starter stays in and is stirred. */
export function liftStep(writer: StepWriter): StepDraft {
  const { dairy, starter } = writer.formulation.choices.grain;
  if (starter !== undefined) return stirStep(writer);
  return {
    id: 'lift',
    title: 'Lift the grains',
    text: say(
      writer.onlyAcid(),
      'Strain the grains out through a clean, coarse sieve, helping with a spatula.',
      writer.outcome('drinkVolume', 'kefir'),
      dairy
        ? 'Rinse the grains in a little dairy milk and put them back into their resting jar of it, or straight into the next batch.'
        : 'Rinse the grains with cool water and put them back into their resting jar of sugar water, or straight into the next batch.',
    ),
  };
}

function stirStep(writer: StepWriter): StepDraft {
  return {
    id: 'lift',
    title: 'Stir it',
    text: say(
      writer.onlyAcid(),
      'Stir it smooth: there is nothing to strain out.',
      writer.outcome('drinkVolume', 'kefir'),
      'To start another batch with it, first fill a small clean jar, close it and keep it cold.',
    ),
  };
}
