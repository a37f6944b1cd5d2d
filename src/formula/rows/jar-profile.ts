import type { JarProfile } from '../models/vessel';
import type { Access } from './row';

/** The jar of this batch as a profile: its typed or usual capacity unless another is said, with the shape of its kind. */
export function jarProfile(x: Access, brimful = x.of('brimful')): JarProfile {
  return {
    brimful,
    neckDiameter: x.c('neckDiameter'),
    neckHeight: x.c('neckHeight'),
    shoulderHeight: x.c('shoulderHeight'),
    bodyDiameter: x.c('bodyDiameter'),
  };
}
