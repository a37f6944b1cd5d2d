import { doubleOf } from '../../measure/exact';
import { wholeWords } from '../../measure/number-words';
import { matchAt, skip } from '../../measure/read-number';
import { findUnitWord } from '../../measure/unit-words';
import { type CupStandardId, convertNumber } from '../../measure/units';
import { type JarId, jars } from '../../reference/jars';
import { readAmount } from './amount';
import { readCount } from './count';
import { inBaseUnits, volumeOf } from './in-base-units';
import type { JarHint } from './shape';

const holds = /\b(?:in|into|for|fills?|to fill|use|needs?|equipment|have):? /giu;
const makes = /\b(?:makes|yields?|gives):? /giu;
const size = /half[ -]gallon|half[ -]lit(?:re|er)|quart|pint|gallon|lit(?:re|er)/iuy;
const article =
  /(?:(?:an?|one(?!-)|1(?= \p{L}{3})|the|your|my|each|about|around|approximately|clean|large|glass|big|small|empty|sterili[sz]ed|(?:wide|regular)[- ]mouth(?:ed)?)(?!\p{L}) ?|~ ?)+/iuy;
const toJar = / ?-?,? ?(?:[\p{L}-]+ ){0,3}?jars?(?!\p{L})/iuy;
const numbered = new RegExp(`(${wholeWords.join('|')})[ -](?=lit|quart|gallon|pint)`, 'iuy');
const manyJars = /(?:(?:\d{1,2}|two|three|four)(?: ?[x×] ?| (?=\d|one|half|quart|pint|lit|gal)))/iuy;
const jarFirst =
  /(?:an? |the |your |one )?jars?(?: size)?(?: ?[:,=(-] ?| (?:of|holding|that holds) | )(?:(?:at least|about|around) )?(?=[\d½⅓⅔¼¾⅕-⅞\p{L}])/iuy;
// What a jar is like, up to the end of the line; more than that is a sentence.
const ofJar =
  /^[,\s]*(?:\(?(?:with|wide|regular|narrow|mouth|neck|lid|glass|clean|sterili[sz]ed|mason|a|an|and|airlock|-|or larger|or bigger)\)?[ ,.]*)*$/i;
const nearSize = 0.02;

const namedSizes: readonly (readonly [RegExp, number])[] = [
  [/^half[ -]gallon/i, convertNumber(1, 'gal', 'mL') / 2],
  [/^half[ -]lit/i, 500],
  [/^quart/i, convertNumber(1, 'qt', 'mL')],
  [/^pint/i, convertNumber(1, 'pt', 'mL')],
  [/^gallon/i, convertNumber(1, 'gal', 'mL')],
  [/^lit/i, 1000],
];

interface Sized {
  readonly volume: number;
  readonly end: number;
}

function readVolume(text: string, at: number, decimalComma: boolean, cups: CupStandardId): Sized | null {
  const words = matchAt(numbered, text, at);
  if (words !== null) {
    const one = readVolume(text, at + words[0].length, decimalComma, cups);
    const times = wholeWords.indexOf((words[1] ?? '').toLowerCase()) + 1;
    return one === null ? null : { ...one, volume: one.volume * times };
  }
  const count = readCount(text, at, decimalComma);
  if (count?.ok) {
    const unit = findUnitWord(text, skip(/ ?-? ?/y, text, count.count.end));
    const volume = unit === null ? null : volumeOf(count.count.low, unit, cups);
    if (unit !== null && volume !== null) return { volume: doubleOf(volume), end: unit.to };
  }
  const named = matchAt(size, text, at);
  const millilitres = named === null ? undefined : namedSizes.find(([pattern]) => pattern.test(named[0]))?.[1];
  return named === null || millilitres === undefined ? null : { volume: millilitres, end: at + named[0].length };
}

/**
 * The jar of the list that a volume names, within 2 %; of two of one size the one whose mouth the words name, else the
 * first. Null where there is none.
 */
export function findJar(volume: number, words = ''): JarId | null {
  const mouth = /(wide|regular)[ -]mouth/i.exec(words)?.[0].toLowerCase().replace('-', ' ') ?? '';
  let best: JarId | null = null;
  for (const id of Object.keys(jars)) {
    if (!isJar(id) || id === 'own') continue;
    const off = Math.abs(jars[id].nominal / volume - 1);
    if (off >= nearSize) continue;
    const nearer = best === null || off < Math.abs(jars[best].nominal / volume - 1);
    const named =
      mouth !== '' && best !== null && jars[id].nominal === jars[best].nominal && jars[id].name.includes(mouth);
    if (nearer || named) best = id;
  }
  return best;
}

function isJar(id: string): id is JarId {
  return Object.hasOwn(jars, id);
}

/** The jar that a line is for, such as "for a 1-quart jar", or how much it says that the recipe makes. */
export function findJarHint(text: string, decimalComma: boolean, cups: CupStandardId): JarHint | null {
  for (const place of text.matchAll(holds)) {
    const at = place.index + place[0].length;
    for (const from of new Set([at, skip(article, text, at)])) {
      const sized = readVolume(text, from, decimalComma, cups);
      const jar = sized === null ? null : matchAt(toJar, text, sized.end);
      if (sized === null || jar === null || / of\b/i.test(text.slice(sized.end + jar[0].length).slice(0, 4))) continue;
      return hint('jar', sized.volume, text);
    }
  }
  for (const place of text.matchAll(makes)) {
    const at = place.index + place[0].length;
    const from = skip(article, text, at);
    const read = readAmount(text, from, decimalComma);
    const parts = read?.ok ? read.amount.parts.map((part) => inBaseUnits(part, true, cups)) : [];
    if (parts.length > 0 && parts.every((part) => part?.kind === 'volume'))
      return hint(
        'makes',
        parts.reduce((sum, part) => sum + (part?.low ?? 0), 0),
      );
    const named = readVolume(text, from, decimalComma, cups);
    if (named !== null) return hint('makes', named.volume);
  }
  return null;
}

function hint(what: JarHint['what'], volume: number, text = ''): JarHint | null {
  if (!Number.isFinite(volume) || volume <= 0) return null;
  return { what, volume, id: what === 'jar' ? findJar(volume, text) : null };
}

/** A jar named as if it were an ingredient: "1 quart jar" on a line of its own. */
export function jarOfSize(volume: number, text = ''): JarHint | null {
  return hint('jar', volume, text);
}

/** A line that names a jar and nothing else: "quart jar", "A 2 L jar, wide mouth", "Jar: 1 qt", "2 one-quart jars". */
export function readJarLine(text: string, decimalComma: boolean, cups: CupStandardId): JarHint | null {
  const turned = skip(jarFirst, text, 0);
  const size = turned === 0 ? null : readVolume(text, turned, decimalComma, cups);
  if (size !== null && /^[\s.)]*$/.test(text.slice(size.end))) return hint('jar', size.volume, text);
  for (const start of new Set([skip(manyJars, text, 0), 0])) {
    const sized = readVolume(text, skip(article, text, start), decimalComma, cups);
    const jar = sized === null ? null : matchAt(toJar, text, sized.end);
    if (sized === null || jar === null || !ofJar.test(text.slice(sized.end + jar[0].length))) continue;
    return hint('jar', sized.volume, text);
  }
  return null;
}
