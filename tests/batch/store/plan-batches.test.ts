import { expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { type Batch, recipeOf, type SheetDocument } from '../../../src/batch/document/document';
import { glassOf, planBatches, planFor, soonestGlass } from '../../../src/batch/store/plan-batches';
import { setWhen } from '../../../src/batch/store/plan-edits';
import { formulate } from '../../../src/formula/engine/formulate';

function plannedWith(minutes: number, by: 'start' | 'drink'): SheetDocument {
  const planned = setWhen(demo, 'b1', { by, at: '2126-11-28T18:00' });
  const heat = { what: 'milk', temperature: 72, minutes } as const;
  return { ...planned, batches: planned.batches.map((batch) => (batch.id === 'b1' ? { ...batch, heat } : batch)) };
}

test.each([1e7, 1e15, 1e300])('a heat step of %d minutes is refused in words, and never waited for', (minutes) => {
  for (const by of ['start', 'drink'] as const) {
    const document = plannedWith(minutes, by);
    const formulationOf = (batch: Batch) => formulate(recipeOf(document, batch));
    const { plans, over, clashes } = planBatches(document, formulationOf);
    expect(plans.map(({ plan }) => plan.schedule.stopped)).toEqual([expect.stringContaining('Look at the heat step')]);
    expect([over, clashes]).toEqual([[], { told: [], more: 0 }]);
    const batch = plans[0]?.batch ?? expect.fail('not planned');
    expect(planFor(batch, formulationOf(batch), document.settings)?.schedule.steps).toEqual([]);
    expect(glassOf(batch, 0, formulationOf(batch), document.settings)).toBeNull();
    expect(soonestGlass(batch, formulationOf(batch), document.settings)).toBeNull();
  }
});

test('a usual heat step is planned to its first glass', () => {
  const document = plannedWith(10, 'start');
  const { plans } = planBatches(document, (batch) => formulate(recipeOf(document, batch)));
  expect(plans.map(({ plan }) => plan.schedule.stopped)).toEqual([null]);
});
