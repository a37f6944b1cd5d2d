import type { PartProps } from '../page/part-props';
import { Timeline } from './Timeline';
import './timeline.css';
import './timeline-picture.css';

/** When each batch is begun, tasted, strained and drunk. */
export default function PlanPart({ store, state }: PartProps) {
  return <Timeline store={store} state={state} />;
}
