import type { Formulation } from '../engine/formulate';
import { specificVolume } from '../models/density';
import { passingSolids } from '../models/milk';
import { depthBelowRim, wholeDepth } from '../models/vessel';
import { jarProfile } from '../rows/jar-profile';

/** A layer in the jar between two depths below the rim, cm. */
export interface Layer {
  readonly from: number;
  readonly to: number;
}

/** One jar of the batch, to scale, in cm: half-widths by depth for the outline, and what lies where. */
export interface JarDrawing {
  readonly depth: number;
  readonly widest: number;
  /** From the rim down: how wide the inside is (diameter) at each depth. */
  readonly outline: readonly { readonly depth: number; readonly diameter: number }[];
  readonly surface: number;
  /** Null where nothing gathers: a starter is stirred into the milk. */
  readonly grains: Layer | null;
  readonly grainsFloat: boolean;
  /** The fat of the milk, if all of it rose. Empty where there is hardly any. */
  readonly cream: Layer;
}

/**
 * The jar of a batch as it is filled, to scale. Null where jar or fill can’t be had, and where it runs over the brim.
 * Layers are volumes turned into depths by the jar's profile; the head of cream is all the fat of the milk, the most
 * there can be.
 */
export function drawJar(formulation: Formulation): JarDrawing | null {
  const { of, evaluation, choices } = formulation;
  const jar = jarProfile(evaluation);
  const fill = of('fillVolume');
  const jars = of('vesselCount');
  const grains = of('grainMass') / evaluation.c('grainDensity') / jars;
  if (!Number.isFinite(grains) || !(fill > 0 && fill <= jar.brimful)) return null;
  const at = (below: number): number => depthBelowRim(jar, jar.brimful - fill + Math.min(below, fill));
  const depth = wholeDepth(jar);
  const floats = choices.grain.floats;
  const cream = creamVolume(formulation) / jars;
  const gathers = choices.grain.starter === undefined;
  const creamTop = gathers && floats ? grains : 0;
  return {
    depth,
    widest: Math.max(jar.bodyDiameter, jar.neckDiameter),
    outline: [
      { depth: 0, diameter: jar.neckDiameter },
      { depth: jar.neckHeight, diameter: jar.neckDiameter },
      { depth: jar.neckHeight + jar.shoulderHeight, diameter: jar.bodyDiameter },
      { depth, diameter: jar.bodyDiameter },
    ],
    surface: at(0),
    grainsFloat: floats,
    grains: gathers ? (floats ? { from: at(0), to: at(grains) } : { from: at(fill - grains), to: depth }) : null,
    cream: { from: at(creamTop), to: at(creamTop + cream) },
  };
}

/** Volume of all the fat in the milk, mL. Source: the mass balance and the density of fat (Choi & Okos 1986). */
function creamVolume(formulation: Formulation): number {
  const { strain } = formulation.evaluation.reduced();
  const fat = passingSolids(strain).fat * (1 - strain.handlingLoss);
  const volume = formulation.of('sourceMass') * fat * specificVolume('fat');
  return Number.isFinite(volume) ? volume : 0;
}
