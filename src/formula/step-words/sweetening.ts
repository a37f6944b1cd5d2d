import { sweeteners } from '../../reference/sweeteners';
import { type Pen, say } from './pen';
import type { StepDraft } from './step';

interface Part {
  readonly name: string;
  readonly state: 'dry' | 'liquid' | 'fruit';
  /** null: the whole of what is added. */
  readonly share: number | null;
}

function partsOf({ formulation: { recipe, choices } }: Pen): readonly Part[] {
  const shares = choices.sweetener.map(({ share }) => share);
  return recipe.sweetener.flatMap(({ id }, place): Part[] => {
    if (id === 'none') return [];
    const { name, state } = sweeteners[id];
    return [{ name, state, share: shares.length === 1 ? null : (shares[place] ?? 0) }];
  });
}

function writePart({ name, share }: Part, pen: Pen): string {
  const amount = share === null ? null : pen.share('sweetenerMass', share);
  return `${name}: ${amount ?? pen.amount('sweetenerMass')}.`;
}

function isAdded(pen: Pen): boolean {
  return pen.formulation.rows.sweetenerMass.status !== 'absent' && pen.value('sweetenerMass') !== 0;
}

/** What is blended in with the source, because it is a fruit: name and amount; null where nothing is. */
export function fruitToBlend(pen: Pen): string | null {
  const fruit = isAdded(pen) ? partsOf(pen).filter(({ state }) => state === 'fruit') : [];
  return fruit.length === 0 ? null : fruit.map((part) => writePart(part, pen)).join(' ');
}

/** The step that feeds the grains; null where all of the sweetener was blended in. */
export function sweetenStep(pen: Pen): StepDraft | null {
  const { status } = pen.formulation.rows.sweetenerMass;
  const parts = partsOf(pen).filter(({ state }) => state !== 'fruit');
  if (!isAdded(pen)) return { id: 'sweeten', title: 'Add no sweetener', text: explainNone(pen, status === 'absent') };
  if (parts.length === 0) return null;
  return {
    id: 'sweeten',
    title: 'Sweeten the milk',
    text: say(...parts.map((part) => writePart(part, pen)), 'Stir until it is dissolved.'),
  };
}

function explainNone(pen: Pen, isAbsent: boolean): string {
  if (!isAbsent) return 'This batch needs none.';
  const [refused] = partsOf(pen);
  return refused === undefined
    ? 'None is chosen, so the grains have only the sugar of the milk.'
    : `${refused.name} does not feed the grains, so they have only the sugar of the milk.`;
}
