import type { Formulation } from '../../formula/engine/formulate';
import { drawJar } from '../../formula/steps/drawing';
import { leading } from '../../formula/words/leading';
import { type Kitchen, writeRow } from '../../formula/words/write-row';
import { describeJar } from './describe-jar';
import { JarDrawing } from './JarDrawing';
import './jar.css';

interface Props {
  readonly formulation: Formulation;
  readonly kitchen: Kitchen;
  /** Whether the depth of the headspace stands beside it. */
  readonly measured?: boolean;
}

/** The jar of a batch as it is filled. */
export default function JarOf({ formulation, kitchen, measured = false }: Props) {
  const depth = writeRow(formulation, 'headspaceDepth', kitchen);
  return (
    <JarDrawing
      drawing={drawJar(formulation)}
      words={describeJar(formulation, kitchen)}
      headspace={measured && depth !== null ? leading(depth, kitchen.leads).first : null}
    />
  );
}
