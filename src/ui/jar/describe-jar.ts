import type { Formulation } from '../../formula/engine/formulate';
import { bothUnits } from '../../formula/words/both-units';
import { type Kitchen, writeRow } from '../../formula/words/write-row';

/** The drawing of a jar in words. */
export function describeJar(formulation: Formulation, kitchen: Kitchen): string {
  const { choices, rows } = formulation;
  const depth = writeRow(formulation, 'headspaceDepth', kitchen);
  const grains = writeRow(formulation, 'grainMass', kitchen);
  const fill = writeRow(formulation, 'fillVolume', kitchen);
  const { value: jars } = rows.vesselCount;
  if (depth === null || fill === null || grains === null || jars === null)
    return 'No jar can be drawn yet: mend the marked cells first.';
  const { floats, starter } = choices.grain;
  const where =
    starter === undefined
      ? `the grains ${floats ? 'floating at the top' : 'lying at the bottom'}`
      : 'the starter stirred in';
  const count = jars === 1 ? 'One jar' : `One of ${jars} jars`;
  const say = (written: typeof depth) => bothUnits(written, kitchen.leads);
  return `${count}: ${choices.jar.name}, filled with ${say(fill)} to ${say(depth)} below the rim, ${where}.`;
}
