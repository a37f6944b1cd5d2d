import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keysOf } from '../../src/batch/table-keys';
import { allergens } from '../../src/reference/allergens';
import { bottles } from '../../src/reference/bottles';
import { cartonWaiting } from '../../src/reference/carton-waiting';
import { cautions } from '../../src/reference/cautions';
import {
  alcoholLine,
  cardinalTemperatures,
  carrollHenry,
  fermenting,
  gasVolume,
  sweetness,
} from '../../src/reference/fermenting';
import { foods } from '../../src/reference/foods';
import { grains } from '../../src/reference/grains';
import { handwork } from '../../src/reference/handwork';
import { jars } from '../../src/reference/jars';
import { keepingTimes } from '../../src/reference/keeping';
import { kitchen } from '../../src/reference/kitchen';
import { commonPractice, fromMemory, judgement, published } from '../../src/reference/origins';
import { learning } from '../../src/reference/pace';
import { componentDensities, molarMasses, physics, waterDensity } from '../../src/reference/physics';
import { notesOf } from '../../src/reference/source-notes';
import { sources } from '../../src/reference/sources';
import { sweeteners } from '../../src/reference/sweeteners';
import { works } from '../../src/reference/works';
import { coefficientsIn, originsIn } from './walk';

const tables = {
  ...{ allergens, cautions, foods, grains, jars, kitchen, sources, sweeteners },
  ...{ cardinalTemperatures, carrollHenry, componentDensities, fermenting, molarMasses, physics, waterDensity },
  ...{ alcoholLine, bottles, cartonWaiting, gasVolume, handwork, keepingTimes, learning, sweetness },
  sourceNotes: keysOf(sources).map((id) => notesOf(id, 'milk')),
};
const origins = originsIn(tables);
const coefficients = coefficientsIn(tables);

// Remembered figures that have no spread: definitions, atomic weights, and counts that follow from them.
const exact = /^molarMasses\.|^physics\.(gasConstant|atmosphere|zeroCelsius|ethanolDensity)$/;

describe('origins', () => {
  it('are found throughout the tables', () => {
    expect(origins.length).toBeGreaterThan(400);
    expect(coefficients.length).toBeGreaterThan(300);
  });

  it('name a work on the list and a place in it wherever they are published', () => {
    const cited = origins.filter(({ origin }) => origin.kind === 'published');
    expect(cited.length).toBeGreaterThan(80);
    for (const { at, origin } of cited) {
      expect(Object.keys(works), at).toContain(origin.work);
      expect(String(origin.place).trim(), at).not.toBe('');
    }
  });

  it('give a reason for every judgement', () => {
    for (const { at, origin } of origins.filter((entry) => entry.origin.kind === 'judgement')) {
      expect(String(origin.reason).length, at).toBeGreaterThan(10);
    }
  });

  it('are never invented or the user’s own in a table', () => {
    expect(origins.filter(({ origin }) => origin.kind === 'invented' || origin.kind === 'yours')).toEqual([]);
  });

  it('are kept apart by their makers', () => {
    expect(published('usda-sr', 'record 12061')).toEqual({ kind: 'published', work: 'usda-sr', place: 'record 12061' });
    expect(published('usda-sr', 'record 12061', 'whole')).toMatchObject({ note: 'whole' });
    expect(commonPractice()).toEqual({ kind: 'common practice' });
    expect(fromMemory('low confidence')).toEqual({ kind: 'from memory', note: 'low confidence' });
    expect(judgement('because')).toEqual({ kind: 'judgement', reason: 'because' });
  });
});

describe('works', () => {
  it('say what was seen of each', () => {
    for (const [id, work] of Object.entries(works)) {
      expect(work.title.length, id).toBeGreaterThan(5);
      expect(work.seen.length, id).toBeGreaterThan(5);
    }
  });
});

describe('coefficients', () => {
  it('lie within their own range', () => {
    fc.assert(
      fc.property(fc.constantFrom(...coefficients), ({ value, low, high }) => {
        expect(Number.isFinite(value)).toBe(true);
        expect(low ?? value).toBeLessThanOrEqual(value);
        expect(high ?? value).toBeGreaterThanOrEqual(value);
      }),
      { numRuns: 2000 },
    );
  });

  it('have both ends of a range or neither, and the ends differ', () => {
    for (const { at, low, high } of coefficients) {
      expect(low === undefined, at).toBe(high === undefined);
      if (low !== undefined && high !== undefined) expect(low, at).toBeLessThan(high);
    }
  });

  it('carry the range believed wherever they are from memory', () => {
    const bare = coefficients.filter(({ at, origin, low }) => {
      return origin.kind === 'from memory' && low === undefined && !exact.test(at);
    });
    expect(bare.map(({ at }) => at)).toEqual([]);
  });

  it('have a unit', () => {
    for (const { at, unit } of coefficients) expect(unit, at).toMatch(/\S/);
  });

  it('keep shares between 0 and 1', () => {
    for (const { at, unit, value, low, high } of coefficients.filter((entry) => entry.unit === 'share')) {
      expect(Math.min(value, low ?? value), at).toBeGreaterThanOrEqual(0);
      expect(Math.max(value, high ?? value), `${at} ${unit}`).toBeLessThanOrEqual(1);
    }
  });
});
