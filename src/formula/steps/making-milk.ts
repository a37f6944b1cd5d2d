import { families } from '../../reference/families';
import type { Source } from '../../reference/sources';
import type { StepDraft } from './step';
import { type StepWriter, say } from './step-writer';
import { fruitToBlend } from './sweetening';

const noClaim = 'No time and temperature is claimed safe here.';

/** Whether the source stands in its blending water before it is blended, so that the water is in already. */
function isInWater({ formulation: { recipe, choices } }: StepWriter): boolean {
  const { soak, form, cook } = choices.source;
  const isHot = recipe.heat?.what === 'source' || cook?.what === 'source';
  return soak?.place === 'blending water' || (isHot && form === 'solid' && soak?.drained !== true);
}

/** Whether all of it goes into the jar: a liquid, a butter, what the cook lets pass whole. */
function isUnstrained({ formulation }: StepWriter): boolean {
  return formulation.rows.pulpMass.status === 'absent';
}

/** The water to blend with, the source's own first; ends with the amount, so that any wording of it fits. */
function describeWater(writer: StepWriter): string {
  const { of, choices } = writer.formulation;
  const { blendWater } = choices.source;
  const own = of('ownLiquid') / of('waterDensity');
  const first = own > 0 ? `its own water, about ${writer.quantity(own, 'volume')}` : null;
  if (first !== null && writer.value('blendWater') === 0) return `${first}, and no other`;
  const about = blendWater === null ? '' : `, about ${writer.quantity(blendWater.temperature.value, 'temperature')}`;
  const plain = `${blendWater === null ? '' : `${blendWater.words} `}water${about}: ${writer.amount('blendWater')}`;
  return first === null ? plain : `${first}, then ${plain}`;
}

/** Choosing, checking and weighing the source. */
export function chooseStep(writer: StepWriter): StepDraft {
  const { source } = writer.formulation.choices;
  const can = describeCans(writer);
  return {
    id: 'choose',
    title: source.form === 'liquid' ? 'Open and measure' : 'Choose and weigh',
    text: say(
      describeChecking(source),
      `${source.form === 'liquid' ? 'Measure' : 'Weigh'} out the ${source.plural}: ${writer.amount('sourceMass')}.`,
      can,
    ),
  };
}

/** How many cans it comes to, of the size that counts here. */
function describeCans(writer: StepWriter): string | null {
  const { choices, evaluation, of } = writer.formulation;
  if (choices.source.can === undefined) return null;
  const size = evaluation.c('canSize');
  const holds = `A can holds about ${writer.quantity(size, 'volume')}`;
  const grams = writer.value('sourceMass');
  if (grams === null) return `${holds}.`;
  return `${holds}, so this is about ${writer.quantity(grams / of('sourceWeight') / size, 'count')} of a can.`;
}

function describeChecking({ family, form, plural }: Source): string | null {
  if (form === 'liquid') return 'Open it for this batch.';
  if (!families[family].raw) return null;
  return say(
    `Use plain, unsalted ${plural}.`,
    families[family].pickedOver ? 'Pick out any that are mouldy or shrivelled.' : null,
  );
}

/** Soaking in the refrigerator, or steeping in the warm blending water; null for what is not soaked. */
export function soakStep(writer: StepWriter): StepDraft | null {
  const { soak, plural } = writer.formulation.choices.source;
  if (soak === null) return null;
  if (soak.place === 'blending water') {
    const text = say(
      `Cover the ${plural} with ${describeWater(writer)}.`,
      `Leave it for ${writer.amount('soakTime')}.`,
    );
    return { id: 'soak', title: 'Steep it warm', text };
  }
  const text = say(
    `Cover them with water: ${writer.amount('soakWater')}.`,
    `Leave them in the refrigerator for ${writer.amount('soakTime')}.`,
  );
  return { id: 'soak', title: 'Soak it cold', text };
}

/** Draining and rinsing; null for what is not soaked in water of its own. */
export function drainStep(writer: StepWriter): StepDraft | null {
  const { soak, plural } = writer.formulation.choices.source;
  if (soak?.drained !== true) return null;
  const text = say(
    `Pour the soaking water away. Rinse the ${plural} and drain them well.`,
    writer.outcome('soakedMass', 'weight'),
  );
  return { id: 'drain', title: 'Drain and rinse', text };
}

/** Cooking what is not eaten raw, or else the heat step the cook asked for, before blending or after straining. */
export function heatStep(writer: StepWriter, what: 'source' | 'milk'): StepDraft | null {
  const { recipe, choices } = writer.formulation;
  const { heat } = recipe;
  if (choices.source.cook?.what === what) return cookStep(writer, choices.source.cook);
  if (heat === undefined || heat === null || heat.what !== what) return null;
  const { soak, plural, form } = choices.source;
  const [hot, long] = [writer.quantity(heat.temperature, 'temperature'), writer.minutes(heat.minutes)];
  if (what === 'milk' || form === 'liquid') {
    const title = what === 'milk' ? 'Heat the milk' : 'Heat it first';
    const text = say(`Heat the ${what === 'milk' ? 'milk' : plural} to ${hot} and keep it there for ${long}.`, noClaim);
    return { id: what === 'milk' ? 'heatMilk' : 'heatSource', title, text };
  }
  if (soak?.drained === true) {
    const text = say(`Put the ${plural} in water at ${hot} for ${long}. Drain and rinse them.`, noClaim);
    return { id: 'heatSource', title: 'Blanch the source', text };
  }
  const cover = soak === null ? `Cover the ${plural} with ${describeWater(writer)}.` : null;
  const text = say(cover, `Heat all of it to ${hot} for ${long}, and pour nothing away.`, noClaim);
  return { id: 'heatSource', title: 'Heat the source', text };
}

function cookStep(writer: StepWriter, { what, minutes }: NonNullable<Source['cook']>): StepDraft {
  const { plural } = writer.formulation.choices.source;
  const long = writer.minutes(minutes.value);
  if (what === 'milk') {
    const text = say(
      `Bring the milk to the boil, stirring, in a pot with much room: it foams and catches. Keep it simmering for ${long}.`,
      'Make up what boils away with boiled water.',
    );
    return { id: 'heatMilk', title: 'Boil the milk', text };
  }
  const text = say(
    `Cook the ${plural} soft, about ${long}, in part of ${describeWater(writer)}.`,
    'Add the rest of the water cold.',
  );
  return { id: 'heatSource', title: 'Cook it', text };
}

/** Blending a solid, or pouring a liquid and letting it down. */
export function blendStep(writer: StepWriter): StepDraft {
  return writer.formulation.choices.source.form === 'solid' ? blendSolid(writer) : pourLiquid(writer);
}

function blendSolid(writer: StepWriter): StepDraft {
  const { soak, plural, gels } = writer.formulation.choices.source;
  const thing = `the ${soak?.drained === true ? 'soaked ' : ''}${plural}`;
  return {
    id: 'blend',
    title: gels ? 'Blend briefly' : 'Blend it',
    text: say(
      `Blend ${thing} with ${isInWater(writer) ? 'all of that water' : describeWater(writer)}.`,
      describeBlending(writer),
      fruitToBlend(writer),
      isUnstrained(writer) ? writer.outcome('milkVolume', 'milk') : null,
    ),
  };
}

function describeBlending(writer: StepWriter): string | null {
  const { blendSeconds, gels } = writer.formulation.choices.source;
  if (blendSeconds === null) return null;
  const { value, high } = blendSeconds;
  const most = gels && high !== undefined ? ` (${writer.seconds(high)} at most)` : '';
  const loads = writer.value('blenderLoads');
  const about = `About ${writer.seconds(value)}${most}`;
  if (loads === null) return `${about}.`;
  return loads === 1 ? `${about}, in one load.` : `${about} each, in ${writer.amount('blenderLoads')} equal loads.`;
}

function pourLiquid(writer: StepWriter): StepDraft {
  const { plural, can } = writer.formulation.choices.source;
  const { status } = writer.formulation.rows.blendWater;
  const water = status === 'absent' || writer.value('blendWater') === 0 ? null : writer.amount('blendWater');
  const fruit = fruitToBlend(writer);
  const pour = can === undefined ? `Shake the ${plural} and pour it into a jug.` : `Stir the ${plural} until smooth.`;
  return {
    id: 'blend',
    title: water !== null ? 'Stir and thin' : can === undefined ? 'Pour it' : 'Stir it smooth',
    text: say(
      pour,
      water === null ? null : `Let it down with water: ${water}.`,
      fruit === null ? null : `Blend the fruit in and strain its pulp out. ${fruit}`,
      writer.outcome('milkVolume', 'milk'),
    ),
  };
}

/** Straining, with what to expect of pulp and milk; null where nothing is strained out. */
export function strainStep(writer: StepWriter): StepDraft | null {
  const { gels } = writer.formulation.choices.source;
  if (isUnstrained(writer)) return null;
  return {
    id: 'strain',
    title: gels ? 'Strain at once' : 'Strain and press',
    text: say(
      gels ? 'Strain it at once through a fine bag, before it sets.' : 'Strain it through a fine bag and press it.',
      writer.outcome('milkVolume', 'milk'),
      writer.outcome('pulpMass', 'wet pulp'),
    ),
  };
}
