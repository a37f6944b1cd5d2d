import { type Allergen, type AllergenId, allergens } from '../../reference/allergens';
import { judgement, type Origin } from '../../reference/origins';
import type { Source } from '../../reference/sources';
import type { Formulation } from '../engine/formulate';
import { lowerFirst } from '../words/lower-first';
import { describeOrigin } from '../words/origin-words';

export interface BatchAllergen {
  readonly id: AllergenId;
  readonly from: 'source' | 'grains' | 'starter';
  /** Whether the US list of major allergens and Annex II of the EU regulation name it. */
  readonly us: boolean;
  readonly eu: boolean;
  /** Which list names it, in a sentence or two. */
  readonly text: string;
  /** Both lists, where both were looked at. */
  readonly origin: Origin;
}

export interface BatchAllergens {
  readonly entries: readonly BatchAllergen[];
  /** All of them, and which list names which. */
  readonly sentence: string;
}

/** The allergens of the source and of the grains, each with the lists that name it; the US and EU lists differ. */
export function allergensOf({ choices: { source, grain } }: Formulation): BatchAllergens {
  const entries = [
    ...source.allergens.map((id) => describeAllergen(id, 'source')),
    ...grain.allergens.map((id) => describeAllergen(id, grain.starter === undefined ? 'grains' : 'starter')),
  ];
  const unnamed = source.allergens.length > 0 ? [] : [describeUnnamed(source)];
  const texts = [...unnamed, ...entries.map(({ text }) => text)];
  return { entries, sentence: `Allergens. ${texts.join(' ')}` };
}

function describeAllergen(id: AllergenId, from: BatchAllergen['from']): BatchAllergen {
  const allergen: Allergen = allergens[id];
  const { name, us, eu, note } = allergen;
  const subject = {
    source: name,
    grains: `${name}, from the grains,`,
    starter: `${name}, which the starter may bring,`,
  }[from];
  // What neither list names has a note that says so itself, with its date.
  const text =
    us || eu || note === undefined
      ? [`${subject} is on ${nameLists(us, eu)}.`, ...(note === undefined ? [] : [note])].join(' ')
      : `${name}, by the US and EU lists: ${lowerFirst(note)}`;
  return { id, from, us, eu, text, origin: joinOrigins(allergen.origins) };
}

function nameLists(us: boolean, eu: boolean): string {
  if (us && eu) return 'the US list and the EU list';
  if (us) return 'the US list and not on the EU list';
  return eu ? 'the EU list and not on the US list' : 'neither the US list nor the EU list';
}

/** Whether the sheet can't know what the source is made of: a carton, or one of the cook's own. */
export function isUnknown({ label, ownLabel }: Pick<Source, 'label' | 'ownLabel'>): boolean {
  return label !== null || ownLabel !== undefined;
}

function describeUnnamed(source: Source): string {
  const { label, plural } = source;
  if (isUnknown(source))
    return label === null
      ? 'Those of a source of your own are for you to name.'
      : 'Those of the source are printed on the carton.';
  return `${upperFirst(plural)} are on neither the US list nor the EU list. Read the packet all the same.`;
}

/** One origin for what rests on several works: the first, the others named in its note. */
function joinOrigins([first, ...others]: readonly Origin[]): Origin {
  if (first === undefined) return judgement('No list was looked at.');
  if (first.kind !== 'published' || others.length === 0) return first;
  const notes = [...(first.note === undefined ? [] : [first.note]), ...others.map(describeOrigin)];
  return { ...first, note: notes.join(' ') };
}

function upperFirst(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
