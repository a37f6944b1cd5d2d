import type { Ways } from '../row';

/** What the ready time comes from. */
export const ripeningTerms = {
  usualStart: { usual: '{nativeSugar} + ({sugarUsual} − ({nativeSugar} − {nativeThreshold}, if above 0), if above 0)' },
  asLong: { cardinal: '{growthUsual} ÷ {growthHere}' },
  readySoonest: {
    least: '{readyTime} × {shortTime} ÷ {usualTime} × {leastSlower} ÷ {slower} × {leastOfModels} ÷ {asLong}',
  },
  readyLatest: { most: '{readyTime} × {longTime} ÷ {usualTime} × {mostSlower} ÷ {slower} × {mostOfModels} ÷ {asLong}' },
} satisfies Record<string, Ways>;
