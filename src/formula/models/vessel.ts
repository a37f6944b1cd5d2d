/** A jar from the rim down: a straight neck, a shoulder that widens, a straight body. Diameters and heights in cm. */
export interface JarProfile {
  readonly brimful: number;
  readonly neckDiameter: number;
  readonly neckHeight: number;
  readonly shoulderHeight: number;
  readonly bodyDiameter: number;
}

function discArea(diameter: number): number {
  return Math.PI * (diameter / 2) ** 2;
}

/** Volume of a cone frustum, mL for cm. Source: geometry, πh(r₁² + r₁r₂ + r₂²)/3. */
export function frustumVolume(topDiameter: number, bottomDiameter: number, height: number): number {
  const top = topDiameter / 2;
  const bottom = bottomDiameter / 2;
  return (Math.PI * height * (top * top + top * bottom + bottom * bottom)) / 3; // geometry
}

/**
 * Room between the rim and a surface `depth` cm below it, mL; the jar's brimful capacity once the depth reaches the
 * bottom, 0 at or above the rim.
 */
export function roomAbove(jar: JarProfile, depth: number): number {
  if (depth <= 0) return 0;
  const inNeck = Math.min(depth, jar.neckHeight);
  let room = inNeck * discArea(jar.neckDiameter);
  const inShoulder = Math.min(Math.max(depth - jar.neckHeight, 0), jar.shoulderHeight);
  if (inShoulder > 0) {
    const share = inShoulder / jar.shoulderHeight;
    const reached = jar.neckDiameter + (jar.bodyDiameter - jar.neckDiameter) * share;
    room += frustumVolume(jar.neckDiameter, reached, inShoulder);
  }
  room += Math.max(depth - jar.neckHeight - jar.shoulderHeight, 0) * discArea(jar.bodyDiameter);
  return Math.min(room, jar.brimful);
}

/**
 * Depth of a surface below the rim, cm, when `room` mL are left above it. Closed form: the shoulder is a cone, whose
 * volume is a cube of its radius. A room of 0 or less is depth 0; more than brimful is the whole depth.
 */
export function depthBelowRim(jar: JarProfile, room: number): number {
  if (room <= 0) return 0;
  const target = Math.min(room, jar.brimful);
  const neck = jar.neckHeight * discArea(jar.neckDiameter);
  if (target <= neck) return target / discArea(jar.neckDiameter);
  const shoulder = frustumVolume(jar.neckDiameter, jar.bodyDiameter, jar.shoulderHeight);
  if (target <= neck + shoulder) return jar.neckHeight + depthInShoulder(jar, target - neck);
  return jar.neckHeight + jar.shoulderHeight + (target - neck - shoulder) / discArea(jar.bodyDiameter);
}

function depthInShoulder(jar: JarProfile, room: number): number {
  const top = jar.neckDiameter / 2;
  const slope = (jar.bodyDiameter / 2 - top) / jar.shoulderHeight;
  if (Math.abs(slope) < 1e-9) return room / discArea(jar.neckDiameter); // tolerance: a shoulder that does not widen
  return (Math.cbrt(top ** 3 + (3 * slope * room) / Math.PI) - top) / slope; // geometry
}

/** Depth of the whole jar from rim to floor, cm. */
export function wholeDepth(jar: JarProfile): number {
  return depthBelowRim(jar, jar.brimful);
}
