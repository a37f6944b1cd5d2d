import type { WorkId } from '../../../src/reference/works';

/**
 * The coefficients that may say they are published, and the work each was read in; every other one is common practice,
 * from memory or a judgement. What was seen of each work stands in the table of works.
 */
export const publishedIn: Readonly<Partial<Record<WorkId, readonly string[]>>> = {
  'almond-soak-2020': ['kitchenLines.warmSoakLimit', 'kitchenLines.coldSoakTemperature', 'sources.almond.uptake'],
  'almond-pulp-2022': [
    'sources.almond.passing',
    'sources.almondBlanched.passing',
    'sources.almondGround.passing',
    'almondPulp.protein',
    'almondPulp.fat',
    'almondPulp.fibre',
  ],
  'soybeans-2018': ['sources.soy.uptake'],
  'walnut-soak': ['sources.walnut.uptake'],
  'usda-sr': ['sources.coconutFresh.ownWater.perGram', 'sources.coconutFreshWhole.ownWater.perGram'],
  'cfr-21-114': ['kitchen.acidityLine'],
  'ttb-kombucha': ['alcoholLine'],
  'fsis-danger-zone': ['handwork.outOfCold', 'handwork.outOfColdHot', 'handwork.hotRoom'],
  'plantarum-2019': [
    ...['cardinalTemperatures.plantarum.minimum', 'cardinalTemperatures.plantarum.optimum'],
    'cardinalTemperatures.plantarum.maximum',
  ],
  'dairy-starter-2019': [
    ...['cardinalTemperatures.starter.minimum', 'cardinalTemperatures.starter.optimum'],
    'cardinalTemperatures.starter.maximum',
  ],
  'aureus-2019': ['aureusGrowth.minimum', 'aureusGrowth.optimum', 'aureusGrowth.maximum'],
  // Its minimum is from memory.
  'saccharomyces-2011': ['cardinalTemperatures.yeast.optimum', 'cardinalTemperatures.yeast.maximum'],
  'kefir-ethanol': ['fermenting.ethanolActivation'],
  'codata-2018': ['physics.gasConstant'],
  'nist-sp811': ['physics.atmosphere', 'physics.zeroCelsius'],
  'soy-kefir-2020': ['expectedGrowth.milkInDairy', 'expectedGrowth.milkInSoy', 'stockRest.dairy'],
  'coconut-pumpkin-2024': ['expectedGrowth.waterInCoconutWater'],
  'sugar-manual-1995': ['physics.sugarDisplacement'],
};
