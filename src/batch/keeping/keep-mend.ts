import { demo } from '../document/demo';
import { type Database, mendStates } from './keep-database';
import { keepWords } from './keep-words';
import type { LastGood } from './open-saved';

/** What became of damaged states: the revision to go on from, null where there was no room to put them aside. */
interface Mended {
  readonly revision: number | null;
  readonly tell: string;
}

/** Puts damaged states aside, as they are, and the last good one, or the first sheet, in their place. Never rejects. */
export async function mendDamaged(from: Database, { damaged, document, at }: LastGood): Promise<Mended> {
  try {
    const there = damaged.filter(({ isThere }) => isThere);
    const revision = await mendStates(from, there, JSON.stringify(document ?? demo), Date.now());
    const lastGood = at === null ? null : new Date(at).toLocaleString();
    return { revision, tell: keepWords.damaged(damaged[0]?.why ?? '', lastGood) };
  } catch {
    return { revision: null, tell: keepWords.noRoomAside };
  }
}
