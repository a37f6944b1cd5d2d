import type { PartProps } from '../page/part-props';
import { Cautions } from './Cautions';
import { Foot } from './Foot';
import './care.css';

/** All that is to be taken care of, by topic, and how far the numbers can be trusted. */
export default function CarePart({ batch, store }: PartProps) {
  return (
    <>
      <Cautions formulation={store.formulationOf(batch)} name={batch.name} />
      <Foot />
    </>
  );
}
