import type { Batch } from '../batch/document';
import { drawJar } from '../formula/drawing';
import type { Formulation } from '../formula/formulate';
import { labelOf } from '../formula/labels';
import { type Kitchen, writeRow } from '../formula/write-row';
import { describeJar } from './describe-jar';
import { InShort } from './InShort';
import { JarDrawing } from './JarDrawing';
import { leading } from './leading';

interface Props {
  readonly batch: Batch;
  readonly formulation: Formulation;
  readonly kitchen: Kitchen;
}

/** The head of a batch's card: its name, what it is sized from, and its jar to scale. */
export function BatchHead({ batch, formulation, kitchen }: Props) {
  const { sizedFrom } = formulation;
  const depth = writeRow(formulation, 'headspaceDepth', kitchen);
  return (
    <>
      <h2>{batch.name}</h2>
      <p>{sizedFrom === 'jar' ? 'Fills the jar to its headspace' : `Sized from “${labelOf(sizedFrom)}”`}</p>
      <div class="at-a-glance">
        <JarDrawing
          drawing={drawJar(formulation)}
          words={describeJar(formulation, kitchen)}
          headspace={depth === null ? '' : leading(depth, kitchen.leads).first}
        />
        <InShort formulation={formulation} kitchen={kitchen} />
      </div>
    </>
  );
}
