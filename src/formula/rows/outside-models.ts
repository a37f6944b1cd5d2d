import { fermenting } from '../../reference/fermenting';

/** That no model can be trusted at a temperature, and where they can. */
export function outsideModels(at: 'readyTime' | 'bottlePressureLikely', celsius: number) {
  const { ripeningCoolest, ripeningWarmest } = fermenting;
  const [coolest, warmest] = [ripeningCoolest.value, ripeningWarmest.value];
  return { code: 'outsideModels', at, celsius, coolest, warmest } as const;
}
