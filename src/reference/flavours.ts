import { type Origin, published } from './origins';

/** What flavours a glass at the end: what a level spoon of it weighs. */
export interface Flavour {
  readonly name: string;
  /** Lower-case words a recipe may use for it. */
  readonly aliases: readonly string[];
  readonly kind: 'liquid' | 'sugar' | 'fine';
  readonly spoon: {
    readonly grams: number;
    readonly millilitres: number;
    readonly measure: string;
    readonly origin: Origin;
  };
}

// 231 in³ over 768 and over 256.
const [teaspoon, tablespoon] = [4.92892159375, 14.78676478125];

function spooned(measure: 'tsp' | 'tbsp', grams: number, note?: string): Flavour['spoon'] {
  const origin = published('usda-sr', `Release 26, spices and flavourings, 1 ${measure}`, note);
  return { grams, millilitres: measure === 'tsp' ? teaspoon : tablespoon, measure, origin };
}

const table = {
  vanilla: {
    name: 'Vanilla extract',
    aliases: ['vanilla extract', 'vanilla', 'pure vanilla extract', 'vanilla essence'],
    kind: 'liquid',
    spoon: spooned('tsp', 4.2, 'It is 34.4 % alcohol: a teaspoon in a litre adds 0.18 % by volume.'),
  },
  cocoa: {
    name: 'Cocoa powder',
    aliases: ['cocoa powder', 'cocoa', 'unsweetened cocoa', 'unsweetened cocoa powder', 'cacao powder', 'cacao'],
    kind: 'fine',
    spoon: spooned('tbsp', 5.4),
  },
  cinnamon: {
    name: 'Cinnamon, ground',
    aliases: ['cinnamon', 'ground cinnamon', 'cinnamon powder'],
    kind: 'fine',
    spoon: spooned('tsp', 2.6),
  },
  salt: {
    name: 'Salt',
    aliases: ['salt', 'sea salt', 'table salt', 'fine salt', 'fine sea salt'],
    kind: 'sugar',
    spoon: spooned('tsp', 6),
  },
} satisfies Record<string, Flavour>;

export type FlavourId = keyof typeof table;

/** Flavours for the glass; none is food for the grains. */
export const flavours: Readonly<Record<FlavourId, Flavour>> = table;
