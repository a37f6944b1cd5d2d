import type { CoefficientId } from './coefficients';
import { coefficients } from './coefficients';
import { type Reduced, reduce, stagesAt } from './models/milk';
import type { Access, TermId } from './row';

/**
 * The coefficients that measuring corrects, each from one measurement, in the order of the work: soaked weight → u,
 * wet pulp → p, milk → l. Each is solved exactly from the mass balance with those before it already corrected. A
 * figure no coefficient could give (more milk than there was slurry) corrects nothing.
 */
export function correctCoefficients(
  x: Access,
  measured: ReadonlyMap<TermId, number>,
): ReadonlyMap<CoefficientId, number> {
  const found = new Map<CoefficientId, number>();
  const mass = x.of('sourceMass');
  const ratio = x.of('waterRatio');
  if (!Number.isFinite(mass) || !Number.isFinite(ratio)) return found;
  let strain = x.reduced().strain;
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
    if (keep('pulpMoisture', pulpMoisture)) strain = { ...strain, pulpMoisture };
  }
  const milk = measured.get('milkVolume');
  if (milk !== undefined) {
    const whole = stagesAt(reduce({ ...strain, handlingLoss: 0 }), ratio);
    if (whole) keep('handlingLoss', 1 - milk / (mass * whole.milkVolume));
  }
  return found;
}

/** Moisture of a pulp that weighs `pulp` g per g of source: water and sugar in it go as they do in the slurry. */
function moistureFor(reduced: Reduced, ratio: number, pulp: number): number {
  const { strain, nonSugar, passed } = reduced;
  const sugars = strain.sugars + strain.own.sugars;
  const water = strain.water + strain.uptake + strain.own.water + (ratio - strain.own.mass);
  const held = (pulp - (nonSugar - passed)) / (sugars + water);
  return (held * water) / pulp;
}
