/** Text made plain for reading, with the place of each of its characters in what was typed. */
export type TypedText = {
  readonly text: string;
  /** Where the character at each offset came from; one longer than the text, ending at the end of what was typed. */
  readonly origin: readonly number[];
};

const invisible = /\u00AD|[\u200B-\u200F\u2060-\u2064]|\uFE0E|\uFE0F/u;
const dash = /[\u2010-\u2015\u2212]/u;
// Whole-text NFKC would turn "1½" into "11⁄2", eleven halves, and "1²" into "12"; only these blocks are safe to fold:
// full-width forms, letter-like signs (℃ ℓ), squared units (㎖ ㎏) and the digits of the mathematical alphabets.
const foldable = /[\uFF01-\uFF5E\u2100-\u214F\u3371-\u33DF\u{1D7CE}-\u{1D7FF}]/u;

const replacements = new Map([
  ['º', '°'],
  ['˚', '°'],
  ['⁄', '/'],
  ['∕', '/'],
  ['”', '"'],
  ['“', '"'],
  ['″', '"'],
  ['✕', '×'],
  ['✖', '×'],
]);

function normaliseCharacter(character: string): string {
  if (character > ' ' && character < '\u007F') return character;
  if (/\s/u.test(character)) return ' ';
  if (invisible.test(character)) return '';
  if (dash.test(character)) return '-';
  if (foldable.test(character)) return character.normalize('NFKC');
  return replacements.get(character) ?? character;
}

/**
 * One kind of space, dash, slash, degree sign and digit; runs of spaces become one and those at the ends go.
 * Takes any text, lone surrogates too.
 */
export function normaliseTyped(typed: string): TypedText {
  let text = '';
  const origin: number[] = [];
  let place = 0;
  for (const character of typed) {
    for (const unit of normaliseCharacter(character).split('')) {
      if (unit === ' ' && (text === '' || text.endsWith(' '))) continue;
      text += unit;
      origin.push(place);
    }
    place += character.length;
  }
  if (text.endsWith(' ')) {
    text = text.slice(0, -1);
    origin.pop();
  }
  return { text, origin: [...origin, typed.trimEnd().length] };
}
