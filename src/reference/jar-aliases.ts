import type { JarId } from './jars';

/** Lower-case words for a jar besides its name and its size in figures, without "jar"; no two jars share one. */
export const jarAliases: Readonly<Record<JarId, readonly string[]>> = {
  pint: ['pint', 'pt', 'wide mouth pint', 'pint wide mouth'],
  halfLitre: ['half litre', 'half liter', 'halfliter', 'halflitre', '½ litre', '½ liter'],
  litre: ['litre', 'liter', 'l', 'one litre', 'one liter'],
  quartWide: ['quart', 'qt', 'one quart', 'quart wide', 'wide quart', 'wide mouth quart', 'quart wide mouth'],
  quartRegular: ['quart regular', 'regular quart', 'regular mouth quart', 'quart regular mouth', 'narrow mouth quart'],
  litreAndHalf: ['litre and a half', 'liter and a half', 'one and a half litres', 'one and a half liters'],
  halfGallon: ['half gallon', '½ gallon', 'half gallon wide mouth', 'wide mouth half gallon'],
  twoLitre: ['two litre', 'two liter', 'two litres', 'two liters'],
  threeLitre: ['three litre', 'three liter', 'three litres', 'three liters'],
  gallon: ['gallon', 'gal', 'one gallon'],
  fourLitre: ['four litre', 'four liter', 'four litres', 'four liters'],
  fiveLitre: ['five litre', 'five liter', 'five litres', 'five liters'],
  own: ['own', 'my own', 'your own', 'own one', 'other'],
};
