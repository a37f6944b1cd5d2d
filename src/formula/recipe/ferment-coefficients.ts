import { families } from '../../reference/families';
import { fermenting } from '../../reference/fermenting';
import { kitchen } from '../../reference/kitchen';
import { type CoefficientDefinition, define } from './coefficient';

/** The coefficients of fermenting, bottling and keeping. */
export const fermentCoefficients = {
  roomUsual: define('kitchen', { range: { least: -20, most: 60 } }, () => kitchen.roomTemperature),
  readyUsual: define('grains', { range: { least: 1, most: 500 } }, (c) => c.grain.readyTime),
  pace: define('kitchen', { range: { least: 0.2, most: 5 } }, () => fermenting.pace),
  paceOfGrains: define('grains', { range: { least: 0.2, most: 5 } }, () => fermenting.paceOfGrains),
  paceOfSource: define('source', { range: { least: 0.2, most: 5 } }, () => fermenting.paceOfSource),
  doseMost: define('kitchen', { range: { least: 1, most: 100 } }, () => fermenting.doseMost),
  doseExponent: define('kitchen', { range: { least: 0, most: 2 } }, () => fermenting.doseExponent),
  sugarExponent: define('kitchen', { range: { least: 0, most: 2 } }, () => fermenting.sugarExponent),
  usedWhenReady: define('grains', { range: { least: 0, most: 0.99 } }, (c) => c.grain.usedWhenReady),
  yeastShare: define('grains', { range: { least: 0, most: 1 } }, (c) => c.grain.yeastShare),
  withoutGrains: define('grains', { range: { least: 0, most: 10 } }, (c) => c.grain.withoutGrains),
  carriedOver: define('kitchen', { range: { least: 0, most: 1 } }, () => fermenting.carriedOver),
  bottleTimeUsual: define('kitchen', { range: { least: 0, most: 500 } }, () => fermenting.bottleTimeUsual),
  bottleVolumeUsual: define('kitchen', { range: { least: 50, most: 20000 } }, () => fermenting.bottleVolume),
  bottleRoomUsual: define('kitchen', { range: { least: 0.03, most: 0.9 } }, () => fermenting.bottleRoom),
  keepUsual: define('source', { range: { least: 1, most: 60 } }, (c) => families[c.source.family].keeps),
} satisfies Record<string, CoefficientDefinition>;
