/** What one ingredient of a line is to be read as. */
export interface Part {
  /** g, mL or pieces, both ends where it is a range; null for no amount that can be weighed. */
  readonly amount: number | readonly [low: number, high: number] | null;
  readonly kind: 'mass' | 'volume' | 'count';
  /** The key of the food; null for one in no table. */
  readonly food: string | null;
  readonly form?: string;
  /** g or mL that the text gives besides. */
  readonly stated?: number;
  readonly soaking?: true;
  readonly aside?: true;
  readonly problem?: string;
}

// US customary measures in mL and g: a quart of 57.75 in³ and a pound of 453.59237 g (NIST Handbook 44, appendix C).
const qt = 946.352946;
const pt = qt / 2;
const cup = qt / 4;
const tbsp = cup / 16;
const tsp = tbsp / 3;
const floz = cup / 8;
const oz = 453.59237 / 16;

type More = Omit<Part, 'amount' | 'kind' | 'food'>;

const volume = (amount: Part['amount'], food: string | null, more: More = {}): Part => ({
  amount,
  kind: 'volume',
  food,
  ...more,
});
const mass = (amount: Part['amount'], food: string | null, more: More = {}): Part => ({
  amount,
  kind: 'mass',
  food,
  ...more,
});
const pieces = (amount: Part['amount'], food: string | null, more: More = {}): Part => ({
  amount,
  kind: 'count',
  food,
  ...more,
});
const unknown = { problem: 'unknownFood' } as const;
const noMeasure = (food: string | null): Part => pieces(null, food, { problem: 'noMeasure' });

const almond = '12061';
const blanched = '12062';
const cashew = '12087';
const hazelnut = '12120';
const walnut = '12155';
const sunflower = '12036';
const coconut = '12108';
const coconutMilk = '12118';
const carton = 'source.cartonPlain';
const water = '14411';
const sugar = '19335';
const brown = '19334';
const honey = '19296';
const maple = '19353';
const dates = '09421';
const waterGrains = 'grains.water';
const milkGrains = 'grains.milk';

/** Lines of recipes in many styles, of our own making, with what each holds; a decimal point and US cups. */
export const recipeLines: Readonly<Record<string, readonly (readonly [line: string, parts: readonly Part[]])[]>> = {
  'an old card': [
    ['WATER 1 QT. + 1/2 C.', [volume(qt + cup / 2, water)]],
    ['SUGAR (BROWN) 1/4 C. PACKED', [volume(cup / 4, brown, { form: 'packed' })]],
    ['VANILLA 1 TSP', [volume(tsp, 'flavour.vanilla')]],
    ['VANILLA 1 TSP.', [volume(tsp, 'flavour.vanilla')]],
    ['ALMONDS .......... 1 1/2 CUPS', [volume(1.5 * cup, almond)]],
    ['ALMONDS.....1 C.', [volume(cup, almond)]],
    ['ALMONDS . . . . . 1 C.', [volume(cup, almond)]],
    ['HONEY 2 TBSP.', [volume(2 * tbsp, honey)]],
    ['HONEY ____ 2 TBSP.', [volume(2 * tbsp, honey)]],
    ['KEFIR GRAINS (WATER) 3 TBSP.', [volume(3 * tbsp, waterGrains)]],
    ['KEFIR GRAINS, MILK – 1 TBSP.', [volume(tbsp, milkGrains)]],
    ['SALT, A PINCH', [noMeasure('flavour.salt')]],
    ['SALT 1 PINCH', [noMeasure('flavour.salt')]],
    ['SALT – DASH', [noMeasure('flavour.salt')]],
    ['BROWN SUGAR, PACKED   1/4 C.', [volume(cup / 4, brown, { form: 'packed' })]],
    ['1/2 CUP BROWN SUGAR (PACKED)', [volume(cup / 2, brown, { form: 'packed' })]],
    ['NUTS (CASHEW) 1 C.', [volume(cup, cashew)]],
    ['2 TB. SUGAR', [volume(2 * tbsp, sugar)]],
    ['1 T. MAPLE SYRUP', [volume(tbsp, maple)]],
    ['1 t. HONEY', [volume(tsp, honey)]],
    ['WATER, 1 QT.', [volume(qt, water)]],
    ['WATER: 3 C. PLUS 2 T.', [volume(3 * cup + 2 * tbsp, water)]],
    ['COCONUT (SHREDDED, UNSWEETENED) 1 C.', [volume(cup, coconut, { form: 'shredded' })]],
    ['ALMONDS (BLANCHED) 1 C.', [volume(cup, blanched)]],
    ['WALNUTS, CHOPPED, 1 C.', [volume(cup, walnut, { form: 'chopped' })]],
    ['3 C COLD WATER', [volume(3 * cup, water)]],
    ['1 PT. WATER', [volume(pt, water)]],
    ['1 LB. ALMONDS', [mass(16 * oz, almond)]],
    ['6 OZ. CASHEWS', [mass(6 * oz, cashew)]],
  ],
  'the food first': [
    ['Almonds: 150 g', [mass(150, almond)]],
    ['Almonds (150 g)', [mass(150, almond)]],
    ['Almonds (1 cup, 143 g)', [volume(cup, almond, { stated: 143 })]],
    ['Almonds – 1 cup (143 g), soaked overnight', [volume(cup, almond, { stated: 143 })]],
    ['almonds 150g', [mass(150, almond)]],
    ['Almonds\t1 cup', [volume(cup, almond)]],
    ['| Almonds | 150 g |', [mass(150, almond)]],
    ['Almonds = 150 g', [mass(150, almond)]],
    ['Almonds (raw) – 150 g', [mass(150, almond)]],
    ['**Almonds:** 1 cup', [volume(cup, almond)]],
    ['Water …………… 3 cups', [volume(3 * cup, water)]],
    ['Water: 3 to 4 cups', [volume([3 * cup, 4 * cup], water)]],
    ['Water: 700–750 mL', [volume([700, 750], water)]],
    ['Filtered water, about 3 cups', [volume(3 * cup, water)]],
    ['Water for soaking: 3 cups', [volume(3 * cup, water, { soaking: true })]],
    ['Sugar (white) 2 Tbsp', [volume(2 * tbsp, sugar)]],
    ['Sugar, brown, 2 tbsp packed', [volume(2 * tbsp, brown, { form: 'packed' })]],
    ['Milk (almond): 1 litre', [volume(1000, carton)]],
    ['Milk kefir grains - 1 tablespoon', [volume(tbsp, milkGrains)]],
    ['Grains: 30 g', [mass(30, waterGrains)]],
    ['Dates – 6', [pieces(6, dates)]],
    ['Dates x 6', [pieces(6, dates)]],
    ['Dates: 6, pitted', [pieces(6, dates)]],
    ['Honey – two tablespoons', [volume(2 * tbsp, honey)]],
    ['Cinnamon – a pinch', [noMeasure('flavour.cinnamon')]],
    ['Vanilla extract: ½ tsp', [volume(tsp / 2, 'flavour.vanilla')]],
    ['Sea salt ⅛ tsp', [volume(tsp / 8, 'flavour.salt')]],
    [
      'Almonds 1 cup, water 3 cups, sugar 2 tbsp',
      [volume(cup, almond), volume(3 * cup, water), volume(2 * tbsp, sugar)],
    ],
    ['Almonds: 150 g; water: 700 ml; grains: 30 g', [mass(150, almond), volume(700, water), mass(30, waterGrains)]],
    ['Honey 1 tbsp and maple syrup 2 tsp', [volume(tbsp, honey), volume(2 * tsp, maple)]],
    ['Coconut milk, 1 can', [volume(400, coconutMilk)]],
  ],
  'metric and British': [
    ['150g almonds', [mass(150, almond)]],
    ['150 gr. almonds', [mass(150, almond)]],
    ['0.15 kg almonds', [mass(150, almond)]],
    ['150 grammes of almonds', [mass(150, almond)]],
    ['150g/5oz almonds', [mass(150, almond)]],
    ['150g (5½oz) almonds', [mass(150, almond)]],
    ['7.5 dl water', [volume(750, water)]],
    ['75 cl water', [volume(750, water)]],
    ['600ml/1 pint water', [volume(600, water)]],
    ['1 litre/1¾ pints water', [volume(1000, water)]],
    ['1 L filtered water, at room temperature', [volume(1000, water)]],
    ['25 g caster sugar', [mass(25, sugar)]],
    ['1 dessert spoon sugar', [noMeasure(sugar)]],
    ['2 x 400ml tins coconut milk', [volume(800, coconutMilk)]],
    ['400ml tin of coconut milk', [volume(400, coconutMilk)]],
    ['1 tbsp (15 ml) honey', [volume(tbsp, honey)]],
    ['1 kg cashews', [mass(1000, cashew)]],
    ['100–120 g hazelnuts', [mass([100, 120], hazelnut)]],
    ['1 000 ml water', [volume(1000, water)]],
    ['1 000 ml water', [volume(1000, water)]],
  ],
  'bullets and numbers': [
    ['► 1 cup almonds', [volume(cup, almond)]],
    ['➤ 1 cup almonds', [volume(cup, almond)]],
    ['☑ 1 cup almonds', [volume(cup, almond)]],
    ['▢ 1 cup almonds', [volume(cup, almond)]],
    ['■ 1 cup almonds', [volume(cup, almond)]],
    ['» 1 cup almonds', [volume(cup, almond)]],
    ['+ 1 cup almonds', [volume(cup, almond)]],
    ['[x] 1 cup almonds', [volume(cup, almond)]],
    ['🥜 1 cup almonds', [volume(cup, almond)]],
    ['1) 1 cup almonds', [volume(cup, almond)]],
    ['| 1 cup | almonds |', [volume(cup, almond)]],
    ['* **1 cup** almonds', [volume(cup, almond)]],
    ['1 cup almonds*', [volume(cup, almond)]],
    ['1 cup\talmonds', [volume(cup, almond)]],
  ],
  'numbers in words': [
    ['Two and a half cups of water', [volume(2.5 * cup, water)]],
    ['Three and a quarter cups water', [volume(3.25 * cup, water)]],
    ['One and three quarter cups of water', [volume(1.75 * cup, water)]],
    ['two-thirds cup almonds', [volume((2 * cup) / 3, almond)]],
    ['Two thirds of a cup of almonds', [volume((2 * cup) / 3, almond)]],
    ['A third of a cup of sugar', [volume(cup / 3, sugar)]],
    ['one third cup sugar', [volume(cup / 3, sugar)]],
    ['Half a cup of cashews', [volume(cup / 2, cashew)]],
    ['a half cup cashews', [volume(cup / 2, cashew)]],
    ['Quarter cup honey', [volume(cup / 4, honey)]],
    ['one to two tablespoons honey', [volume([tbsp, 2 * tbsp], honey)]],
    ['a dozen dates', [pieces(12, dates)]],
    ['half a dozen dates', [pieces(6, dates)]],
    ['ONE CUP ALMONDS', [volume(cup, almond)]],
  ],
  'fractions and ranges': [
    ['⅔–¾ cup cashews', [volume([(2 * cup) / 3, 0.75 * cup], cashew)]],
    ['1½–2 cups almonds', [volume([1.5 * cup, 2 * cup], almond)]],
    ['1 1/2 to 2 c almonds', [volume([1.5 * cup, 2 * cup], almond)]],
    ['between 1 and 2 cups water', [volume([cup, 2 * cup], water)]],
    ['2-3 T sugar', [volume([2 * tbsp, 3 * tbsp], sugar)]],
    ['2 ⅛ tsp honey', [volume(2.125 * tsp, honey)]],
    ['1⁄3 cup honey', [volume(cup / 3, honey)]],
    ['3 1/4 c. water', [volume(3.25 * cup, water)]],
    ['3-1/4 cups water', [volume(3.25 * cup, water)]],
    ['2½ cups + 1 tbsp water', [volume(2.5 * cup + tbsp, water)]],
    ['1 cup water plus 2 tbsp', [volume(cup, water), volume(2 * tbsp, water)]],
    ['1 tablespoon + 1 teaspoon honey', [volume(tbsp + tsp, honey)]],
    ['1 lb 3 oz almonds', [mass(19 * oz, almond)]],
  ],
  'an amount said twice': [
    ['¾ cup (about 100 g) raw cashews (soaked 4 hours, drained)', [volume(0.75 * cup, cashew, { stated: 100 })]],
    ['3½ cups (830 ml) water, divided', [volume(3.5 * cup, water)]],
    ['1 cup almonds, 143 g', [volume(cup, almond, { stated: 143 })]],
    ['1 cup almonds – 143 g', [volume(cup, almond, { stated: 143 })]],
    ['1 cup almonds = 143 g', [volume(cup, almond, { stated: 143 })]],
    ['1 cup almonds / 143 g', [volume(cup, almond, { stated: 143 })]],
    ['143 g almonds (1 cup)', [mass(143, almond, { stated: cup })]],
    ['1 cup (8 fl oz) water', [volume(cup, water)]],
  ],
  'what goes beyond the amount': [
    ['1 cup almonds, plus more for soaking', [volume(cup, almond)]],
    ['3 cups water, plus more for soaking', [volume(3 * cup, water)]],
    ['3 cups water (plus more for soaking)', [volume(3 * cup, water)]],
    ['3 cups water plus extra for soaking', [volume(3 * cup, water)]],
    ['3 cups filtered water + more to soak', [volume(3 * cup, water)]],
    ['4 cups cold water and a little more for rinsing', [volume(4 * cup, water)]],
    ['4 cups water, plus water for soaking', [volume(4 * cup, water)]],
    ['3 cups water, plus 2 cups for soaking', [volume(3 * cup, water), volume(2 * cup, water, { soaking: true })]],
    ['2 tbsp sugar, plus extra to taste', [volume(2 * tbsp, sugar)]],
    ['Water, for soaking', [pieces(null, water, { soaking: true, problem: 'noAmount' })]],
    ['1 cup almonds, soaked overnight in 3 cups water, drained', [volume(cup, almond)]],
    ['1 cup almonds, blended with 4 cups water', [volume(cup, almond), volume(4 * cup, water)]],
    ['2 tbsp sugar, dissolved in ¼ cup water', [volume(2 * tbsp, sugar), volume(cup / 4, water)]],
  ],
  'cans and cartons': [
    ['1 can coconut milk', [volume(400, coconutMilk)]],
    ['2 cans coconut milk', [volume(800, coconutMilk)]],
    ['one tin of coconut milk', [volume(400, coconutMilk)]],
    ['Half a can of coconut milk', [volume(200, coconutMilk)]],
    ['1 can full-fat coconut milk', [volume(400, coconutMilk)]],
    ['2 cans coconut cream', [volume(800, '12115')]],
    ['1 small can coconut milk', [pieces(1, coconutMilk, { problem: 'noSize' })]],
    ['1 can (13.5 fl oz) coconut milk', [volume(13.5 * floz, coconutMilk)]],
    ['1 can coconut milk (400 ml)', [volume(400, coconutMilk)]],
    ['1 carton almond milk', [pieces(1, carton, { problem: 'noSize' })]],
    ['1 (32-oz) carton almond milk', [volume(32 * floz, carton)]],
    ['1 jar honey', [pieces(1, honey, { problem: 'noSize' })]],
  ],
  'to taste, or by choice': [
    ['Salt to taste', [noMeasure('flavour.salt')]],
    ['Honey, to taste', [noMeasure(honey)]],
    ['a pinch of sea salt', [noMeasure('flavour.salt')]],
    ['1 good handful of walnuts', [noMeasure(walnut)]],
    ['Juice of 1 lemon', [pieces(null, null, { problem: 'noAmount' })]],
    ['Peel of half a lemon', [pieces(null, null, { problem: 'noAmount' })]],
    ['A few slices of ginger', [pieces(null, null, { problem: 'noAmount' })]],
    ['1 lemon', [pieces(1, null, unknown)]],
    ['1 vanilla bean, split', [pieces(1, null, unknown)]],
    ['Optional: 2 tbsp honey', [volume(2 * tbsp, honey, { aside: true })]],
    ['(optional) 1 tsp vanilla extract', [volume(tsp, 'flavour.vanilla', { aside: true })]],
    ['2 tbsp honey (optional)', [volume(2 * tbsp, honey, { aside: true })]],
    ['1 tbsp maple syrup, to serve', [volume(tbsp, maple, { aside: true })]],
    ['For the second ferment: 1 tbsp honey', [volume(tbsp, honey, { aside: true })]],
    ['2 tsp sugar for the second ferment', [volume(2 * tsp, sugar, { aside: true })]],
  ],
  'what is of something else': [
    ['1 cup almond flour', [volume(cup, 'source.almondGround')]],
    ['1 cup almond butter', [volume(cup, '12195')]],
    ['1 cup soybeans', [volume(cup, '16108')]],
    ['1 cup rice', [volume(cup, '20444')]],
    ['1 cup walnut flour', [volume(cup, null, unknown)]],
    ['1 cup cashew butter', [volume(cup, null, unknown)]],
    ['2 tbsp almond flavouring', [volume(2 * tbsp, null, unknown)]],
    ['1 cup mixed nuts', [volume(cup, null, unknown)]],
    ['1 cup lentils', [volume(cup, null, unknown)]],
    ['1 cup quinoa', [volume(cup, null, unknown)]],
    ['2 tbsp coconut oil', [volume(2 * tbsp, null, unknown)]],
    ['2 cups orange water', [volume(2 * cup, null, unknown)]],
  ],
  sentences: [
    [
      'Take ⅔–¾ cup hulled sunflower seeds and 3 1/4 c. water; 1 tablespoon + 1 teaspoon honey',
      [volume([(2 * cup) / 3, 0.75 * cup], sunflower), volume(3.25 * cup, water), volume(tbsp + tsp, honey)],
    ],
    ['Blend 1 cup cashews with 3 cups water.', [volume(cup, cashew), volume(3 * cup, water)]],
    ['Step 1: Blend 1 cup cashews with 3 cups water', [volume(cup, cashew), volume(3 * cup, water)]],
    [
      'You will need 1 cup almonds, 3 cups water and 2 tbsp sugar.',
      [volume(cup, almond), volume(3 * cup, water), volume(2 * tbsp, sugar)],
    ],
    ['Soak 1 cup almonds in 3 cups water.', [volume(cup, almond), volume(3 * cup, water, { soaking: true })]],
    ['Soak the almonds overnight in 3 cups of water', [volume(3 * cup, water, { soaking: true })]],
    [
      'Soak 1 cup almonds in 3 cups water overnight, drain, and blend with 3 1/4 cups fresh water.',
      [volume(cup, almond), volume(3 * cup, water, { soaking: true }), volume(3.25 * cup, water)],
    ],
    ['1. Soak 150 g almonds overnight.', [mass(150, almond)]],
    ['2. Drain, then blend with 700 ml water for 2 minutes.', [volume(700, water)]],
    [
      'Stir in 2 tablespoons of sugar and 3 tablespoons of water kefir grains.',
      [volume(2 * tbsp, sugar), volume(3 * tbsp, waterGrains)],
    ],
    ['Add 1 tbsp honey', [volume(tbsp, honey)]],
    ['Add a pinch of salt and 6 dates, then blend until smooth.', [noMeasure('flavour.salt'), pieces(6, dates)]],
    ['Dissolve 2 tbsp sugar in 1/4 cup water.', [volume(2 * tbsp, sugar), volume(cup / 4, water)]],
    [
      'In a quart jar, combine 3 cups almond milk with 2 tbsp milk kefir grains.',
      [volume(3 * cup, carton), volume(2 * tbsp, milkGrains)],
    ],
    [
      'Pour 1 L soy milk into a jar; add 1 tbsp milk grains; leave 24 hours at 70°F.',
      [volume(1000, carton), volume(tbsp, milkGrains)],
    ],
    [
      'For 1 litre: 150 g almonds, 900 ml water, 20 g sugar, 30 g grains',
      [mass(150, almond), volume(900, water), mass(20, sugar), mass(30, waterGrains)],
    ],
    [
      'I use a cup of hazelnuts, about 3 cups of water and two tablespoons of maple syrup.',
      [volume(cup, hazelnut), volume(3 * cup, water), volume(2 * tbsp, maple)],
    ],
    ['Add 1 tbsp honey (21 g) and stir well.', [volume(tbsp, honey, { stated: 21 })]],
    ['Add 1 cup of the soaked almonds.', []],
    ['Blend for 2 minutes, leave 1 inch of headspace, and wait 24 to 48 hours at 21 °C.', []],
    ['Pour into a 1 L jar, filling it to 2 cm below the rim.', []],
    ['Strain into two 1-quart bottles.', []],
    ['This makes about 4 cups of milk.', []],
    ['Ferment at 21 °C for 24 hours, then strain through a sieve.', []],
  ],
  'lists without commas': [
    ['Cashews: 1/3 c. Water: 2 c. Honey: 1 T.', [volume(cup / 3, cashew), volume(2 * cup, water), volume(tbsp, honey)]],
    ['cashews 1/3 c / water 2 c / honey 1 T', [volume(cup / 3, cashew), volume(2 * cup, water), volume(tbsp, honey)]],
    ['cashews (1/3 c.) + water (2 c.)', [volume(cup / 3, cashew), volume(2 * cup, water)]],
    ['1 cup of almonds to 4 cups of water', [volume(cup, almond), volume(4 * cup, water)]],
    ['2 tbsp each honey and maple syrup', [volume(2 * tbsp, honey), volume(2 * tbsp, maple)]],
    ['2 tbsp honey/maple syrup', [volume(2 * tbsp, honey)]],
    ['a cup and a half of almonds', [volume(1.5 * cup, almond)]],
    ['1 cup and a half teaspoon water', [volume(cup + tsp / 2, water)]],
    ['half-cup sugar', [volume(cup / 2, sugar)]],
    ['(150 g) almonds', [mass(150, almond)]],
    ['2 tblsp honey', [volume(2 * tbsp, honey)]],
    ['2 cupfuls water', [volume(2 * cup, water)]],
  ],
  'so much for every litre': [
    ['25g sugar per litre', [pieces(null, sugar, { problem: 'rate' })]],
    ['Use 1 tbsp grains per cup.', [pieces(null, waterGrains, { problem: 'rate' })]],
    ['Mix in 1 tablespoon of honey for each cup of milk.', [pieces(null, honey, { problem: 'rate' })]],
  ],
  'amounts in brackets within sentences': [
    [
      'Add sugar (2 tbsp), salt (a pinch) and grains (30 g).',
      [volume(2 * tbsp, sugar), noMeasure('flavour.salt'), mass(30, waterGrains)],
    ],
    ['Blend the almonds (1 cup) with water (3 cups).', [volume(cup, almond), volume(3 * cup, water)]],
    ['Soak the cashews (1 cup) in water (2 cups).', [volume(cup, cashew), volume(2 * cup, water, { soaking: true })]],
    ['Put a cup of almonds and a pinch of salt into the blender.', [volume(cup, almond), noMeasure('flavour.salt')]],
  ],
  'no ingredient': [
    ['Equipment: 1 quart jar, 1 cloth', []],
    ['1 large jar', []],
    ['1 wide-mouth quart jar', []],
    ['A jar of at least 1.5 litres', []],
    ['Reserve 1/2 cup.', []],
    ['Ingredients:', []],
    ['Ingredients', []],
    ['Serves 4', []],
    ['4 servings', []],
    ['Prep time: 10 minutes', []],
    ['Prep: 10 min, soak: 8 h', []],
    ['Makes 1 quart', []],
    ['Yield: 4 cups', []],
    ['24 hours', []],
    ['For a 2 L jar', []],
    ['Use a clean 1 L jar', []],
    ['Jar: 2 L', []],
    ['Leave about 2 cups of room', []],
    ['Room temperature 70°F', []],
    ['Protein 4 g', []],
    ['Per glass: calories 120, fat 9 g, carbohydrates 4 g', []],
    ['5 stars from 12 reviews', []],
  ],
};
