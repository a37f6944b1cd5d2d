import { families } from '../reference/families';
import { fermenting } from '../reference/fermenting';
import { kitchen } from '../reference/kitchen';
import { type CoefficientDefinition, define } from './coefficient';

/** The coefficients of fermenting, bottling and keeping. */
export const fermentCoefficients = {
  roomUsual: define('T₀', 'Usual room', 'kitchen', { range: { least: -20, most: 60 } }, () => kitchen.roomTemperature),
  readyUsual: define(
    't_u',
    'Usual time until ready to taste',
    'grains',
    { range: { least: 1, most: 500 } },
    (c) => c.grain.readyTime,
  ),
  pace: define(
    'k',
    'How fast this kitchen ripens',
    'kitchen',
    { range: { least: 0.2, most: 5 } },
    () => fermenting.pace,
  ),
  doseExponent: define(
    'α',
    'Power of the dose',
    'kitchen',
    { range: { least: 0, most: 2 } },
    () => fermenting.doseExponent,
  ),
  sugarExponent: define(
    'β',
    'Power of the sugar',
    'kitchen',
    { range: { least: 0, most: 2 } },
    () => fermenting.sugarExponent,
  ),
  usedWhenReady: define(
    'u_r',
    'Share of the sugar used when ready',
    'grains',
    { range: { least: 0, most: 0.99 } },
    () => fermenting.usedWhenReady,
  ),
  yeastShare: define(
    'y_g',
    'Share of used sugar that goes through yeast',
    'grains',
    { range: { least: 0, most: 1 } },
    () => fermenting.yeastShare,
  ),
  withoutGrains: define(
    'w',
    'Pace without the grains',
    'grains',
    { range: { least: 0, most: 2 } },
    () => fermenting.withoutGrains,
  ),
  carriedOver: define(
    'c_o',
    'Dissolved gas that stays through straining',
    'kitchen',
    { range: { least: 0, most: 1 } },
    () => fermenting.carriedOver,
  ),
  bottleTimeUsual: define(
    'τ_u',
    'Usual second ferment',
    'kitchen',
    { range: { least: 0, most: 500 } },
    () => fermenting.bottleTime,
  ),
  bottleVolumeUsual: define(
    'V_f',
    'Usual bottle, to the rim',
    'kitchen',
    { range: { least: 50, most: 20000 } },
    () => fermenting.bottleVolume,
  ),
  bottleRoomUsual: define(
    'r₂',
    'Usual share of a bottle left empty',
    'kitchen',
    { range: { least: 0.03, most: 0.9 } },
    () => fermenting.bottleRoom,
  ),
  keepUsual: define(
    'q_k',
    'How long it keeps in the fridge',
    'source',
    { range: { least: 1, most: 60 } },
    (c) => families[c.source.family].keeps,
  ),
} satisfies Record<string, CoefficientDefinition>;
