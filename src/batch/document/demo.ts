import { usualScoopSet } from '../../measure/scoops';
import type { Batch, SheetDocument } from './document';
import { currentVersion, usualNight } from './migrations';

/** A batch with the choices made and nothing typed: every number in it is worked out. */
export function startBatch(id: string, name: string): Batch {
  return {
    id,
    name,
    vessel: 'quartWide',
    source: 'almond',
    sweetener: [{ id: 'caneWhite', share: 1 }],
    grains: 'water',
    given: [],
    measured: {},
    heat: null,
  };
}

/** The name of the example, which speaks of its nut. */
export const exampleName = 'Saturday almond';

/** What a first visit opens with. The batch and its name are invented, for showing how the sheet works. */
export const demo: SheetDocument = {
  version: currentVersion,
  batches: [startBatch('b1', exampleName)],
  yours: {},
  settings: { leads: 'metric', cups: 'us', scoops: usualScoopSet, decimalComma: false, quiet: usualNight },
  log: [],
};

/** Whether this is still the example as a first visit opens with it, which nobody has made his own. */
export function isExample({ batches }: SheetDocument): boolean {
  return batches === demo.batches;
}
