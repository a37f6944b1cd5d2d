import type { CardinalTemperatures } from './fermenting';
import { published } from './origins';

const origin = published('aureus-2019', 'abstract, in broth');

/** Growth of Staphylococcus aureus: by its pace a room warmer or cooler than usual leaves less or more time. */
export const aureusGrowth: CardinalTemperatures = {
  name: 'Staphylococcus aureus',
  minimum: { value: 7.7, unit: '°C', origin },
  optimum: { value: 40.6, unit: '°C', origin },
  maximum: { value: 46.7, unit: '°C', origin },
};
