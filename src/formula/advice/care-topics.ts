import { growthIn, neverMixed } from '../../reference/grain-care';
import { grainNotes } from '../../reference/grain-notes';
import { isGrains } from '../../reference/grains';
import type { Formulation } from '../engine/formulate';
import type { CautionTopic } from './caution-conditions';
import { type BatchCaution, cautionsAbout } from './cautions';

/** What there is to take care of in one matter, under a name that a cook looks for. */
export interface CareTopic {
  readonly id: string;
  readonly name: string;
  readonly cautions: readonly BatchCaution[];
}

type Name = string | ((formulation: Formulation) => string);

const topics: readonly (readonly [id: string, name: Name, about: readonly CautionTopic[]])[] = [
  ['jars', 'Jars and pressure', ['pressure']],
  ['spoilage', 'Spoilage and acidity', ['spoilage']],
  ['clean', 'Clean work and soaking', ['cleanliness']],
  ['choice', nameOfChoice, ['choice']],
  ['allergens', 'Allergens', ['allergens']],
  ['health', 'Children and health', ['infants', 'people']],
  ['alcohol', 'Alcohol', ['alcohol']],
  ['grains', ({ choices: { grain } }) => (grain.starter === undefined ? 'Grains' : 'Starter'), []],
  ['law', 'Its name, and selling it', ['law']],
];

/**
 * Everything to take care of in this batch by topic, each caution once, with how the grains are kept. A topic of which
 * this batch has nothing is left out.
 */
export function careTopics(formulation: Formulation): readonly CareTopic[] {
  return topics.flatMap(([id, name, about]): CareTopic[] => {
    const cautions = id === 'grains' ? ofGrains(formulation) : cautionsAbout(about, formulation);
    if (cautions.length === 0) return [];
    return [{ id, name: typeof name === 'string' ? name : name(formulation), cautions }];
  });
}

/** How the grains are kept; what they carry into the drink stands with the allergens. */
function ofGrains({ recipe }: Formulation): readonly BatchCaution[] {
  const kept = grainNotes[recipe.grains].flatMap(({ text, origin, caution }, place): BatchCaution[] =>
    caution === true ? [] : [{ id: `${recipe.grains}:${place}`, text, origin }],
  );
  if (!isGrains(recipe.grains)) return kept;
  return [...kept, { id: 'growth', ...growthIn(recipe.source, recipe.grains) }, { id: 'neverMixed', ...neverMixed }];
}

function nameOfChoice({ choices: { source, sweetener } }: Formulation): string {
  const name = `${source.plural.charAt(0).toUpperCase()}${source.plural.slice(1)}`;
  return sweetener.length === 0 ? name : `${name} and sweetener`;
}
