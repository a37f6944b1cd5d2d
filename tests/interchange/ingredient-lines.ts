/** What a line is to be read as; amounts are compared to a thousandth. `food` is the key, null for one in no table. */
export interface Wanted {
  readonly amount: number | readonly [low: number, high: number] | null;
  readonly kind?: 'mass' | 'volume' | 'count';
  readonly food: string | null;
  readonly form?: string;
  readonly stated?: number;
  readonly statedVolume?: number;
  readonly problem?: string;
  readonly sure?: boolean;
  readonly modifiers?: readonly string[];
}

const cup = 236.588;
const tbsp = 14.787;
const tsp = 4.929;

/** Ingredient lines of our own making, one ingredient each, with a decimal point and US cups. */
export const ingredientLines: readonly (readonly [line: string, wanted: Wanted])[] = [
  // Numbers and fractions.
  ['2 cups water', { amount: 2 * cup, food: '14411' }],
  ['1 1/2 cups almonds', { amount: 1.5 * cup, food: '12061' }],
  ['1½ cups almonds', { amount: 1.5 * cup, food: '12061' }],
  ['1 ½ cups almonds', { amount: 1.5 * cup, food: '12061' }],
  ['1-1/2 cups almonds', { amount: 1.5 * cup, food: '12061' }],
  ['1 and 1/2 cups almonds', { amount: 1.5 * cup, food: '12061' }],
  ['1 & ½ cups almonds', { amount: 1.5 * cup, food: '12061' }],
  ['1 and a half cups almonds', { amount: 1.5 * cup, food: '12061' }],
  ['½ cup cashews', { amount: cup / 2, food: '12087' }],
  ['3/4 cup cashews', { amount: 0.75 * cup, food: '12087' }],
  ['1⁄4 cup cashews', { amount: cup / 4, food: '12087' }],
  ['⅔ cup cane sugar', { amount: (2 * cup) / 3, food: '19335' }],
  ['.5 cup sugar', { amount: cup / 2, food: '19335' }],
  ['1.25 L water', { amount: 1250, food: '14411' }],
  ['1 000 g cashews', { amount: 1000, kind: 'mass', food: '12087' }],
  ['half a cup of sugar', { amount: cup / 2, food: '19335' }],
  ['a cup of hazelnuts', { amount: cup, food: '12120' }],
  ['one cup water', { amount: cup, food: '14411' }],
  ['Two tablespoons of honey', { amount: 2 * tbsp, food: '19296' }],
  ['three quarters of a cup of pecans', { amount: 0.75 * cup, food: '12142' }],
  // Ranges.
  ['1½ to 2 cups almonds', { amount: [1.5 * cup, 2 * cup], food: '12061' }],
  ['1-2 tbsp honey', { amount: [tbsp, 2 * tbsp], food: '19296' }],
  ['2–3 T sugar', { amount: [2 * tbsp, 3 * tbsp], food: '19335' }],
  ['1/2 - 3/4 cup sugar', { amount: [cup / 2, 0.75 * cup], food: '19335' }],
  ['1 cup to 1 1/2 cups walnuts', { amount: [cup, 1.5 * cup], food: '12155' }],
  ['2 tbsp to ¼ cup honey', { amount: [2 * tbsp, cup / 4], food: '19296' }],
  ['2 or 3 dates', { amount: [2, 3], kind: 'count', food: '09421' }],
  ['150–170g almonds', { amount: [150, 170], kind: 'mass', food: '12061' }],
  // Units and their short forms.
  ['½ c sugar', { amount: cup / 2, food: '19335' }],
  ['2 C. water', { amount: 2 * cup, food: '14411' }],
  ['1 Tbsp. maple syrup', { amount: tbsp, food: '19353' }],
  ['1 T honey', { amount: tbsp, food: '19296' }],
  ['1 t honey', { amount: tsp, food: '19296' }],
  ['2 tsps. molasses', { amount: 2 * tsp, food: '19304' }],
  ['1 fl. oz. agave syrup', { amount: 2 * tbsp, food: '19912' }],
  ['1 qt water', { amount: 946.353, food: '14411' }],
  ['2 pints water', { amount: 946.353, food: '14411' }],
  ['¼ gallon water', { amount: 946.353, food: '14411' }],
  ['7.5 dl water', { amount: 750, food: '14411' }],
  ['750ml filtered water', { amount: 750, food: '14411' }],
  ['1 litre water', { amount: 1000, food: '14411' }],
  ['170g almonds', { amount: 170, kind: 'mass', food: '12061' }],
  ['0.2 kg sunflower seeds', { amount: 200, kind: 'mass', food: '12036' }],
  ['6 oz almonds', { amount: 170.097, kind: 'mass', food: '12061' }],
  ['8 oz water', { amount: cup, food: '14411' }],
  ['1 lb almonds', { amount: 453.592, kind: 'mass', food: '12061' }],
  ['1 lb 3 oz almonds', { amount: 538.641, kind: 'mass', food: '12061' }],
  ['1 cup plus 2 tbsp sugar', { amount: cup + 2 * tbsp, food: '19335' }],
  ['1 cup + 2 tbsp sugar', { amount: cup + 2 * tbsp, food: '19335' }],
  ['about 1 cup almonds', { amount: cup, food: '12061' }],
  ['~30 g water kefir grains', { amount: 30, kind: 'mass', food: 'grains.water' }],
  // Weights beside measures.
  ['1 cup (160 g) hazelnuts', { amount: cup, stated: 160, food: '12120' }],
  ['1 cup (about 143 g) almonds', { amount: cup, stated: 143, food: '12061' }],
  ['1 cup (5 oz / 143 g) almonds', { amount: cup, stated: 141.748, food: '12061' }],
  ['1 cup almonds (143 g)', { amount: cup, stated: 143, food: '12061' }],
  ['1 cup [143 g] almonds', { amount: cup, stated: 143, food: '12061' }],
  ['170 g (1 cup) almonds', { amount: 170, kind: 'mass', statedVolume: cup, food: '12061' }],
  ['1 cup / 143 g almonds', { amount: cup, stated: 143, food: '12061' }],
  ['143 g or 1 cup almonds', { amount: 143, kind: 'mass', statedVolume: cup, food: '12061' }],
  ['1 cup almonds (2 cups soaked)', { amount: cup, food: '12061' }],
  // How full the measure is.
  ['1 level tbsp sugar', { amount: tbsp, modifiers: ['level'], food: '19335' }],
  ['1 cup packed brown sugar', { amount: cup, form: 'packed', food: '19334' }],
  ['1 cup brown sugar, firmly packed', { amount: cup, form: 'packed', food: '19334' }],
  ['1 packed cup brown sugar', { amount: cup, form: 'packed', food: '19334' }],
  ['1 scant cup hemp hearts', { amount: cup, modifiers: ['scant'], food: '12012' }],
  ['1 cup sifted icing sugar', { amount: cup, form: 'sifted', food: '19336' }],
  ['1 heaped tbsp sugar', { amount: tbsp, problem: 'heaped', food: '19335' }],
  ['2 heaping teaspoons honey', { amount: 2 * tsp, problem: 'heaped', food: '19296' }],
  ['1 rounded tsp sugar', { amount: tsp, problem: 'heaped', food: '19335' }],
  // Cans.
  ['1 (400 mL) can coconut milk', { amount: 400, food: '12118' }],
  ['1 can (400 mL) coconut milk', { amount: 400, food: '12118' }],
  ['a 14-oz can coconut milk', { amount: 414.029, food: '12118' }],
  ['1 14-ounce can of coconut milk', { amount: 414.029, food: '12118' }],
  ['1 400ml tin coconut milk', { amount: 400, food: '12118' }],
  ['2 x 400 ml cans coconut milk', { amount: 800, food: '12118' }],
  ['2 cans (400 mL each) coconut milk', { amount: 800, food: '12118' }],
  ['1 (13.5-ounce) can full-fat coconut milk', { amount: 399.243, food: '12118', sure: true }],
  ['1 can coconut milk', { amount: 400, food: '12118' }],
  ['1 can date syrup', { amount: 1, kind: 'count', problem: 'noSize', food: 'sweetener.dateSyrup' }],
  // No amount that can be weighed.
  ['a pinch of salt', { amount: null, problem: 'noMeasure', food: 'flavour.salt' }],
  ['1 pinch sugar', { amount: null, problem: 'noMeasure', food: '19335' }],
  ['a handful of cashews', { amount: null, problem: 'noMeasure', food: '12087' }],
  ['salt, to taste', { amount: null, problem: 'noMeasure', food: 'flavour.salt' }],
  ['Kefir grains', { amount: null, problem: 'noAmount', food: 'grains.water', sure: false }],
  // Bullets, numbers, and what is done with it.
  ['- 1 cup cashews', { amount: cup, food: '12087' }],
  ['• 1 cup cashews', { amount: cup, food: '12087' }],
  ['* 1 cup cashews', { amount: cup, food: '12087' }],
  ['1. 2 cups water', { amount: 2 * cup, food: '14411' }],
  ['2) 2 cups water', { amount: 2 * cup, food: '14411' }],
  ['[ ] 1 cup cashews', { amount: cup, food: '12087' }],
  ['1 cup almonds, soaked overnight in 3 cups water', { amount: cup, food: '12061' }],
  ['1 cup cashews, covered with 3 cups water', { amount: cup, food: '12087' }],
  ['1 cup cashews, rinsed', { amount: cup, food: '12087' }],
  ['1 cup almonds – soaked 8 hours', { amount: cup, food: '12061' }],
  ['3 cups water for soaking', { amount: 3 * cup, food: '14411' }],
  // The food first.
  ['almonds, 1 cup', { amount: cup, food: '12061' }],
  ['Honey – 2 tbsp', { amount: 2 * tbsp, food: '19296' }],
  ['Water: 1 litre', { amount: 1000, food: '14411' }],
  // Which food it is.
  ['1 cup raw whole almonds', { amount: cup, form: 'whole', food: '12061' }],
  ['1 cup sliced almonds', { amount: cup, form: 'sliced', food: '12061' }],
  ['1 cup almonds, slivered', { amount: cup, form: 'slivered', food: '12061' }],
  ['1 cup ground almonds', { amount: cup, form: 'ground', food: 'source.almondGround' }],
  ['1 cup blanched almonds', { amount: cup, food: '12062' }],
  ['1 cup almonds, blanched', { amount: cup, food: '12062' }],
  ['1 cup chopped walnuts', { amount: cup, form: 'chopped', food: '12155' }],
  ['1 cup unsweetened shredded coconut', { amount: cup, form: 'shredded', food: '12108' }],
  ['2 cups coconut water', { amount: 2 * cup, food: '12119' }],
  ['2 cups unsweetened almond milk', { amount: 2 * cup, food: 'source.cartonPlain' }],
  ['1 cup whole milk', { amount: cup, food: '01077' }],
  ['12 medjool dates', { amount: 12, kind: 'count', food: '09421' }],
  ['2 tbsp milk kefir grains', { amount: 2 * tbsp, food: 'grains.milk' }],
  ['3 tbsp kefir grains', { amount: 3 * tbsp, food: 'grains.water', sure: false }],
  ['2 tbsp honey or maple syrup', { amount: 2 * tbsp, food: '19296', sure: false }],
  ['1 tbsp coconut sugar', { amount: tbsp, food: 'sweetener.coconutSugar' }],
  ['1 tsp stevia', { amount: tsp, food: 'sweetener.stevia' }],
  ['1 tsp almond extract', { amount: tsp, food: null, problem: 'unknownFood' }],
  ['2 tbsp peanut butter', { amount: 2 * tbsp, food: '16398' }],
  ['2 tbsp cashew butter', { amount: 2 * tbsp, food: null, problem: 'unknownFood' }],
  ['1 tsp rose water', { amount: tsp, food: null, problem: 'unknownFood' }],
  ['1 cup rice milk', { amount: cup, food: null, problem: 'unknownFood' }],
  ['1 tbsp lemon juice', { amount: tbsp, food: null, problem: 'unknownFood' }],
  ['2 cinnamon sticks', { amount: 2, kind: 'count', food: null, problem: 'unknownFood' }],
];
