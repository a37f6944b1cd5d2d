import type { PartProps } from '../page/part-props';
import { NumbersFrom } from './NumbersFrom';

/** Where the numbers come from. */
export default function NumbersPart({ store }: PartProps) {
  return (
    <section aria-label="Where the numbers come from">
      <h2>Where the numbers come from</h2>
      <NumbersFrom decimalComma={store.settings.value.decimalComma} />
    </section>
  );
}
