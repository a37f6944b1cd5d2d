import type { FunctionComponent } from 'preact';
import type { PartId } from './part-ids';
import type { PartProps } from './part-props';

interface Part {
  readonly name: string;
  /** What it is for, where its name alone may not say it. */
  readonly about: string;
  readonly load: () => Promise<{ readonly default: FunctionComponent<PartProps> }>;
}

/** The parts of the page beside the sheet, whose order is in `part-ids.ts`; each is a script of its own, loaded when seen. */
export const partList = {
  steps: { name: 'Steps', about: 'the batch step by step', load: () => import('../steps/StepsPart') },
  time: { name: 'Time', about: 'when it is ready, and sooner', load: () => import('../time/TimePart') },
  fizz: { name: 'Fizz', about: 'bottles, pressure, sugar and alcohol', load: () => import('../fizz/FizzPart') },
  plan: { name: 'Plan', about: 'hours and days, calendar', load: () => import('../plan/PlanPart') },
  log: { name: 'Log', about: 'what you found, your kitchen’s pace', load: () => import('../log/LogPart') },
  grains: {
    name: 'Grains',
    about: 'weigh them out and back, growth, rest',
    load: () => import('../grains/GrainsPart'),
  },
  recipe: { name: 'Recipe', about: 'paste one, write this one out', load: () => import('../recipe/RecipePart') },
  swap: { name: 'Swap', about: 'another sweetener, cups to grams', load: () => import('../recipe/SwapPart') },
  onHand: { name: 'On hand', about: 'the largest batch from what I have', load: () => import('../on-hand/OnHandPart') },
  cost: { name: 'Cost', about: 'prices, shopping list', load: () => import('../cost/CostPart') },
  glass: { name: 'Glass', about: 'what is in a glass, the pulp', load: () => import('../glass/GlassPart') },
  paper: { name: 'Paper', about: 'print, labels, files, links', load: () => import('../paper/PaperPart') },
  class: { name: 'Class', about: 'one recipe for many kitchens', load: () => import('../class/ClassPart') },
  care: { name: 'Care', about: 'cautions and allergens', load: () => import('../care/CarePart') },
  trouble: {
    name: 'Trouble',
    about: 'sour, slimy, mould, a hard bottle',
    load: () => import('../trouble/TroublePart'),
  },
  numbers: {
    name: 'Numbers',
    about: 'where each figure comes from',
    load: () => import('../numbers/NumbersPart'),
  },
  kitchen: { name: 'Kitchen', about: 'spoons, cups, scale', load: () => import('../kitchen/KitchenPart') },
} as const satisfies Record<PartId, Part>;
