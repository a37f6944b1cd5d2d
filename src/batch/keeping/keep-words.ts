const copy = 'Download a copy to keep it.';
const again = 'It is tried again by itself, every few seconds.';
const below = 'under “Kept in this browser” at the foot of the page';

/** What the cook is told of how the sheet is kept. */
export const keepWords = {
  blocked: `This browser lets the page keep nothing, so this sheet is gone when you close it. ${copy}`,
  full: `This browser has no room left to save what you typed last. What was saved before is still there. ${again} ${copy}`,
  neverRoom: `This browser has no room left to save this sheet, so it is gone when you close it. ${again} ${copy}`,
  gone: `What this browser kept of this page has been deleted, so the sheet is shown here and saved nowhere. Save it again, or it is gone when you close it. ${copy}`,
  failed: `This browser did not save what you typed last. What was saved before is still there. ${again} ${copy}`,
  elsewhere:
    'This sheet is open in another window, so here it can only be read. What is typed there shows here as it is saved.',
  notYet: 'The other window could not save its last edit yet, so the sheet stays there. See what it says.',
  reload: 'A newer version of this page is open in another window. Everything is saved: reload to go on.',
  tooNew:
    'A newer version of this page keeps this sheet now, so what you typed last is not saved. Download a copy, then reload the page and open the copy there.',
  overtaken: `Another window has saved this sheet since, and that is what is shown now. What you typed last here is put aside ${below}.`,
  stillHere:
    'Another window has saved this sheet since. What you typed last here is saved nowhere and could not be put aside, so it is still what is shown. Download a copy, make room in this browser, then press “Edit here instead”.',
  asideHere: `What you typed here was not taken, since another window had the sheet. It is put aside ${below}.`,
  typedHere: 'It was typed in a window while another had the sheet.',
  noRoomAside:
    'The sheet as last saved could not be opened, and there is no room to put it aside, so it stays where it is and nothing is saved here. Make room, then reload the page.',
  newer: (version: number, isShown: boolean): string =>
    `A newer version of this page (${version}) has saved this sheet, so here it can only be read${
      isShown ? ', as far as this version understands it' : '; what this version can open is shown'
    }. It stays as it is. Reload the page to get the newer version, or download the sheet ${below}.`,
  damaged: (why: string, lastGood: string | null): string =>
    `The sheet as last saved could not be opened. ${why} It is put aside, to be downloaded ${below}. ${
      lastGood === null ? 'This is the first sheet again.' : `In its place is the last good state, of ${lastGood}.`
    }`,
} as const;
