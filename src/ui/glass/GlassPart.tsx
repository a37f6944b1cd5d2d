import type { PartProps } from '../page/part-props';
import { Blends } from './Blends';
import { Glass } from './Glass';
import { PulpLeft } from './PulpLeft';
import './glass.css';

/** What is in a glass, what the pulp is good for, and what batches come to that are poured together. */
export default function GlassPart({ batch, store }: PartProps) {
  return (
    <>
      <Glass batch={batch} store={store} />
      <PulpLeft batch={batch} store={store} />
      <Blends batch={batch} store={store} />
    </>
  );
}
