import type { Component } from '../../../reference/physics';
import type { Composition } from '../../../reference/sources';
import { compositionInEffect } from '../../composition/composition-in-effect';
import { foodDensity, solidsOf, totalSugars } from '../../models/strain';
import type { Access } from '../../rows/row';
import { entry, type Figure, type FigureMaker, ofTable, workedOut } from '../figure';
import { componentDensity, nameOf, sumOfVolumes } from './density';
import { inMeasures } from './unit';

const per100 = 'g in 100 g';

/** A column of a food’s table, g in 100 g. */
export function column(
  food: Composition,
  name: 'water' | 'protein' | 'fat' | 'fibre' | 'ash' | 'carbohydrate' | 'sugars',
) {
  const symbol = name === 'sugars' ? 's%' : `${nameOf(name).mark}%`;
  const label = name === 'carbohydrate' ? 'Carbohydrate of the table, fibre included' : `${name} of the table`;
  return entry(
    symbol,
    label.replace(/^./, (first) => first.toUpperCase()),
    food[name] ?? 0,
    per100,
    food.origin,
  );
}

/** Sugars of a food, g per g: as printed, or the middle of what its carbohydrate leaves open. */
export function sugarsOf(food: Composition): Figure {
  const { value } = totalSugars(food);
  const label = 'Sugars of the source';
  if (food.sugars !== null) {
    return workedOut('s_t', label, 'g/g', value, {
      words: 'As its table has it.',
      formula: '{sugars} ÷ 100',
      parts: { sugars: column(food, 'sugars') },
    });
  }
  const fibre = food.fibre === null ? '' : ' − {fibre}';
  return workedOut('s_t', label, 'g/g', value, {
    words: 'No table gives it: the middle of nothing and all carbohydrate that is not fibre, an estimate.',
    formula: `({carbohydrate}${fibre}) ÷ 2 ÷ 100`,
    ...(food.sugarsEstimate === undefined ? {} : { by: food.sugarsEstimate }),
    parts: { carbohydrate: column(food, 'carbohydrate'), ...(fibre === '' ? {} : { fibre: column(food, 'fibre') }) },
  });
}

/** Water of a food, g per g. */
export function waterOf(food: Composition): Figure {
  return workedOut('w', 'Water of the source', 'g/g', food.water / 100, {
    words: 'As its table has it.',
    formula: '{water} ÷ 100',
    parts: { water: column(food, 'water') },
  });
}

/** A dry part of a food other than sugars, g per g: in proportion, since the parts of a table add up to 99.9 to 100.1. */
export function solidOf(food: Composition, component: Exclude<Component, 'water'>): Figure {
  const { label, mark } = nameOf(component);
  const value = solidsOf(food)[component];
  const own =
    component === 'carbohydrate' ? '({carbohydrate} − {fibre} − {sugars} × 100, if above 0)' : `{${component}}`;
  const parts: Record<string, Figure> = {
    protein: column(food, 'protein'),
    fat: column(food, 'fat'),
    fibre: column(food, 'fibre'),
    ash: column(food, 'ash'),
    carbohydrate: column(food, 'carbohydrate'),
    sugars: sugarsOf(food),
    water: waterOf(food),
  };
  const sum = '({protein} + {fat} + {fibre} + {ash} + ({carbohydrate} − {fibre} − {sugars} × 100, if above 0))';
  const named = component === 'carbohydrate' ? 'Carbohydrate that is neither sugar nor fibre' : label;
  return workedOut(
    `n_${mark}`,
    `${named.replace(/^./, (first) => first.toUpperCase())}, per g of source`,
    'g/g',
    value,
    {
      words: 'In proportion to what is neither water nor sugar, since a table’s parts add up to 99.9 to 100.1.',
      formula: `${own} ÷ ${sum} × (1 − {water} − {sugars})`,
      parts,
    },
  );
}

/** A food as it is, or with the sugar and the water that the label of a drink makes of it. */
export interface FoodAsUsed {
  readonly table: Composition;
  readonly sugars: Figure;
  readonly water: Figure;
}

/** A food as its table has it. */
export function asInTable(table: Composition): FoodAsUsed {
  return { table, sugars: sugarsOf(table), water: waterOf(table) };
}

/** Density of a food as it is used, g/mL, from its composition. */
export function densityOfFood({ table, sugars, water }: FoodAsUsed, value: number): Figure {
  const rest = solidOf(table, 'carbohydrate');
  const carbohydrate = workedOut(
    'x_c',
    'Carbohydrate, sugars included and fibre not',
    'g/g',
    sugars.value + rest.value,
    {
      words: 'Its sugars, and what carbohydrate is neither sugar nor fibre.',
      formula: '{sugars} + {rest}',
      parts: { sugars, rest },
    },
  );
  const shares = {
    water,
    protein: solidOf(table, 'protein'),
    fat: solidOf(table, 'fat'),
    carbohydrate,
    fibre: solidOf(table, 'fibre'),
    ash: solidOf(table, 'ash'),
  };
  const { formula, parts } = sumOfVolumes(shares);
  return workedOut('ρ_f', 'Density of the source as it is', 'g/mL', value, {
    words: 'From what is in it: its parts take up their own volumes.',
    formula: `1 ÷ (${formula})`,
    parts,
  });
}

/** What a label says of a drink’s sugar, put in place of the table’s, the water giving way gram for gram. */
function labelled(x: Access): { readonly sugars: Figure; readonly water: Figure } {
  const table = x.choices.source.composition;
  const food = compositionInEffect(x);
  const before = sugarsOf(table);
  const density = densityOfFood(asInTable(table), foodDensity(table));
  const [dry, wet] = [componentDensity('carbohydrate'), componentDensity('water')];
  const sugars = workedOut('s_t', 'Sugars of the drink', 'g/g', totalSugars(food).value, {
    words: 'What its label says, per g of it: sugar takes up less room than the water that gives way.',
    formula:
      'the least of {labelSugar} ÷ {labelServing} × (1 ÷ {density} − {before} × (1 ÷ {dry} − 1 ÷ {wet})) ÷ (1 − {labelSugar} ÷ {labelServing} × (1 ÷ {dry} − 1 ÷ {wet})), {water} + {before}',
    parts: { density, before, dry, wet, water: waterOf(table) },
  });
  const water = workedOut('w', 'Water of the drink', 'g/g', food.water / 100, {
    words: 'The water of its table, less what the sugar of its label takes the place of.',
    formula: '{water} + {before} − {sugars}',
    parts: { water: waterOf(table), before, sugars },
  });
  return { sugars, water };
}

function isLabelled(x: Access): boolean {
  return x.choices.source.label !== null && x.c('labelServing') > 0;
}

/** The source as it is used: with the sugar of its label, where it has one. */
export function sourceAsUsed(x: Access): FoodAsUsed {
  const { composition } = x.choices.source;
  return isLabelled(x) ? { table: composition, ...labelled(x) } : asInTable(composition);
}

/** What a gram of the source holds. */
export const foodFigures = {
  sourceWater: (x) => sourceAsUsed(x).water,
  totalSugars: (x) => sourceAsUsed(x).sugars,
  measureWeight: (x) => {
    const { cup } = x.choices.source;
    if (cup === null) return densityOfFood(sourceAsUsed(x), foodDensity(compositionInEffect(x)));
    return entry('m_c', `Weight of a level measure (${cup.measure})`, cup.grams, 'g', cup.origin);
  },
  measureVolume: (x) => {
    const { cup } = x.choices.source;
    if (cup === null) return workedOut('V_c', 'Volume', 'mL', 1, { words: 'A mL of it.', formula: '' });
    return inMeasures('V_c', 'Volume of that measure', cup.millilitres);
  },
  ownWaterWeight: (x) => {
    const { ownWater } = x.choices.source;
    return ownWater === null
      ? workedOut('e', 'Its own liquid', 'g/g', 0, { words: 'It brings none.', formula: '' })
      : ofTable('e', 'Its own liquid', ownWater.perGram);
  },
} satisfies Record<string, FigureMaker>;
