const verbs = new Set(
  'add adjust reserve divide dilute sprinkle drizzle garnish refresh replace thin double halve skim sweeten scoop spoon stand peel chop grind toast roast melt stop look get have give sit dry mash whizz purée puree sieve crush warm switch turn attach pop ensure allow blend bottle bring boil chill check close combine cool cover discard dissolve do drain enjoy ferment fill fold gives heat it keep leave let line makes measure mix move open place pour press process pulse put refrigerate remove repeat rest return rinse save seal secure serve serves set shake simmer soak squeeze start steep stir store strain swirl take taste tie top transfer twist use wait warm wash weigh whisk wrap yield yields once when while after before then next if this that you your we i meanwhile don make note optional tip'.split(
    ' ',
  ),
);
const headings =
  /^(?:ingredients?|method|directions?|instructions?|steps?|preparation|equipment|you(?: will|['’]ll) need|notes?)\b[ :.]*$/i;
const fewWords = 8;

/** A heading: one that says so, ends in a colon, or carries the mark of one. */
export function isHeading(text: string): boolean {
  return headings.test(text) || /^#+ /.test(text) || (text.endsWith(':') && text.length < 80);
}

/** Whether a line begins with what to do. */
export function startsWithVerb(text: string): boolean {
  const [first = ''] = text.toLowerCase().split(/[^\p{L}]+/u, 1);
  return verbs.has(first);
}

/** A step of the method: it starts with what to do, or is a sentence. */
export function isMethod(text: string): boolean {
  if (startsWithVerb(text)) return true;
  const words = text.split(' ').length;
  return words > fewWords || (words >= 4 && /[.!?]$/.test(text));
}
