import { keysOf } from '../../src/batch/document/table-keys';
import { acidTime } from '../../src/reference/acid-time';
import { allergens } from '../../src/reference/allergens';
import { bottles } from '../../src/reference/bottles';
import { cartonWaiting } from '../../src/reference/carton-waiting';
import { cautions } from '../../src/reference/cautions';
import { currencies } from '../../src/reference/currencies';
import { energy } from '../../src/reference/energy';
import { expectedAcidity, expectedRoom, expectedTimes } from '../../src/reference/expected-acidity';
import { families } from '../../src/reference/families';
import { cardinalTemperatures, carrollHenry, fermenting } from '../../src/reference/fermenting';
import { alcoholLine, gasVolume, liveliness, sweetness } from '../../src/reference/finished';
import { flavours } from '../../src/reference/flavours';
import { foodMeasures } from '../../src/reference/food-measures';
import { foods } from '../../src/reference/foods';
import { fruits } from '../../src/reference/fruits';
import { grainGrowth, neverMixed } from '../../src/reference/grain-care';
import { grainNotes } from '../../src/reference/grain-notes';
import { grains } from '../../src/reference/grains';
import { aureusGrowth } from '../../src/reference/growth-limit';
import { growthModel } from '../../src/reference/growth-model';
import { handwork } from '../../src/reference/handwork';
import { jars } from '../../src/reference/jars';
import { kitchen } from '../../src/reference/kitchen';
import { kitchenLines } from '../../src/reference/kitchen-lines';
import { doubtfulMeasures, kindByForm, loosely, measureErrors, measureKinds } from '../../src/reference/measure-error';
import { otherFoods } from '../../src/reference/other-foods';
import { learning } from '../../src/reference/pace';
import { usualCan } from '../../src/reference/packings';
import { componentDensities, molarMasses, physics, waterDensity } from '../../src/reference/physics';
import { almondPulp, pulpCare, pulpKeeping, pulpUses } from '../../src/reference/pulp';
import { notesOf } from '../../src/reference/source-notes';
import { sources, sugarsByCarbohydrate } from '../../src/reference/sources';
import { keepersNotes, puttingBy, reviving } from '../../src/reference/stock-care';
import { expectedGrowth, growthLearning } from '../../src/reference/stock-growth';
import { stockRest } from '../../src/reference/stock-rest';
import { sweetenerNotes } from '../../src/reference/sweetener-notes';
import { sweeteners } from '../../src/reference/sweeteners';
import { troubles } from '../../src/reference/troubles';

/** Every table of the reference layer, as the checks of its figures and origins read them. */
export const tables = {
  ...{
    allergens,
    cautions,
    foods,
    foodMeasures,
    flavours,
    fruits,
    otherFoods,
    grains,
    jars,
    kitchen,
    kitchenLines,
    sources,
    sweeteners,
  },
  ...{ cardinalTemperatures, carrollHenry, componentDensities, fermenting, molarMasses, physics, waterDensity },
  ...{
    alcoholLine,
    bottles,
    cartonWaiting,
    gasVolume,
    growthModel,
    grainGrowth,
    neverMixed,
    grainNotes,
    handwork,
    families,
    learning,
    liveliness,
    sweetness,
  },
  ...{ expectedGrowth, growthLearning, stockRest, keepersNotes, puttingBy, reviving },
  ...{ almondPulp, currencies, energy, pulpCare, pulpKeeping, pulpUses },
  ...{ acidTime, aureusGrowth, expectedAcidity, expectedRoom, expectedTimes },
  ...{
    doubtfulMeasures,
    kindByForm,
    loosely,
    measureErrors,
    measureKinds,
    sugarsByCarbohydrate,
    sweetenerNotes,
    troubles,
    usualCan,
  },
  sourceNotes: keysOf(sources).map((id) => keysOf(grains).map((kind) => notesOf(id, kind))),
};

export type Tables = typeof tables;
