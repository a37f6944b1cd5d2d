import type { Reduced } from './models/milk';
import { hexosePerSugar } from './models/strain';
import type { Ranged } from './models/sugar';
import type { Access } from './row';
import { compositionInEffect } from './treated';

/** g of hexose per g of the sugar that reaches the milk, with its range where the table does not say which sugars. */
export function nativeRange(x: Access, reduced: Reduced = x.reduced()): Ranged {
  const { source, grain } = x.choices;
  return hexosePerSugar(compositionInEffect(x), reduced.strain, source.ownWater?.composition ?? null, grain.takes);
}

export function nativeFactor(x: Access): number {
  return nativeRange(x).value;
}
