import { formulate } from '../../../src/formula/engine/formulate';
import { passingSolids, reduce, stagesAt } from '../../../src/formula/models/milk';
import { solidsOf, strainOf } from '../../../src/formula/models/strain';
import { type Composition, type SourceId, sources } from '../../../src/reference/sources';
import { recipeOf, typed } from '../../batches';
import { numberIn } from '../../results';
import { inRange, type Reference, withinShare } from '../outside';

function strained(source: SourceId, food: Composition, passing: number, ratio: number) {
  const { uptake, pulpMoisture, handlingLoss } = sources[source];
  const treatment = { uptake: uptake.value, leaching: 0, pulpMoisture: pulpMoisture.value };
  const strain = strainOf(food, { ...treatment, handlingLoss: handlingLoss.value, passing, own: null });
  const stages = stagesAt(reduce(strain), ratio);
  if (stages === null) throw new Error(`${source} gels at ${ratio}`);
  return { strain, stages, passed: passingSolids(strain) };
}

/** What part of a component of the food stays in the pulp, as a percentage of dry pulp. */
function inPulp(component: 'protein' | 'fat' | 'fibre'): number {
  const { composition, passing, waterRatio } = sources.almond;
  const { strain, stages, passed } = strained('almond', composition, passing.value, waterRatio.value);
  return (100 * (strain.solids[component] - passed[component])) / stages.pulpDry;
}

export const almondPulp: Reference = {
  citation: 'Almond okara in biscuits (2022), J. Sci. Food Agric., doi 10.1002/jsfa.12286: almond pulp, % of dry.',
  seen: 'abstract only; the ratio and the press are not in it',
  kind: 'result',
  tolerance:
    'The share that passes was set by its fibre, so that is within 1 %. Fat and protein pass in one proportion here and in two there, 0.74 and 0.80: within 15 %.',
  rows: [
    withinShare('fibre, % of dry pulp', 40.79, inPulp('fibre'), 0.01),
    withinShare('fat, % of dry pulp', 42.12, inPulp('fat'), 0.15),
    withinShare('protein, % of dry pulp', 14.01, inPulp('protein'), 0.15),
  ],
};

/** Almond butter, USDA SR 26, record 12195, the material of the published milk. */
const butter: Composition = {
  ...sources.almond.composition,
  ...{ water: 1.64, protein: 20.96, fat: 55.5, carbohydrate: 18.82, fibre: 10.3, sugars: 4.43, ash: 3.09 },
};

function almondMilk(component: 'protein' | 'fat'): number {
  const solids = solidsOf(butter);
  const other = Object.values(solids).reduce((sum, each) => sum + each, 0);
  // 0.9 of all but the fibre, the high end that the table takes from this paper.
  const passing = (0.9 * (other - solids.fibre)) / other;
  const { passed, stages, strain } = strained('almond', butter, passing, 10 - sources.almond.uptake.value);
  return (100 * passed[component] * (1 - strain.handlingLoss)) / stages.milkMass;
}

export const almondMilkOfTen: Reference = {
  citation:
    'Furlan Goncalves Dias F., Leite Nobrega de Moura Bell J. (2022), AIChE Food Innovation and Engineering; and the same group, Future Foods (2025): milk of almond butter, 1 to 10.',
  seen: 'abstracts only',
  kind: 'result',
  tolerance: 'The printed ranges.',
  rows: [inRange('protein, %', 1.51, 1.91, almondMilk('protein')), inRange('oil, %', 4.61, 5.42, almondMilk('fat'))],
};

function coconut(): { readonly solids: number; readonly fat: number } {
  const { composition, passing, waterRatio } = sources.coconutFresh;
  const { strain, stages, passed } = strained('coconutFresh', composition, passing.value, waterRatio.value);
  return { solids: 1 - stages.pulpDry / (1 - composition.water / 100), fat: passed.fat / strain.solids.fat };
}

export const coconutResidue: Reference = {
  citation:
    'Coconut kernel and its residue after pressing, passage without its citation, believed Yalegama and others, Food Chem. 141 (2013) 124.',
  seen: 'the passage; shares computed from it, taking fibre as staying behind',
  kind: 'result',
  tolerance: 'The ranges that its wet and dry figures leave open.',
  rows: [inRange('solids passing', 0.6, 0.74, coconut().solids), inRange('fat passing', 0.74, 0.84, coconut().fat)],
};

/** Moisture of what was soaked and drained, %, as the sheet has it. */
function soaked(source: SourceId): number {
  const formulation = formulate(recipeOf({ source, given: [typed('sourceMass', 100)] }));
  const water = sources[source].composition.water + (numberIn(formulation, 'soakedMass') - 100);
  return (100 * water) / numberIn(formulation, 'soakedMass');
}

export const soakedAlmonds: Reference = {
  citation:
    'Growth and survival of foodborne pathogens during soaking and drying of almond kernels, J. Food Prot. 83 (2020) 2122–2133.',
  seen: 'abstract and the authors’ summary',
  kind: 'result',
  tolerance: 'A per cent of moisture is printed; the uptake is kept to three places.',
  rows: [{ what: 'moisture after soaking, %', printed: 40, ours: soaked('almond'), within: 0.5 }],
};

export const soakedWalnuts: Reference = {
  citation: 'Fate of foodborne pathogens during soaking and drying of walnuts, Michigan State University.',
  seen: 'abstract only',
  kind: 'result',
  tolerance: 'About 30 %, so within one.',
  rows: [{ what: 'moisture after soaking, %', printed: 30, ours: soaked('walnut'), within: 1 }],
};

export const soakedPeanuts: Reference = {
  citation: 'Moisture-dependent physical properties and hydration kinetics of peanut kernel (2022).',
  seen: 'abstract only',
  kind: 'result',
  tolerance: 'Two places are printed for kernels that began 0.07 % drier than those of the food table.',
  rows: [{ what: 'moisture after soaking, %', printed: 35.07, ours: soaked('peanut'), within: 0.1 }],
};

function canned(ratio: number): number {
  return numberIn(
    formulate(recipeOf({ source: 'coconutMilk', given: [typed('sourceMass', 400), typed('waterRatio', ratio)] })),
    'milkSolids',
  );
}

function freshCoconut(ratio: number): number {
  return numberIn(formulate(recipeOf({ source: 'coconutFresh', given: [typed('waterRatio', ratio)] })), 'milkSolids');
}

export const codexCoconut: Reference = {
  citation: 'Codex Stan 240-2003, aqueous coconut products, § 2 and table 3.1: total solids, % by mass.',
  seen: 'the section and the table',
  kind: 'result',
  tolerance:
    'The printed classes: a can neat, let down as usual, and let down by 2.5; flesh blended with its own weight of water.',
  rows: [
    inRange('coconut cream, %', 25.4, 37.3, canned(0)),
    inRange('coconut milk, %', 12.7, 25.3, canned(sources.coconutMilk.waterRatio.value)),
    inRange('light coconut milk, %', 6.6, 12.6, canned(2.5)),
    inRange('coconut milk of fresh flesh with its own weight of water, %', 12.7, 25.3, freshCoconut(1)),
  ],
};

export const cartonProtein: Reference = {
  citation:
    'Smith N.W., Dave A.C., Hill J.P., McNabb W.C. (2022), Front. Nutr. 9: 957486: analysed cartons, g of protein in 100 mL.',
  seen: 'abstract only',
  kind: 'result',
  tolerance: 'All but those of soy hold less than 1.1.',
  rows: [
    inRange('unsweetened', 0, 1.1, sources.cartonPlain.composition.protein),
    inRange('sweetened', 0, 1.1, sources.cartonSweetened.composition.protein),
  ],
};
