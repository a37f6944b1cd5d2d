/** A stretch of a step's sentences: words, or an amount in the unit that leads. */
export interface TextPart {
  readonly text: string;
  readonly isAmount: boolean;
}

// Of the private use area, so that no sentence and no amount has them.
const opens = '\uE000';
const closes = '\uE001';

/** An amount as it goes into a sentence, to be found there again: what stands in brackets behind it is left unmarked. */
export function markAmount(written: string): string {
  const at = written.indexOf(' (');
  return at < 0 ? `${opens}${written}${closes}` : `${opens}${written.slice(0, at)}${closes}${written.slice(at)}`;
}

/** Sentences without the marks, as they are read. */
export function plainText(marked: string): string {
  return marked.replaceAll(opens, '').replaceAll(closes, '');
}

/** Sentences taken apart at the marks, in their order; joined again they are the plain text. */
export function partsOf(marked: string): readonly TextPart[] {
  return marked
    .split(opens)
    .flatMap((stretch, place): TextPart[] => {
      if (place === 0) return [{ text: stretch, isAmount: false }];
      const [amount = '', words = ''] = stretch.split(closes);
      return [
        { text: amount, isAmount: true },
        { text: words, isAmount: false },
      ];
    })
    .filter(({ text }) => text !== '');
}
