import { type Origin, published } from './origins';

/** Fruit or juice for a bottle: its sugars in g per 100 g, and what a cup and a piece of it weigh. */
export interface Fruit {
  readonly name: string;
  /** As it stands in a sentence: "30 g of raspberries". */
  readonly plain: string;
  readonly sucrose: number;
  readonly glucose: number;
  readonly fructose: number;
  /** Hexose of its maltose and galactose, which were not written down apart. */
  readonly otherHexose: number;
  readonly cupGrams: number | null;
  readonly pieceGrams: number | null;
  readonly origin: Origin;
}

interface Sizes {
  readonly cup?: readonly [grams: number, as?: string];
  readonly piece?: readonly [grams: number, what: string];
}

function fruit(
  record: string,
  plain: string,
  [sucrose, glucose, fructose, otherHexose = 0]: readonly [number, number, number, number?],
  { cup, piece }: Sizes,
): Fruit {
  const as = [cup?.[1] === undefined ? null : `cup ${cup[1]}`, piece === undefined ? null : piece[1]];
  const told = as.filter((each) => each !== null).join('; ');
  const name = `${plain.charAt(0).toUpperCase()}${plain.slice(1)}`;
  const origin = published('usda-sr', `Release 26, record ${record}`, told === '' ? undefined : `Weights: ${told}.`);
  return {
    name,
    plain,
    sucrose,
    glucose,
    fructose,
    otherHexose,
    cupGrams: cup?.[0] ?? null,
    pieceGrams: piece?.[0] ?? null,
    origin,
  };
}

const table = {
  raspberries: fruit('09302', 'raspberries', [0.2, 1.86, 2.35], { cup: [123], piece: [1.9, 'ten berries 19 g'] }),
  strawberries: fruit('09316', 'strawberries', [0.47, 1.99, 2.44], {
    ...{ cup: [152, 'of halves'], piece: [12, 'a medium berry'] },
  }),
  blueberries: fruit('09050', 'blueberries', [0.11, 4.88, 4.97], { cup: [148], piece: [1.36, 'fifty berries 68 g'] }),
  banana: fruit('09040', 'banana', [2.39, 4.98, 4.85, 0.01], { cup: [225, 'mashed'], piece: [118, 'a medium banana'] }),
  mango: fruit('09176', 'mango', [6.97, 2.01, 4.68], { cup: [165, 'in pieces'], piece: [336, 'a fruit'] }),
  pineapple: fruit('09266', 'pineapple', [5.99, 1.73, 2.12], { cup: [165, 'in pieces'] }),
  sourCherries: fruit('09063', 'sour cherries', [0.8, 4.18, 3.51], { cup: [155, 'pitted'] }),
  sweetCherries: fruit('09070', 'sweet cherries', [0.15, 6.59, 5.37, 0.716], { cup: [154, 'pitted'] }),
  apple: fruit('09003', 'apple', [2.07, 2.43, 5.9], { piece: [182, 'a medium apple'] }),
  peach: fruit('09236', 'peach', [4.76, 1.95, 1.53, 0.144], { piece: [150, 'a medium peach'] }),
  driedFigs: fruit('09094', 'dried figs', [0.07, 24.79, 22.93], { piece: [8.4, 'a fig'] }),
  raisins: fruit('09298', 'raisins', [0.45, 27.75, 29.68], { piece: [0.52, 'fifty raisins 26 g'] }),
  driedApricots: fruit('09032', 'dried apricots', [7.89, 33.08, 12.47, 0.045], { piece: [3.5, 'a half'] }),
  orangeJuice: fruit('09209', 'orange juice', [4.01, 2.08, 2.23], { cup: [249] }),
  appleJuice: fruit('09016', 'apple juice', [1.26, 2.63, 5.73], { cup: [248] }),
  grapeJuice: fruit('09135', 'grape juice', [0.04, 6.81, 7.36], { cup: [253] }),
  pineappleJuice: fruit('09273', 'pineapple juice', [1.53, 4.65, 3.81], { cup: [250] }),
  pomegranateJuice: fruit('09442', 'pomegranate juice', [0, 6.28, 6.37], { cup: [249] }),
  lemonJuice: fruit('09152', 'lemon juice', [0.43, 0.99, 1.1], { cup: [244], piece: [48, 'the juice of a lemon'] }),
} satisfies Record<string, Fruit>;

export type FruitId = keyof typeof table;

/** Fruit and juices that go into a bottle, in the order of the menu. Dates are among the sweeteners. */
export const fruits: Readonly<Record<FruitId, Fruit>> = table;
