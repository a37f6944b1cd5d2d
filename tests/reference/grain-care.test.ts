import { expect, test } from 'vitest';
import { grainGrowth, growthIn } from '../../src/reference/grain-care';
import { sources } from '../../src/reference/sources';
import { sourceIds } from '../batches';

test('grains grow well in coconut alone, milk grains somewhat in soy, and little elsewhere', () => {
  for (const source of sourceIds) {
    const isCoconut = sources[source].family === 'coconut';
    expect(growthIn(source, 'water'), source).toBe(isCoconut ? grainGrowth.coconut : grainGrowth.little);
    const elsewhere = source === 'soy' ? grainGrowth.soyWithMilkGrains : grainGrowth.little;
    expect(growthIn(source, 'milk'), source).toBe(isCoconut ? grainGrowth.coconut : elsewhere);
  }
});

test('the growth in soy is that of seven batches, 10 to 31.53 g', () => {
  const [, percent] = /about (\d+) %/.exec(grainGrowth.soyWithMilkGrains.text) ?? [];
  expect(Number(percent)).toBe(Math.round(((31.53 / 10) ** (1 / 7) - 1) * 100));
});
