import { expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { stepNames } from '../../../src/batch/edits/step-names';
import { first } from '../any-edit';

test('every step is named in plain words', () => {
  expect([
    stepNames.typeCell('sourceMass', ' 300 g'),
    stepNames.typeCell('sourceMass', ' '),
    stepNames.typeCell('pulpMass', '120 g'),
    stepNames.clearCell('sourceMass'),
    stepNames.measureCell('milkVolume', '940 mL'),
    stepNames.measureCell('milkVolume', ''),
    stepNames.choose('sweetener', 'honey'),
    stepNames.choose('source', 'gravel'),
    stepNames.blendSweeteners([
      { id: 'honey', share: 0.5 },
      { id: 'mapleSyrup', share: 0.5 },
    ]),
    stepNames.setUse('grainMass', 'onHand'),
    stepNames.setUse('grainMass', undefined),
    stepNames.setHeat({ what: 'milk', temperature: 80, minutes: 10 }),
    stepNames.setHeat(null),
    stepNames.correct('Water taken up in soaking', 0.5, true),
    stepNames.keepMeasured('Water taken up in soaking'),
    stepNames.giveBack('Water taken up in soaking'),
    stepNames.renameBatch('Sunday hemp'),
    stepNames.addBatch(),
    stepNames.copyBatch(first(demo)),
    stepNames.moveBatch(first(demo)),
    stepNames.removeBatch(undefined),
  ]).toEqual([
    'Type 300 g for Weight as bought',
    'Clear Weight as bought',
    'Measure 120 g for Wet pulp left in the bag',
    'Clear Weight as bought',
    'Measure 940 mL for Milk after straining',
    'Forget what was measured for Milk after straining',
    'Choose Honey',
    'Choose gravel',
    'Blend Honey with Maple syrup',
    'Size the batch from Culture to add',
    'No longer size the batch from Culture to add',
    'Heat the milk',
    'Leave out the heat step',
    'Use 0,5 for Water taken up in soaking',
    'Keep what was measured for Water taken up in soaking',
    'Give back Water taken up in soaking',
    'Rename to Sunday hemp',
    'Add a batch',
    'Copy Saturday almond',
    'Move Saturday almond',
    'Remove a batch',
  ]);
});

test('a long text is cut, so that the button stays a button', () => {
  expect(stepNames.typeCell('sourceMass', '1'.repeat(200))).toBe(`Type ${'1'.repeat(40)}… for Weight as bought`);
});
