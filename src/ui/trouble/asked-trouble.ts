import { signal } from '@preact/signals';

/** The trouble that was asked about from another part of the page, which is open when this one is; null where none was. */
export const askedTrouble = signal<string | null>(null);
