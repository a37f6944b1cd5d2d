import type { Evaluation } from '../../src/formula/engine/evaluate';
import { describeOrigin } from '../../src/formula/words/origin-words';
import { type Working, workingOfInput } from '../../src/formula/working/working';
import { originOf } from '../../src/formula/working/working-text';

/** Where the figures of a working are from, in words, down to those of tables. Terms are told by themselves. */
export function originsWithin(working: Working, x: Evaluation): readonly string[] {
  const ofInputs = working.inputs.flatMap((input) => {
    const own = originOf(input, false);
    const opened = input.from === 'figure' ? workingOfInput(input, x) : null;
    return [...(own === null ? [] : [own]), ...(opened === null ? [] : originsWithin(opened, x))];
  });
  return working.by === null ? ofInputs : [describeOrigin(working.by), ...ofInputs];
}
