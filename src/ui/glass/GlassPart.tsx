import type { PartProps } from '../page/part-props';
import { Glass } from './Glass';
import { PulpLeft } from './PulpLeft';
import './glass.css';

/** What is in a glass, and what the pulp is good for. */
export default function GlassPart({ batch, store }: PartProps) {
  return (
    <>
      <Glass batch={batch} store={store} />
      <PulpLeft batch={batch} store={store} />
    </>
  );
}
