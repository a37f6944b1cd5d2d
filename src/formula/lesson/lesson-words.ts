import { grains } from '../../reference/grains';
import type { ShoppingLine } from '../cost/shopping-words';
import type { Formulation } from '../engine/formulate';
import type { NumericRowId } from '../recipe/order';
import { labelOf } from '../words/labels';
import { leadingInShort } from '../words/leading';
import { lowerFirst } from '../words/lower-first';
import { describeProblem } from '../words/words';
import { type Kitchen, writeRow, writeValue } from '../words/write-row';
import type { CultureToBring, LeftBehind, Lesson } from './lesson';

/** What one kitchen weighs, and when it is ready, as it is read there. */
export interface KitchenTold {
  /** Such as `118 g almonds`. */
  readonly takes: readonly string[];
  /** `ready in 12 h (8–16 h)`, or why there is no time for it. */
  readonly ready: string;
  /** Whether `ready` is a time. */
  readonly isTimed: boolean;
}

/** What one kitchen weighs of source, sweetener and culture, in the unit that it reads, and in how many hours it is ready. */
export function tellKitchen(formulation: Formulation, kitchen: Kitchen): KitchenTold {
  const { choices } = formulation;
  const sweet = choices.sweetener.map(({ entry }) => lowerFirst(entry.name)).join(' with ');
  const takes = [
    amountOf(formulation, 'sourceMass', choices.source.plural, kitchen),
    amountOf(formulation, 'sweetenerMass', sweet, kitchen),
    amountOf(formulation, 'grainMass', lowerFirst(choices.grain.name), kitchen),
  ];
  const ready = writeRow(formulation, 'readyTime', kitchen);
  const [problem] = formulation.rows.readyTime.problems;
  const told = { takes: takes.filter((one) => one !== null) };
  if (ready === null) {
    return { ...told, ready: problem === undefined ? '' : describeProblem(problem, kitchen), isTimed: false };
  }
  const range = ready.range === null ? '' : ` (${ready.range})`;
  return { ...told, ready: `ready in ${ready.metric}${range}`, isTimed: true };
}

function amountOf(formulation: Formulation, row: NumericRowId, food: string, kitchen: Kitchen): string | null {
  const written = writeRow(formulation, row, kitchen);
  return written === null ? null : `${leadingInShort(written, kitchen.leads).first} ${food}`;
}

/** What could not be carried to a kitchen, each in a sentence. */
export function describeLeft(left: readonly LeftBehind[], kitchen: Kitchen): readonly string[] {
  return left.map((one) => sentenceOf(one, kitchen));
}

function sentenceOf(one: LeftBehind, kitchen: Kitchen): string {
  switch (one.what) {
    case 'dose': {
      const rate = writeValue(one.rate, 'concentration', null, kitchen).metric;
      return `The recipe’s ${rate} is for ${lowerFirst(grains[one.of].name)}; ${lowerFirst(grains[one.here].name)} take their usual dose.`;
    }
    case 'jar':
      return 'What is typed of the recipe’s jar is of that jar; this one is filled by its own size.';
    case 'ownJar':
      return 'A jar of one’s own counts as the litre jar until it is measured.';
  }
}

/** What of the recipe no kitchen takes over, each in a sentence. */
export function describeLesson({ sizes, unread, wasMeasured }: Lesson): readonly string[] {
  const rows = unread.map((row) => `“${labelOf(row)}”`).join(' and ');
  return [
    ...(sizes.length > 0 ? ['The amounts typed in the recipe stay there: each kitchen fills its own jar.'] : []),
    ...(wasMeasured ? ['What was measured in the recipe stays there: each kitchen is planned afresh.'] : []),
    ...(unread.length > 0 ? [`What is typed for ${rows} can’t be read, so the usual stands here.`] : []),
  ];
}

/** The culture to bring, as a line of the shopping list. */
export function tellCulture({ grains: id, grams, kitchens }: CultureToBring, kitchen: Kitchen): ShoppingLine {
  const { first } = leadingInShort(writeValue(grams, 'mass', null, kitchen), kitchen.leads);
  const whom = kitchens === 1 ? '1 kitchen' : `${kitchens} kitchens`;
  return { food: `grains.${id}`, name: grains[id].name, take: first, aside: `to bring, for ${whom}`, cost: null };
}
