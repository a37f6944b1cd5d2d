/** The parts of the page beside the sheet, in their order. */
export const partIds = [
  'steps',
  'time',
  'fizz',
  'plan',
  'log',
  'grains',
  'recipe',
  'swap',
  'onHand',
  'cost',
  'glass',
  'paper',
  'care',
  'trouble',
  'kitchen',
  'numbers',
] as const;

export type PartId = (typeof partIds)[number];

export function isPartId(id: string): id is PartId {
  return partIds.some((one) => one === id);
}
