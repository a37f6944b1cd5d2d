import { doubleOf } from '../../../src/measure/exact';
import { convert, cupStandards, toBase, type UnitId } from '../../../src/measure/units';
import { kept, type Reference, withinShare } from '../outside';

const count = (larger: UnitId, smaller: UnitId): number => doubleOf(convert(1, larger, smaller));
const millilitres = (amount: number, unit: UnitId): number => doubleOf(toBase(amount, unit));

export const handbook44: Reference = {
  citation: 'NIST Handbook 44, Appendix C, General Tables of Units of Measurement.',
  seen: 'an archived page and an extract',
  kind: 'result',
  tolerance: 'Exact.',
  rows: [
    kept('in³ in a gallon', 231, count('gal', 'in3')),
    kept('fl oz in a cup', 8, count('cup', 'flOz')),
    kept('cups in a pint', 2, count('pt', 'cup')),
  ],
};

export const metricHousehold: Reference = {
  citation: 'NIST Office of Weights and Measures, Metric Household (SP 430 table).',
  seen: 'the page',
  kind: 'result',
  tolerance: 'Exact, as it marks them.',
  rows: [kept('tbsp in a cup', 16, count('cup', 'tbsp')), kept('tsp in a cup', 48, count('cup', 'tsp'))],
};

export const kitchenCard: Reference = {
  citation: 'NIST Office of Weights and Measures, Cooking Measurement Equivalencies, approximate mL.',
  seen: 'the page',
  kind: 'result',
  tolerance: 'It rounds to what a jug shows: up to 1.5 %, and 1.5 % more for a third of a cup.',
  rows: [
    withinShare('tsp, mL', 5, millilitres(1, 'tsp'), 0.015),
    withinShare('tbsp, mL', 15, millilitres(1, 'tbsp'), 0.015),
    withinShare('¼ cup, mL', 60, millilitres(1 / 4, 'cup'), 0.015),
    withinShare('⅓ cup, mL', 80, millilitres(1 / 3, 'cup'), 0.03),
    withinShare('½ cup, mL', 120, millilitres(1 / 2, 'cup'), 0.015),
    withinShare('cup, mL', 240, millilitres(1, 'cup'), 0.015),
    withinShare('pint, mL', 480, millilitres(1, 'pt'), 0.015),
    withinShare('quart, mL', 950, millilitres(1, 'qt'), 0.015),
  ],
};

export const nutritionLabels: Reference = {
  citation: '21 CFR 101.9(b)(5)(viii): household measures on labels.',
  seen: 'the sentence, quoted in another work',
  kind: 'result',
  tolerance: 'Exact by the rule.',
  rows: [
    kept('cup, mL', 240, millilitres(1, cupStandards['us-label'].cup)),
    kept('fl oz, mL', 30, millilitres(1, cupStandards['us-label'].flOz)),
    kept('tbsp, mL', 15, millilitres(1, cupStandards['us-label'].tbsp)),
    kept('tsp, mL', 5, millilitres(1, cupStandards['us-label'].tsp)),
  ],
};

export const australianChart: Reference = {
  citation: 'New South Wales Government, Healthy Kids, conversion chart.',
  seen: 'the page',
  kind: 'result',
  tolerance: 'Exact, but a third of a cup is rounded to 80 mL, 4 %, and a quarter to 60.',
  rows: [
    kept('cup, mL', 250, millilitres(1, cupStandards['metric-20'].cup)),
    kept('tbsp, mL', 20, millilitres(1, cupStandards['metric-20'].tbsp)),
    kept('tsp, mL', 5, millilitres(1, cupStandards['metric-20'].tsp)),
    kept('½ cup, mL', 125, millilitres(1 / 2, cupStandards['metric-20'].cup)),
    withinShare('⅓ cup, mL', 80, millilitres(1 / 3, cupStandards['metric-20'].cup), 0.045),
    withinShare('¼ cup, mL', 60, millilitres(1 / 4, cupStandards['metric-20'].cup), 0.045),
  ],
};
