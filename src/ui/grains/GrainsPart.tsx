import type { PartProps } from '../page/part-props';
import { Grains } from './Grains';
import './grains.css';
import './stock-picture.css';
import './grains-paper.css';

/** The grains as living stock: what there is, what it carries, how it grows and rests. */
export default function GrainsPart({ batch, store, page }: PartProps) {
  return <Grains batch={batch} store={store} page={page} />;
}
