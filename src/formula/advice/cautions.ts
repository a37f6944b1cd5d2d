import { type CautionId, cautions } from '../../reference/cautions';
import type { Origin } from '../../reference/origins';
import { type Note, notesOf } from '../../reference/source-notes';
import { sweetenerNotes } from '../../reference/sweetener-notes';
import type { Formulation } from '../engine/formulate';
import type { RowId } from '../recipe/order';
import { allergensOf } from './batch-allergens';
import { type CautionTopic, holdsFor, topicOf } from './caution-conditions';

export { allergensOf, type BatchAllergen, type BatchAllergens } from './batch-allergens';

export interface BatchCaution {
  readonly id: string;
  readonly text: string;
  readonly origin: Origin;
}

interface Placed extends BatchCaution {
  readonly at: string;
  readonly topic: CautionTopic;
}

/** At which row a source's own warning stands, by the step it belongs to; `foot` where the sheet has no such row. */
const rowOfStep: Readonly<Record<Note['step'], RowId | 'foot'>> = {
  choose: 'source',
  soak: 'soakTime',
  drain: 'soakedMass',
  blend: 'blendWater',
  strain: 'pulpMass',
  sweeten: 'sweetener',
  culture: 'grains',
  ferment: 'foot',
  keep: 'foot',
};

/** The cautions of this batch that belong to a row: those of the table, the source's own and the sweetener's own. */
export function cautionsAt(row: RowId, formulation: Formulation): readonly BatchCaution[] {
  return cautionsOf(formulation)
    .filter(({ at }) => at === row)
    .map(plain);
}

/**
 * The cautions of this batch on these topics, each once, in the order of the topics, those included that stand at a row or
 * a step. A caution whose row is not on the sheet is only here.
 */
export function cautionsAbout(topics: readonly CautionTopic[], formulation: Formulation): readonly BatchCaution[] {
  const all = cautionsOf(formulation);
  return topics.flatMap((topic) => all.filter((caution) => caution.topic === topic)).map(plain);
}

/** A caution of the table, if it holds for this batch. */
export function findCaution(id: CautionId, formulation: Formulation): BatchCaution | null {
  const found = cautions.find((caution) => caution.id === id);
  return found !== undefined && holdsFor(id, formulation) ? plain(found) : null;
}

function plain({ id, text, origin }: BatchCaution): BatchCaution {
  return { id, text, origin };
}

const lists = new WeakMap<Formulation, readonly Placed[]>();

/** All cautions of a batch: one list, for all that ask. */
function cautionsOf(formulation: Formulation): readonly Placed[] {
  const list = lists.get(formulation) ?? [...ofAllergens(formulation), ...otherThanAllergens(formulation)];
  lists.set(formulation, list);
  return list;
}

function ofAllergens(formulation: Formulation): readonly Placed[] {
  return allergensOf(formulation).entries.map(
    ({ id, text, origin }): Placed => ({ id: `allergen:${id}`, at: 'foot', topic: 'allergens', text, origin }),
  );
}

function otherThanAllergens(formulation: Formulation): readonly Placed[] {
  const general = cautions
    .filter(({ id }) => holdsFor(id, formulation))
    .map(({ id, at, text, origin }): Placed => ({ id, at, topic: topicOf(id), text, origin }));
  const ownOnes = [...ofSource(formulation), ...ofSweetener(formulation)];
  return [...general, ...ownOnes.filter((own) => !general.some((one) => saysTheSame(one, own)))];
}

function ofSource({ recipe }: Formulation): readonly Placed[] {
  return notesOf(recipe.source, recipe.grains)
    .filter(({ caution }) => caution === true)
    .map(({ step, text, origin }, place) => {
      const at = rowOfStep[step];
      return { id: `${recipe.source}:${place}`, at, topic: 'choice', text, origin };
    });
}

function ofSweetener({ recipe }: Formulation): readonly Placed[] {
  return recipe.sweetener.flatMap(({ id }): Placed[] => {
    const { caution } = sweetenerNotes[id];
    return caution === undefined ? [] : [{ id: `sweetener:${id}`, at: 'sweetener', topic: 'choice', ...caution }];
  });
}

/** Two warnings at one row that rest on the same place of the same work are one warning in two wordings. */
function saysTheSame(one: Placed, other: Placed): boolean {
  const [a, b] = [one.origin, other.origin];
  return (
    one.at === other.at && a.kind === 'published' && b.kind === 'published' && a.work === b.work && a.place === b.place
  );
}
