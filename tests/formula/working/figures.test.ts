import { describe, expect, test, vi } from 'vitest';
import { type Formulation, formulate } from '../../../src/formula/engine/formulate';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import type { TermId } from '../../../src/formula/rows/row';
import { intermediateIds } from '../../../src/formula/rows/terms';
import { inputsOfKitchen, kitchenWorking } from '../../../src/formula/working/kitchen-working';
import {
  type Working,
  type WorkingInput,
  workingIn,
  workingOf,
  workingOfInput,
} from '../../../src/formula/working/working';
import { inNumbers, writeInput } from '../../../src/formula/working/working-text';
import { usualScoopSet } from '../../../src/measure/scoops';
import { cardinalTemperatures } from '../../../src/reference/fermenting';
import { measureErrors } from '../../../src/reference/measure-error';
import type { SourceId } from '../../../src/reference/sources';
import { grainIds, numericRowIds, onHand, recipeOf, sourceIds, typed } from '../../batches';
import { reckon } from '../reckon';

// Every source with every variant, and every figure down to its table.
vi.setConfig({ testTimeout: 300_000 });

const measuredMilk = { milkVolume: { kind: 'volume', amount: 600 } } as const;
const blend = [
  { id: 'honey', share: 0.3 },
  { id: 'mapleSyrup', share: 0.7 },
] as const;

/** What a batch may be beside its source and its grains: how it is sized, what jar, what is done to it. */
const variants: Readonly<Record<string, Partial<Recipe>>> = {
  'nothing typed': {},
  'its own jar': { vessel: 'own', jarOf: 'b1', yours: { 'own@b1.neckDiameter': { value: 6.5, how: 'typed' } } },
  'milk heated': { heat: { what: 'milk', temperature: 85, minutes: 5 } },
  'the source on hand': { given: [typed('sourceMass', 200)] },
  'two cans or cups by volume': { given: [typed('sourceMass', 400, 'volume')] },
  'water typed for a number of jars': { given: [typed('blendWater', 2000)] },
  'source and milk joined': { given: [typed('sourceMass', 250), typed('milkVolume', 900)] },
  'solids wanted': { given: [typed('milkSolids', 5)] },
  'a room left': { given: [typed('headspaceVolume', 150)] },
  'a room and an amount': { given: [typed('headspaceVolume', 150), typed('milkVolume', 3000)] },
  'a depth in the body': { given: [typed('headspaceDepth', 7)] },
  'a depth in the neck': { given: [typed('headspaceDepth', 1)] },
  'a deep room': { given: [typed('headspaceVolume', 260)] },
  'kefir wanted': { given: [typed('servings', 6)] },
  'jars and glasses': { given: [typed('fillVolume', 700), typed('servings', 9)] },
  'sweetener on hand': { given: [onHand('sweetenerMass', 40)] },
  'grains on hand': { given: [onHand('grainMass', 40)] },
  'a blend of sweeteners': { sweetener: blend },
  'sugars that no table parts': { sweetener: [{ id: 'dateSyrup', share: 1 }] },
  'no sweetener': { sweetener: [{ id: 'none', share: 1 }] },
  'milk measured': { measured: measuredMilk },
  'pulp measured': { measured: { pulpMass: { kind: 'mass', amount: 180 } } },
  'a warm room and a limit': { given: [typed('roomTemperature', 27), typed('bottleLimit', 6)] },
  'a cool bottle with sugar': { given: [typed('bottleTemperature', 18), typed('bottleSugar', 4)] },
  'an unsweetened label': { yours: { 'cartonPlain.labelSugar': { value: 0, how: 'typed' } } },
};

const kitchen = { leads: 'us', cups: 'us', scoops: usualScoopSet, decimalComma: false } as const;

interface Found {
  readonly working: Working;
  readonly path: string;
}

/** Every working of a batch: of each cell with its two ends and its cups, and of what cells share. */
function workingsOf(formulation: Formulation): readonly Found[] {
  const { evaluation } = formulation;
  const ofRows = numericRowIds.flatMap((id): Found[] => {
    const working = workingIn(formulation.rows[id]);
    if (working === null) return [];
    const cups = kitchenWorking(formulation, id, kitchen);
    const beside = [...working.ends, ...(cups === null ? [] : inputsOfKitchen(cups))];
    return [{ working, path: id }, ...beside.flatMap((input) => openInput(input, formulation, `${id} in cups`))];
  });
  const shared = intermediateIds
    .filter((id) => Number.isFinite(formulation.of(id)))
    .map((id) => ({ working: workingOf(id, evaluation), path: id }));
  return [...ofRows, ...shared];
}

function openInput(input: WorkingInput, { evaluation }: Formulation, path: string): readonly Found[] {
  const working = workingOfInput(input, evaluation);
  return working === null ? [] : [{ working, path: `${path} > ${input.id}` }];
}

/** The figures within a working, down to those of tables. Terms are looked at by themselves. */
function within({ working, path }: Found, formulation: Formulation): readonly Found[] {
  return working.inputs
    .filter(({ from }) => from === 'figure')
    .flatMap((input) => openInput(input, formulation, path))
    .flatMap((found) => [found, ...within(found, formulation)]);
}

function nearlySame(one: number, other: number, size: number): boolean {
  return Math.abs(one - other) <= 1e-9 * Math.max(size, Math.abs(one), Math.abs(other));
}

/** Complains where a formula is not all numbers, or does not come to the value it stands for. */
function complaintOf({ working, path }: Found): string | null {
  const { formula, inputs, value } = working;
  const unfit = inputs.find((input) => !Number.isFinite(input.value));
  if (unfit !== undefined) return `${path}: ${unfit.id} has no number`;
  if (formula === '') return working.words === '' ? `${path}: says nothing` : null;
  const numberOf = (name: string): number => {
    const input = inputs.find(({ id }) => id === name);
    if (input === undefined) throw new Error(`${path}: ${name} is not put in`);
    return input.value;
  };
  try {
    const reckoned = reckon(formula, numberOf);
    // A difference of two nearly equal numbers is no better than they are.
    const size = Math.max(...inputs.map((input) => Math.abs(input.value)), 1);
    const [one, other] = 'value' in reckoned ? [reckoned.value, value] : [reckoned.left, reckoned.right];
    return nearlySame(one, other, size) ? null : `${path}: ${formula} is ${one}, not ${other}`;
  } catch (error) {
    return `${path}: ${String(error)}`;
  }
}

/** What may be told otherwise with each source; the other variants are looked at with one source of each sort. */
const withEach = [
  'nothing typed',
  'its own jar',
  'milk heated',
  'the source on hand',
  'solids wanted',
  'a blend of sweeteners',
];
const ofEachSort: readonly SourceId[] = [
  'almond',
  'coconutFresh',
  'coconutMilk',
  'coconutDriedSweetened',
  'cartonPlain',
];

/** What is amiss in any working of a batch, and how many were looked at. */
function lookThrough(recipe: Recipe): { readonly complaints: readonly string[]; readonly looked: number } {
  const formulation = formulate(recipe);
  const all = workingsOf(formulation).flatMap((found) => [found, ...within(found, formulation)]);
  return { complaints: all.flatMap((found) => complaintOf(found) ?? []), looked: all.length };
}

describe.each(sourceIds)('%s', (source) => {
  const names = Object.keys(variants).filter((name) => withEach.includes(name) || ofEachSort.includes(source));

  test.each(names)('%s: has a number for every symbol of every working, which comes to its value', (name) => {
    for (const grains of grainIds) {
      const { complaints, looked } = lookThrough(recipeOf({ source, grains, ...variants[name] }));
      expect(complaints).toEqual([]);
      expect(looked).toBeGreaterThan(100);
    }
  });
});

/** Each input down to those of tables, with its number as it is written. */
function writtenDown(found: Found, formulation: Formulation): readonly string[] {
  const all = [found, ...within(found, formulation)];
  return all.flatMap(({ working }) => working.inputs.map((input) => `${input.label}: ${writeInput(input, false)}`));
}

describe('with the numbers put in', () => {
  const formulation = formulate(recipeOf({ given: [typed('roomTemperature', 24)] }));
  const told = (id: TermId) => writtenDown({ working: workingOf(id, formulation.evaluation), path: id }, formulation);

  test('a pressure rests on solubility, gas constant, an atmosphere and molar masses, none of them rounded', () => {
    const all = [...told('bottlePressureLikely'), ...told('dissolvedGas'), ...told('gasForgotten')];
    for (const part of [
      'Gas constant: 8.314462618\u00A0J/(mol·K)',
      'One atmosphere: 101\u202F325\u00A0Pa',
      'Molar mass of hexose: 180.156\u00A0g/mol',
      'Molar mass of water: 18.015\u00A0g/mol',
      '0 °C in kelvin: 273.15\u00A0K',
    ]) {
      expect(all).toContain(part);
    }
  });

  test('each end of the ready range rests on the growth temperatures of every model and on the activation energy', () => {
    const { ends } = workingIn(formulation.rows.readyTime) ?? expect.fail('no working');
    expect(ends.map(({ id }) => id)).toEqual(['readySoonest', 'readyLatest']);
    for (const id of ['readySoonest', 'readyLatest'] as const) {
      for (const { optimum } of Object.values(cardinalTemperatures)) {
        expect(told(id)).toContain(`Temperature it grows fastest at: ${optimum.value}\u00A0°C`);
      }
      expect(told(id)).toContain('Activation energy: 64\u202F300\u00A0J/mol');
    }
  });

  test('a spoon rests on its published weight and on the definition of the cup', () => {
    const cups = kitchenWorking(formulation, 'sweetenerMass', kitchen) ?? expect.fail('no spoons');
    const [measured, error] = inputsOfKitchen(cups);
    const spoons = measured === undefined ? [] : openInput(measured, formulation, 'spoons');
    expect(spoons.flatMap((found) => writtenDown(found, formulation))).toContain('One in: 2.54\u00A0cm/in');
    expect(told('sweetenerWeight')).toContain('Weight of a level measure (1 cup): 200\u00A0g');
    expect(error?.value).toBe(measureErrors.sugar.value);
  });

  test('is spared the cups where an amount is not measured out', () => {
    expect(kitchenWorking(formulation, 'roomTemperature', kitchen)).toBeNull();
    expect(kitchenWorking(formulation, 'source', kitchen)).toBeNull();
  });

  test('a power stands outside the brackets of what it raises', () => {
    const neck = workingIn(formulation.rows.headspaceVolume)?.inputs[0] ?? expect.fail('no neck');
    const [opened] = openInput(neck, formulation, '');
    expect(opened && inNumbers(opened.working, false)).toContain('(7.6\u00A0cm)²');
  });
});
