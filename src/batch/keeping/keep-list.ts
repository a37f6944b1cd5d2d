import type { SheetDocument } from '../document/document';
import { type Database, listAside, listStates, readState, writeFound } from './keep-database';
import type { Kept, KeptState } from './keeping';
import { openText } from './open-saved';

/** All that is kept, newest first. A state whose record the disk can’t give any more is left out. */
export async function listKept(from: Database): Promise<Kept> {
  const keys = await listStates(from);
  const states = keys.toReversed().map(async (key): Promise<KeptState[]> => {
    try {
      const found = await readState(from, key);
      return [{ revision: key[0], at: key[1], text: writeFound(found), document: documentIn(found) }];
    } catch {
      return [];
    }
  });
  const aside = await listAside(from);
  return {
    states: (await Promise.all(states)).flat(),
    aside: aside.map((one) => ({ ...one, document: documentIn(one.text) })),
  };
}

function documentIn(found: unknown): SheetDocument | null {
  const opened = openText(found);
  return opened.is === 'good' ? opened.document : null;
}
