import { sweeteners } from '../../reference/sweeteners';
import type { StepDraft } from './step';
import { type StepWriter, say } from './step-writer';

interface Part {
  readonly name: string;
  readonly state: 'dry' | 'liquid' | 'fruit';
  /** null: the whole of what is added. */
  readonly share: number | null;
}

function partsOf({ formulation: { recipe, choices } }: StepWriter): readonly Part[] {
  const shares = choices.sweetener.map(({ share }) => share);
  return recipe.sweetener.flatMap(({ id }, place): Part[] => {
    if (id === 'none') return [];
    const { name, state } = sweeteners[id];
    return [{ name, state, share: shares.length === 1 ? null : (shares[place] ?? 0) }];
  });
}

function writePart({ name, share }: Part, writer: StepWriter): string {
  const amount = share === null ? null : writer.share('sweetenerMass', share);
  return `${name}: ${amount ?? writer.amount('sweetenerMass')}.`;
}

function isAdded(writer: StepWriter): boolean {
  return writer.formulation.rows.sweetenerMass.status !== 'absent' && writer.value('sweetenerMass') !== 0;
}

/** What is blended in with the source, because it is a fruit: name and amount; null where nothing is. */
export function fruitToBlend(writer: StepWriter): string | null {
  const fruit = isAdded(writer) ? partsOf(writer).filter(({ state }) => state === 'fruit') : [];
  return fruit.length === 0 ? null : fruit.map((part) => writePart(part, writer)).join(' ');
}

/** The step that feeds the grains; null where all of the sweetener was blended in. */
export function sweetenStep(writer: StepWriter): StepDraft | null {
  const { status } = writer.formulation.rows.sweetenerMass;
  const parts = partsOf(writer).filter(({ state }) => state !== 'fruit');
  if (!isAdded(writer))
    return { id: 'sweeten', title: 'Add no sweetener', text: explainNone(writer, status === 'absent') };
  if (parts.length === 0) return null;
  return {
    id: 'sweeten',
    title: 'Sweeten the milk',
    text: say(...parts.map((part) => writePart(part, writer)), 'Stir until it is dissolved.'),
  };
}

function explainNone(writer: StepWriter, isAbsent: boolean): string {
  if (!isAbsent) return 'This batch needs none.';
  const [refused] = partsOf(writer);
  return refused === undefined
    ? 'None is chosen, so the grains have only the sugar of the milk.'
    : `${refused.name} does not feed the grains, so they have only the sugar of the milk.`;
}
