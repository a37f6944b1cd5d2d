/** The parts about the batch that is looked at, in their order. */
export const batchParts = [
  'steps',
  'time',
  'fizz',
  'plan',
  'log',
  'grains',
  'recipe',
  'swap',
  'glass',
  'care',
  'trouble',
  'paper',
] as const;

/** The parts about the kitchen: what it has, keeps and teaches. */
export const kitchenParts = ['onHand', 'cost', 'class', 'kitchen', 'numbers'] as const;

/** The parts that a phone has at the thumb; the others are behind More. */
export const atThumb = ['steps', 'plan', 'fizz'] as const satisfies readonly PartId[];

/** The parts of the page beside the sheet, in their order. */
export const partIds = [...batchParts, ...kitchenParts] as const;

export type PartId = (typeof partIds)[number];

export function isPartId(id: string): id is PartId {
  return partIds.some((one) => one === id);
}
