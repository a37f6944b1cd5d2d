import { type Allergen, type AllergenId, allergens } from '../../reference/allergens';
import { alcoholLine } from '../../reference/finished';
import type { Grain } from '../../reference/grains';
import { isUnknown } from '../advice/batch-allergens';
import { allergensOf, findCaution } from '../advice/cautions';
import type { Formulation } from '../engine/formulate';
import { fateAfterBottle, fateOfFirst } from '../fizz/sugar-fate';
import { lowerFirst } from '../words/lower-first';
import type { Kitchen } from '../words/write-row';

/** Days as they are to stand on the label; null leaves room to write one by pen. */
export interface LabelDays {
  readonly made: string | null;
  readonly tasteBy: string | null;
  readonly useBy: string | null;
}

/** What a label is asked to say beside what is worked out; temperatures begin with the unit that `leads`. */
export interface LabelAsked {
  readonly name: string;
  readonly days: LabelDays;
  readonly extra?: string;
  readonly leads?: Kitchen['leads'];
}

export interface LabelLine {
  readonly id:
    | 'name'
    | 'what'
    | 'fruit'
    | 'made'
    | 'tasteBy'
    | 'allergens'
    | 'dairy'
    | 'infants'
    | 'keep'
    | 'live'
    | 'alcohol'
    | 'extra';
  readonly text: string;
}

/**
 * What to write on a jar, line by line, the batch's name first: what is in it, its days, the allergens of its source
 * and grains with the lists that name them, and how to keep it. It is called plant-milk kefir (Codex 243, § 2.1: kefir
 * alone is made of milk). `extra` is a line of the cook's own, left out where blank.
 */
export function labelOfBatch(
  formulation: Formulation,
  { name, days, extra = '', leads = 'metric' }: LabelAsked,
): readonly LabelLine[] {
  const { source, grain } = formulation.choices;
  const { fruit } = formulation.recipe;
  const hasHoney = findCaution('honeyInfants', formulation) !== null;
  const keep = findCaution('keepCold', formulation);
  const lines: readonly (LabelLine | null)[] = [
    { id: 'name', text: name },
    { id: 'what', text: `Plant-milk kefir of ${source.plural}, made with ${nameWithin(grain.name)}.` },
    fruit === undefined ? null : { id: 'fruit', text: `In each bottle: ${fruit.name}.` },
    { id: 'made', text: `Made ${days.made ?? blank}` },
    { id: 'tasteBy', text: writeLast(days) },
    { id: 'allergens', text: writeAllergens(formulation) },
    grain.dairy ? { id: 'dairy', text: writeDairy(grain) } : null,
    hasHoney ? { id: 'infants', text: 'With honey: not for children under 12 months.' } : null,
    keep === null ? null : { id: 'keep', text: leads === 'us' ? fahrenheitFirst(keep.text) : keep.text },
    { id: 'live', text: 'Contains live cultures. Open slowly.' },
    { id: 'alcohol', text: writeAlcohol(formulation) },
    extra.trim() === '' ? null : { id: 'extra', text: extra.trim() },
  ];
  return lines.filter((line) => line !== null);
}

/**
 * For how many whole days a batch is at its best, and after how many more it is used up: the two ends of the row
 * `keepDays`, from the day the grains come out. Null where the row has no value.
 */
export function labelDaysOf({ rows }: Formulation): { readonly best: number; readonly last: number } | null {
  const { value, range } = rows.keepDays;
  if (typeof value !== 'number') return null;
  const { low, high } = range ?? { low: value, high: value };
  return { best: Math.floor(low), last: Math.floor(high) };
}

const blank = '__________';

function writeLast({ tasteBy, useBy }: LabelDays): string {
  const first = `Taste by ${tasteBy ?? blank}`;
  return useBy === null || useBy === tasteBy ? first : `${first}, use up by ${useBy}`;
}

/**
 * That there is some alcohol; where it can pass the line that law draws, or nobody can tell (a bottle outside the models
 * makes alcohol too), that it may be more than that.
 */
function writeAlcohol(formulation: Formulation): string {
  const isBottled = formulation.rows.bottleTime.value !== 0;
  const fate = isBottled ? fateAfterBottle(formulation) : fateOfFirst(formulation);
  return fate?.line === 'under' ? 'Holds a little alcohol.' : `May hold more than ${alcoholLine.value} % alcohol.`;
}

function fahrenheitFirst(text: string): string {
  return text.replace(/(\d+\s°C) \((\d+\s°F)\)/g, '$2 ($1)');
}

/** What of milk the culture brings or may bring; a finished kefir brings what it was made of as well. */
function writeDairy({ starter }: Grain): string {
  if (starter === undefined) return `Traces of milk, from the grains: ${listsOf('milk')}.`;
  const from =
    starter.packet === undefined ? 'the kefir it was started with' : 'the starter powder, as its packet says';
  const besides = starter.packet === undefined ? ' And whatever that kefir was made of.' : '';
  return `May hold milk, from ${from}: ${listsOf('milk')}.${besides}`;
}

/** The source's; what the grains bring has a line of its own. */
function writeAllergens(formulation: Formulation): string {
  const { source } = formulation.choices;
  const named = allergensOf(formulation).entries.filter(({ from }) => from === 'source');
  if (named.length > 0) return named.map(({ id }) => writeAllergen(id)).join(' ');
  if (isUnknown(source))
    return source.label === null
      ? 'Allergens: those of what it was made of.'
      : 'Allergens: those named on the carton it was made from.';
  return `Allergens: ${source.plural} are on neither the US nor the EU list.`;
}

function writeAllergen(id: AllergenId): string {
  const { name, us, eu }: Allergen = allergens[id];
  const contains = `Contains ${nameWithin(name)}: ${listsOf(id)}`;
  return us || eu ? `${contains}.` : `${contains}, yet some people react to it.`;
}

function listsOf(id: AllergenId): string {
  const { us, eu } = allergens[id];
  if (us && eu) return 'on the US and EU allergen lists';
  if (us) return 'on the US allergen list, not the EU one';
  return eu ? 'on the EU allergen list, not the US one' : 'on neither the US nor the EU allergen list';
}

/** A name within a sentence; that of a place keeps its capital. */
function nameWithin(text: string): string {
  return text.startsWith('Brazil') ? text : lowerFirst(text);
}
