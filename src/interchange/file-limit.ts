/** The largest file that is looked at, in bytes; a full sheet is a fraction of it. */
export const mostBytes = 10_000_000;

/** What to say of a larger one. */
export const tooLarge = 'This file is larger than 10 MB, which no sheet is. Nothing of it was read.';
