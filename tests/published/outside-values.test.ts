// What was read in works of others, held against what this page has or works out. Each file under references/ opens its
// tables with the citation and what of it was seen; this one counts them and prints the list.
import { describe, expect, test } from 'vitest';
import type { Reference } from './outside';
import * as acidity from './references/acidity';
import * as density from './references/density';
import * as fermentation from './references/fermentation';
import * as gas from './references/gas';
import * as grainGrowth from './references/grain-growth';
import * as growth from './references/growth';
import * as milk from './references/milk';
import * as nutrition from './references/nutrition';
import * as units from './references/units';
import * as usda from './references/usda';

const references: readonly Reference[] = [
  acidity,
  gas,
  density,
  growth,
  grainGrowth,
  fermentation,
  milk,
  nutrition,
  units,
  usda,
].flatMap((each) => Object.values<Reference>(each));

function countOf(kind: Reference['kind']): number {
  return references.filter((each) => each.kind === kind).reduce((sum, { rows }) => sum + rows.length, 0);
}

describe.each(references)('$citation', ({ rows, seen, tolerance }) => {
  test('ours is as near as it says', () => {
    const off = rows
      .filter(({ printed, ours, within }) => !(Math.abs(ours - printed) <= within))
      .map(({ what, printed, ours, within }) => `${what}: printed ${printed}, ours ${ours}, within ${within}`);
    expect(off).toEqual([]);
    expect(rows.length).toBeGreaterThan(0);
  });

  test('says what was seen of it, and why ours may be so far off', () => {
    expect(seen).not.toBe('');
    expect(tolerance).not.toBe('');
  });
});

// Four works have two tables here, so 25 tables are more than 20 works.
test('at least 300 values were read in at least 20 works, of which a hundred are results', () => {
  const read = references.filter(({ kind }) => kind !== 'formula');
  const list = references.map(({ citation, kind, rows }) => `${rows.length} ${kind}: ${citation}`);
  const [results, carried, worked] = [countOf('result'), countOf('carried over'), countOf('formula')];
  console.log(`${results} results, ${carried} figures carried over; ${worked} worked from a formula, not counted`);
  console.log(list.join('\n'));
  expect(read.length).toBeGreaterThanOrEqual(25);
  expect(results + carried).toBeGreaterThanOrEqual(300);
  expect(results).toBeGreaterThanOrEqual(100);
});
