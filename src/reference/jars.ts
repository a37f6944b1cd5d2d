import { type Coefficient, fromMemory, judgement } from './origins';

export interface Jar {
  readonly name: string;
  /** Size it is sold by, mL. */
  readonly nominal: number;
  /** Held to the very rim, mL. */
  readonly brimful: Coefficient;
  /** Inner measures, cm, from the rim down: a cylinder (neck), a cone frustum (shoulder), a cylinder (body). */
  readonly neckDiameter: Coefficient;
  readonly neckHeight: Coefficient;
  readonly shoulderHeight: Coefficient;
  readonly bodyDiameter: Coefficient;
}

type Diameter = readonly [value: number, low: number, high: number];

const wideMouth: Diameter = [7.6, 7.2, 7.8];
const regularMouth: Diameter = [6, 5.8, 6.3];
const bigMouth: Diameter = [10, 8.5, 11.5];

function jar(name: string, nominal: number, neck: Diameter, body: Diameter): Jar {
  return {
    name,
    nominal,
    brimful: {
      value: nominal * 1.06,
      unit: 'mL',
      low: nominal * 1.04,
      high: nominal * 1.08,
      origin: fromMemory('4 to 8 % above the nominal size.'),
    },
    neckDiameter: inner(neck),
    neckHeight: { value: 2.25, unit: 'cm', low: 2, high: 2.5, origin: fromMemory() },
    shoulderHeight: { value: 1.5, unit: 'cm', low: 1, high: 2, origin: fromMemory() },
    bodyDiameter: inner(body),
  };
}

function inner([value, low, high]: Diameter): Coefficient {
  return { value, unit: 'cm', low, high, origin: fromMemory('A generic jar: yours may differ.') };
}

const litre = jar('Litre jar', 1000, wideMouth, [9, 8.5, 9.8]);
const yourOwn = judgement('Starts as the litre jar; measure yours.');

// US sizes follow from the gallon of 231 in³, 3785.411784 mL: half 1892.705892, quart 946.352946, pint 473.176473.
const table = {
  pint: jar('Pint, wide mouth', 473.176473, wideMouth, [8, 7.5, 8.5]),
  halfLitre: jar('Half-litre jar', 500, wideMouth, [8, 7.6, 9]),
  litre,
  quartWide: jar('Quart, wide mouth', 946.352946, wideMouth, [9, 8.5, 9.5]),
  quartRegular: jar('Quart, regular mouth', 946.352946, regularMouth, [9, 8.5, 9.5]),
  litreAndHalf: jar('Litre-and-a-half jar', 1500, wideMouth, [10.5, 9.8, 11.2]),
  halfGallon: jar('Half-gallon, wide mouth', 1892.705892, wideMouth, [11.5, 10.8, 12.2]),
  twoLitre: jar('Two-litre jar', 2000, wideMouth, [11.5, 10.8, 12.8]),
  threeLitre: jar('Three-litre jar', 3000, [8, 7.2, 10], [13, 12.5, 15]),
  gallon: jar('Gallon jar', 3785.411784, bigMouth, [14, 13.5, 16]),
  fourLitre: jar('Four-litre jar', 4000, bigMouth, [14, 13.5, 16.5]),
  fiveLitre: jar('Five-litre jar', 5000, bigMouth, [16.5, 15.5, 18]),
  own: {
    name: 'Your own jar',
    nominal: litre.nominal,
    brimful: { value: litre.brimful.value, unit: 'mL', origin: yourOwn },
    neckDiameter: { value: litre.neckDiameter.value, unit: 'cm', origin: yourOwn },
    neckHeight: { value: litre.neckHeight.value, unit: 'cm', origin: yourOwn },
    shoulderHeight: { value: litre.shoulderHeight.value, unit: 'cm', origin: yourOwn },
    bodyDiameter: { value: litre.bodyDiameter.value, unit: 'cm', origin: yourOwn },
  },
} satisfies Record<string, Jar>;

export type JarId = keyof typeof table;

/** Generic jar profiles, in the order of the menu, the cook’s own last. */
export const jars: Readonly<Record<JarId, Jar>> = table;
