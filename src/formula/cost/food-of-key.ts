import { convertNumber } from '../../measure/units';
import { foodMeasures } from '../../reference/food-measures';
import { dairyRecords } from '../../reference/other-aliases';
import { type SourceId, sources } from '../../reference/sources';
import { sweeteners } from '../../reference/sweeteners';
import { additionName, additionWeight, isFruit, pieceOf } from '../fizz/bottle-additions';
import { foodDensity } from '../models/strain';
import { type FoodToBuy, sweetenerToBuy } from './needs';

function has<K extends string>(table: Readonly<Record<K, unknown>>, id: string): id is K {
  return Object.hasOwn(table, id);
}

/** A food by the key that its package is kept under, whatever batch it is for; of an unknown one only its name. */
export function foodOfKey(food: string, named?: string): FoodToBuy {
  const [kind, id = ''] = food.split(/\.(.*)/s);
  const known = kind === undefined ? null : found(kind, id);
  const bare = { food, name: id === '' ? food : id, weight: null, piece: null, isLiquid: kind === 'carton' };
  const entry = known ?? bare;
  return named === undefined ? entry : { ...entry, name: named };
}

function found(kind: string, id: string): FoodToBuy | null {
  if (kind === 'source' && has(sources, id)) return sourceToBuy(id);
  if (kind === 'sweetener' && has(sweeteners, id)) return sweetenerToBuy(id);
  if (kind === 'carton') return { ...sourceToBuy('cartonPlain'), food: `carton.${id}`, name: id };
  if (kind === 'milk') return { ...dairyMilk, food: `milk.${id}` };
  if (kind !== 'fruit' || !isFruit(id)) return null;
  return {
    food: `fruit.${id}`,
    name: additionName(id),
    weight: additionWeight(id),
    piece: pieceOf(id),
    isLiquid: false,
  };
}

function sourceToBuy(id: SourceId): FoodToBuy {
  const { name, cup, form, composition, can } = sources[id];
  const ofCup = cup === null ? null : cup.grams / cup.millilitres;
  const weight = ofCup ?? (form === 'liquid' ? foodDensity(composition) : null);
  return {
    food: `source.${id}`,
    name,
    weight,
    piece: can === undefined || weight === null ? null : can.volume.value * weight,
    isLiquid: form === 'liquid',
  };
}

const [wholeMilk] = dairyRecords;
const ofMilk = wholeMilk === undefined ? [] : foodMeasures[wholeMilk].measures;
const cupful = ofMilk.find(({ unit }) => unit === 'cup');

/** Dairy milk, which milk grains rest in. */
export const dairyMilk: FoodToBuy = {
  food: 'milk.dairy',
  name: 'Dairy milk',
  weight: cupful === undefined ? null : cupful.grams / convertNumber(cupful.amount, 'cup', 'mL'),
  piece: null,
  isLiquid: true,
};
