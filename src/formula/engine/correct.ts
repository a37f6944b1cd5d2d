import { reducedAt } from '../composition/composition-in-effect';
import { specificVolume } from '../models/density';
import { type Reduced, reduce, type Strain, stagesAt } from '../models/milk';
import type { CoefficientId } from '../recipe/coefficients';
import { coefficients } from '../recipe/coefficients';
import type { Access, TermId } from '../rows/row';

/**
 * The coefficients that measuring corrects, each from one measurement, in the order of the work: soaked weight → u,
 * wet pulp → p, milk → l (→ p, where even no loss would not give so much and the pulp was not weighed). Each is solved
 * exactly from the mass balance with those before it already corrected. A pulp so heavy that it would be wetter than the
 * slurry was hardly pressed: it is taken to hold slurry, and x is corrected with p. A figure no coefficient could give
 * (more milk than there was slurry) corrects nothing.
 */
export function correctCoefficients(
  x: Access,
  measured: ReadonlyMap<TermId, number>,
): ReadonlyMap<CoefficientId, number> {
  const found = new Map<CoefficientId, number>();
  const mass = x.of('sourceMass');
  const ratio = x.of('waterRatio');
  if (!Number.isFinite(mass) || !Number.isFinite(ratio)) return found;
  let { strain } = reducedAt(x, ratio);
  const keep = (id: CoefficientId, value: number): boolean => {
    const { least, most } = coefficients[id];
    if (!(value >= least && value <= most)) return false;
    found.set(id, value);
    return true;
  };

  const soaked = measured.get('soakedMass');
  if (soaked !== undefined) {
    const uptake = soaked / mass - 1 + strain.leached;
    if (keep('uptake', uptake)) strain = { ...strain, uptake };
  }
  const pulp = measured.get('pulpMass');
  if (pulp !== undefined) {
    const pulpMoisture = moistureFor(reduce(strain), ratio, pulp / mass);
    const wetter = { ...strain, pulpMoisture };
    const unpressed = unpressedStrain(reduce(strain), ratio, pulp / mass);
    if (stagesAt(reduce(wetter), ratio) !== null && keep('pulpMoisture', pulpMoisture)) strain = wetter;
    else if (
      unpressed.passing < strain.passing &&
      keep('passing', unpressed.passing) &&
      keep('pulpMoisture', unpressed.pulpMoisture)
    )
      strain = unpressed;
  }
  const milk = measured.get('milkVolume');
  if (milk !== undefined) {
    const whole = stagesAt(reduce({ ...strain, handlingLoss: 0 }), ratio);
    const loss = whole ? 1 - milk / (mass * whole.milkVolume) : Number.NaN;
    if (!keep('handlingLoss', loss) && loss < 0 && pulp === undefined) {
      // More than would pass with nothing lost: the pulp was pressed drier, at the usual loss.
      keep('pulpMoisture', moistureForMilk(reduce(strain), ratio, milk / mass));
    }
  }
  return found;
}

/** Moisture of the pulp when a gram of source gave `milk` mL: what did not pass, it holds. NaN for more than there was. */
function moistureForMilk(reduced: Reduced, ratio: number, milk: number): number {
  const { sugars, water } = inSlurry(reduced, ratio);
  const keep = 1 - reduced.strain.handlingLoss;
  const all = sugars * specificVolume('carbohydrate') + water * specificVolume('water');
  const held = 1 - (milk / keep - reduced.passedVolume) / all;
  return held < 0 ? Number.NaN : (held * water) / (reduced.nonSugar - reduced.passed + held * (sugars + water));
}

/** Sugars and water in the slurry, g per g of source. */
function inSlurry({ strain }: Reduced, ratio: number): { sugars: number; water: number } {
  return {
    sugars: strain.sugars + strain.own.sugars,
    water: strain.water + strain.uptake + strain.own.water + (ratio - strain.own.mass),
  };
}

/** Moisture of a pulp that weighs `pulp` g per g of source: water and sugar in it go as they do in the slurry. */
function moistureFor(reduced: Reduced, ratio: number, pulp: number): number {
  const { nonSugar, passed } = reduced;
  const { sugars, water } = inSlurry(reduced, ratio);
  const held = (pulp - (nonSugar - passed)) / (sugars + water);
  return (held * water) / pulp;
}

/** A bag that parts nothing: its pulp of `pulp` g per g of source is as wet as the slurry, but for a hair. */
function unpressedStrain(reduced: Reduced, ratio: number, pulp: number): Strain {
  const { strain, nonSugar } = reduced;
  const { sugars, water } = inSlurry(reduced, ratio);
  const hair = 1e-9; // tolerance: as wet as the slurry there is no milk
  const pulpMoisture = ((1 - hair) * water) / (nonSugar + strain.own.solids + sugars + water);
  const waterPerDry = pulpMoisture / (1 - pulpMoisture);
  // Pulp = (1 − x)N + q(S + W), with q = k(1 − x)N/(W − kS).
  const perDry = 1 + (waterPerDry * (sugars + water)) / (water - waterPerDry * sugars);
  return { ...strain, pulpMoisture, passing: 1 - pulp / (nonSugar * perDry) };
}
