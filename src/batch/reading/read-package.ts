import { describeReadProblem } from '../../measure/read-problem-words';
import { type ReadResult, readQuantity } from '../../measure/read-quantity';
import { type Cell, longestText, type Settings } from '../document/document';

const inPieces = /\b(?:cans?|tins?|pieces?)\b\.?/i;
const wrapped =
  /\b(?:bags?|packets?|packs?|packages?|boxe?s?|cans?|tins?|jars?|cartons?|bottles?|tubs?|pouche?s?)\b\.?(?: of(?: [\p{L}-]+)*)?/iu;

/**
 * What a package holds, such as "500 g", "a bag of 500 g", "can 400 mL", "6 × 1 L", "1 cup" or "2 cans". A bare number
 * is of grams, or of ounces where US measure leads. The text is kept as typed; the amount is null where it can't be read.
 */
export function readPackage(text: string, settings: Settings): Cell {
  const kept = text.length > longestText ? `${text.slice(0, longestText - 1)}…` : text;
  const read = readText(kept, settings);
  return read.ok
    ? { text: kept.trim(), amount: read.reading.amount, kind: read.reading.kind }
    : { text: kept, amount: null, kind: 'mass' };
}

/** Why a package can't be counted with, and what to type; null where it can. */
export function packageProblem(text: string, settings: Settings): string | null {
  const read = readText(text, settings);
  if (!read.ok) return describeReadProblem(read.problem);
  return read.reading.amount > 0 ? null : 'Type what a package holds, such as 500 g.';
}

function readText(text: string, settings: Settings): ReadResult {
  const plain = read(text, settings);
  if (plain.ok) return plain;
  // What it is packed in says nothing where a weight or a volume stands beside it.
  const bare = text.replace(wrapped, ' ').replace(/^\s*(?:an?|of)\b/i, '');
  const unpacked = read(bare, settings);
  if (unpacked.ok && unpacked.reading.unit !== null) return unpacked;
  const counted = read(text.replace(inPieces, 'pieces'), settings);
  return counted.ok ? counted : plain;
}

function read(text: string, { leads, cups, decimalComma }: Settings): ReadResult {
  const bareUnit = leads === 'us' ? 'oz' : 'g';
  return readQuantity(text, { kind: 'mass', bareUnit, also: ['volume', 'count'], cups, decimalComma });
}
