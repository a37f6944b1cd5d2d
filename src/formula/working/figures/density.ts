import { type Component, componentDensities, physics } from '../../../reference/physics';
import { specificVolume } from '../../models/density';
import { entry, type Figure, ofTable, workedOut } from '../figure';

const names: Readonly<Record<Component, { readonly label: string; readonly mark: string }>> = {
  water: { label: 'water', mark: 'w' },
  protein: { label: 'protein', mark: 'p' },
  fat: { label: 'fat', mark: 'f' },
  carbohydrate: { label: 'carbohydrate, sugars included and fibre not', mark: 'c' },
  fibre: { label: 'fibre', mark: 'b' },
  ash: { label: 'ash', mark: 'a' },
};

const powers = ['', ' × {temperature}', ' × {temperature}²', ' × {temperature}³'];

/** Density of one part of a food at the temperature volumes are read at, from the polynomial of its table. */
export function componentDensity(component: Component): Figure {
  const { coefficients, unit, origin } = componentDensities[component];
  const { label, mark } = names[component];
  const terms = coefficients.map((value, at): readonly [string, Figure] => {
    const name = `a${at}`;
    return [
      name,
      entry(
        `${mark}${at}`,
        `Coefficient ${at} of the density of ${label}`,
        value,
        at === 0 ? unit : `${unit}/°C${at === 1 ? '' : '²'}`,
        origin,
      ),
    ];
  });
  const sum = terms.map(([name], at) => `{${name}}${powers[at] ?? ''}`).join(' + ');
  return workedOut(`ρ_${mark}`, `Density of ${label}`, 'g/mL', 1 / specificVolume(component), {
    words: 'By the polynomial of the table, at the temperature volumes are read at.',
    formula: `(${sum}) ÷ 1000`,
    parts: {
      ...Object.fromEntries(terms),
      temperature: ofTable('T₂₀', 'Temperature volumes are read at', physics.densityTemperature),
    },
  });
}

/** A share of a mixture, g of a component per g of it. */
export type Shares = Readonly<Partial<Record<Component, Figure>>>;

function isComponent(name: string): name is Component {
  return name in names;
}

/** The volume of so much of each part, added up: `{water} ÷ {waterDensity} + …`, with its parts. */
export function sumOfVolumes(shares: Shares): { readonly formula: string; readonly parts: Record<string, Figure> } {
  const parts: Record<string, Figure> = {};
  const terms: string[] = [];
  for (const [name, share] of Object.entries(shares)) {
    if (!isComponent(name) || share === undefined || share.value === 0) continue;
    parts[`${name}Share`] = share;
    parts[`${name}Weighs`] = componentDensity(name);
    terms.push(`{${name}Share} ÷ {${name}Weighs}`);
  }
  return { formula: terms.join(' + '), parts };
}

/** The name and mark of a component, for labels. */
export function nameOf(component: Component): { readonly label: string; readonly mark: string } {
  return names[component];
}
