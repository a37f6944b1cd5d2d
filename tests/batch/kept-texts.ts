import type { KeyStorage } from '../../src/batch/keeping/storage';

/** Texts by key, as a browser's local storage keeps them. */
export class KeptTexts implements KeyStorage {
  readonly texts: Map<string, string>;

  constructor(texts: Readonly<Record<string, string>> = {}) {
    this.texts = new Map(Object.entries(texts));
  }

  getItem(key: string): string | null {
    return this.texts.get(key) ?? null;
  }

  setItem(key: string, text: string): void {
    this.texts.set(key, text);
  }

  removeItem(key: string): void {
    this.texts.delete(key);
  }
}
