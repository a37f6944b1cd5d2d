import type { CautionId } from '../../reference/cautions';
import { growthIn, neverMixed } from '../../reference/grain-care';
import { grainNotes } from '../../reference/grain-notes';
import { isGrains } from '../../reference/grains';
import { type Note, notesOf } from '../../reference/source-notes';
import { sweetenerNotes } from '../../reference/sweetener-notes';
import { findCaution } from '../advice/cautions';
import type { Formulation } from '../engine/formulate';
import type { Kitchen } from '../words/write-row';
import { bottleStep, chillStep, keepStep, secondStep } from './bottling';
import { coolStep, coverStep, cultureStep, liftStep, waitStep } from './culturing';
import { blendStep, chooseStep, drainStep, heatStep, soakStep, strainStep } from './making-milk';
import { partsOf, plainText } from './marked';
import type { Step, StepDraft, StepId, StepNote, WriteAmount } from './step';
import { measuredAt, waitOf } from './step-work';
import { StepWriter, say } from './step-writer';
import { sweetenStep } from './sweetening';

export type { TextPart } from './marked';
export { type Step, type StepId, type StepNote, stepOrder, type WriteAmount } from './step';

/**
 * The batch as steps in the order of the work, with its amounts in them. Rows are written by `write`; quantities that
 * have no row (temperatures, what goes in each jar) as `kitchen` reads them, or without one in metric with US units
 * behind. An amount the sheet can't work out is named with the row to mend.
 */
export function stepsOf(formulation: Formulation, write: WriteAmount, kitchen?: Kitchen): readonly Step[] {
  const writer = new StepWriter(formulation, write, kitchen);
  const drafts = [
    chooseStep(writer),
    soakStep(writer),
    drainStep(writer),
    heatStep(writer, 'source'),
    blendStep(writer),
    strainStep(writer),
    heatStep(writer, 'milk'),
    sweetenStep(writer),
    coolStep(writer),
    cultureStep(writer),
    coverStep(writer),
    waitStep(writer),
    liftStep(writer),
    bottleStep(writer),
    secondStep(writer),
    chillStep(writer),
    keepStep(writer),
  ].filter((draft) => draft !== null);
  const notes = placedNotes(formulation);
  return drafts.map(({ text, perJar, ...draft }) => ({
    ...draft,
    text: plainText(text),
    ...(perJar === undefined ? {} : { perJar: plainText(perJar) }),
    parts: partsOf(say(text, perJar ?? null)),
    wait: waitOf(draft.id, formulation),
    measured: measuredAt(draft.id, formulation),
    notes: notes.filter(({ at }) => firstOf(at, drafts) === draft.id).map(({ note }) => note),
  }));
}

/** A note and the steps it may stand at: the first of them that this batch has. */
interface Placed {
  readonly at: readonly StepId[];
  readonly note: StepNote;
}

function firstOf(at: readonly StepId[], drafts: readonly StepDraft[]): StepId | undefined {
  return at.find((id) => drafts.some((draft) => draft.id === id));
}

const placesOfNotes: Readonly<Record<Note['step'], readonly StepId[]>> = {
  choose: ['choose'],
  soak: ['soak', 'choose'],
  drain: ['drain', 'blend'],
  blend: ['blend'],
  strain: ['strain', 'blend'],
  sweeten: ['sweeten', 'blend'],
  culture: ['culture'],
  ferment: ['wait'],
  keep: ['keep'],
};

/** Cautions of the table that a cook needs while at that step, and that its sentences don't say themselves. */
const placesOfCautions: readonly (readonly [CautionId, readonly StepId[]])[] = [
  ['treatedNuts', ['choose']],
  ['plantMilkFeeds', ['choose']],
  ['soakCold', ['soak']],
  ['dangerZone', ['strain', 'blend']],
  ['jarsUnrated', ['cover']],
  ['waitOnlyCartons', ['wait']],
  ['howToTest', ['wait']],
  ['sealedGlass', ['bottle']],
  ['passedOnly', ['bottle']],
  ['throwOut', ['keep']],
  ['timeOut', ['keep']],
];

function placedNotes(formulation: Formulation): readonly Placed[] {
  const { source, sweetener } = formulation.choices;
  // What steeps in its blending water gets its notes on blending where that water goes in.
  const blending: readonly StepId[] = source.soak?.place === 'blending water' ? ['soak'] : placesOfNotes.blend;
  const ofSource = notesOf(formulation.recipe.source, formulation.recipe.grains).map(
    ({ step, text, origin, caution }): Placed => {
      const at = step === 'blend' ? blending : placesOfNotes[step];
      return { at, note: { text, caution: caution === true, origin } };
    },
  );
  const ofSweetener = formulation.recipe.sweetener.flatMap(({ id }, at): Placed[] => {
    const { caution } = sweetenerNotes[id];
    if (caution === undefined) return [];
    const where: readonly StepId[] = sweetener[at]?.entry.state === 'fruit' ? ['blend'] : placesOfNotes.sweeten;
    return [{ at: where, note: { text: caution.text, caution: true, origin: caution.origin } }];
  });
  // A caution about the grains holds when they go in; the rest is about how they are kept.
  const ofGrains = grainNotes[formulation.recipe.grains].map(({ text, origin, caution }): Placed => {
    return { at: [caution === true ? 'culture' : 'lift'], note: { text, caution: caution === true, origin } };
  });
  const { source: id, grains } = formulation.recipe;
  const care = isGrains(grains) ? [growthIn(id, grains), neverMixed] : [];
  const ofCare = care.map(({ text, origin }): Placed => {
    return { at: ['lift'], note: { text, caution: false, origin } };
  });
  return [...ofSource, ...ofSweetener, ...ofGrains, ...ofCare, ...ofTable(formulation)];
}

function ofTable(formulation: Formulation): readonly Placed[] {
  return placesOfCautions.flatMap(([id, at]): Placed[] => {
    const caution = findCaution(id, formulation);
    if (caution === null) return [];
    // How a thing is done is read when it is looked for; a warning would stand at this step of every batch.
    return [{ at, note: { text: caution.text, caution: id !== 'howToTest', origin: caution.origin } }];
  });
}
