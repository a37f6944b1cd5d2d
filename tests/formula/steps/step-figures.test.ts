import { expect, test } from 'vitest';
import { stepOrder } from '../../../src/formula/steps/step';
import { figuresOfStep } from '../../../src/formula/steps/step-figures';
import { grains } from '../../../src/reference/grains';
import { handwork } from '../../../src/reference/handwork';
import { sources } from '../../../src/reference/sources';

function labels(id: (typeof stepOrder)[number], source: keyof typeof sources): readonly string[] {
  return figuresOfStep(id, sources[source], grains.water).map(({ label }) => label);
}

test('blending has its time, the warmth of its water and the minutes of one load', () => {
  expect(figuresOfStep('blend', sources.almond, grains.water)).toEqual([
    { label: 'Blending for', coefficient: sources.almond.blendSeconds },
    { label: 'Water to blend with', coefficient: sources.almond.blendWater?.temperature },
    { label: 'Blending and straining one load', coefficient: handwork.load },
  ]);
});

test('the warmth of blending water stands where that water goes in', () => {
  expect(labels('soak', 'coconutDried')).toContain('Water to blend with');
  expect(labels('blend', 'coconutDried')).not.toContain('Water to blend with');
});

test('a carton is opened and poured, and not weighed or blended', () => {
  expect(labels('choose', 'cartonPlain')).toEqual(['Opening and pouring a ready milk']);
  expect(labels('blend', 'cartonPlain')).not.toContain('Blending for');
});

test('chilling has its hours, and a step says no figure twice', () => {
  expect(labels('chill', 'almond')).toContain('Until a bottle is cold through');
  for (const id of stepOrder) expect(new Set(labels(id, 'almond')).size, id).toBe(labels(id, 'almond').length);
});

test('the minutes that are given by hand are each told at a step', () => {
  const told = new Set(stepOrder.flatMap((id) => [...labels(id, 'almond'), ...labels(id, 'cartonPlain')]));
  const isWork = ({ unit }: { readonly unit: string }) => unit === 'min';
  const planning = [handwork.step, handwork.search];
  const work = Object.values(handwork).filter((each) => isWork(each) && !planning.includes(each));
  expect(work.length).toBeGreaterThan(10);
  const coefficients = stepOrder.flatMap((id) =>
    [sources.almond, sources.cartonPlain].flatMap((source) =>
      figuresOfStep(id, source, grains.water).map((each) => each.coefficient),
    ),
  );
  for (const each of work) expect(coefficients).toContain(each);
  expect(told.size).toBeGreaterThan(15);
});
