import { coefficientIds, coefficientKey, ownJarOf } from '../../formula/recipe/coefficients';
import { type Batch, recipeOf, type SheetDocument } from './document';

type Corrections = SheetDocument['yours'];

/** The corrections that this batch is worked out with: those of its own choices and of the kitchen, by their keys. */
export function correctionsOf(document: SheetDocument, batch: Batch): Corrections {
  const recipe = recipeOf(document, batch);
  const found: Record<string, Corrections[string]> = {};
  for (const id of coefficientIds) {
    const key = coefficientKey(id, recipe);
    const one = Object.hasOwn(document.yours, key) ? document.yours[key] : undefined;
    if (one !== undefined) found[key] = one;
  }
  return found;
}

/** Whether a correction is the shape of a batch’s own jar, and so of no use to any other batch. */
export function isOwnShape(key: string): boolean {
  return key.startsWith(ownJarOf(''));
}

/** The id of the batch whose own jar a correction shapes; null where it is about something else. */
export function jarOwnerOf(key: string): string | null {
  return isOwnShape(key) ? key.slice(ownJarOf('').length).split('.', 1).join('') : null;
}

/** The corrections that shape this batch’s own jar. */
export function ownShapeOf(yours: Corrections, batchId: string): Corrections {
  return Object.fromEntries(Object.entries(yours).filter(([key]) => jarOwnerOf(key) === batchId));
}

/** The same corrections with the shape of one batch’s jar made that of another. */
export function renameShape(yours: Corrections, from: string, to: string): Corrections {
  return Object.fromEntries(
    Object.entries(yours).map(([key, value]) => [
      jarOwnerOf(key) === from ? key.replace(ownJarOf(from), ownJarOf(to)) : key,
      value,
    ]),
  );
}
