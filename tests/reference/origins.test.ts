import { describe, expect, it } from 'vitest';
import { commonPractice, fromMemory, judgement, published } from '../../src/reference/origins';
import { type Work, works } from '../../src/reference/works';
import { publishedIn } from './expected/marks';
import { tables } from './tables';
import { coefficientsIn, originsIn } from './walk';

const modules = import.meta.glob<Record<string, unknown>>('../../src/reference/*.ts', { eager: true });
const origins = originsIn(tables);
const coefficients = coefficientsIn(tables);

// Remembered figures that have no spread: definitions, atomic weights, and counts that follow from them.
const exact = /^molarMasses\.|^physics\.(gasConstant|atmosphere|zeroCelsius|ethanolDensity)$/;

describe('the tables that are checked', () => {
  it('are all that the reference layer exports, but the works themselves', () => {
    const checked: readonly unknown[] = Object.values(tables);
    const exported = Object.values(modules).flatMap((module) => Object.entries(module));
    const missing = exported.filter(([, value]) => originsIn(value).length > 0 && !checked.includes(value));
    expect(missing.map(([name]) => name)).toEqual([]);
    expect(exported.length).toBeGreaterThan(30);
  });
});

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
  it('are each cited by some figure, fact or formula', () => {
    const cited = origins.map(({ origin }) => origin.work);
    expect(Object.keys(works).filter((id) => !cited.includes(id))).toEqual([]);
  });

  it('carry their authors and journal, unless an institution signs them or no name was noted', () => {
    for (const [id, { authors, journal, publisher, seen }] of Object.entries<Work>(works)) {
      if (authors === null) expect(publisher ?? (/not noted/.test(seen) ? seen : ''), id).not.toBe('');
      else expect(journal ?? publisher ?? seen, id).toMatch(/\S/);
      if (authors === null && journal !== null) expect(seen, id).toMatch(/names were not noted/);
    }
  });

  it('say what was seen of each', () => {
    for (const [id, work] of Object.entries(works)) {
      expect(work.title.length, id).toBeGreaterThan(5);
      expect(work.seen.length, id).toBeGreaterThan(5);
    }
  });
});

describe('coefficients', () => {
  it('carry the range believed wherever they are from memory', () => {
    const bare = coefficients.filter(({ at, origin, low }) => {
      return origin.kind === 'from memory' && low === undefined && !exact.test(at);
    });
    expect(bare.map(({ at }) => at)).toEqual([]);
  });

  it('say they are published where a work was read for them, and nowhere else', () => {
    const said = coefficients.filter(({ origin }) => origin.kind === 'published');
    const read = Object.entries(publishedIn).flatMap(([work, places]) => places.map((at) => `${at} in ${work}`));
    expect(said.map(({ at, origin }) => `${at} in ${String(origin.work)}`).sort()).toEqual(read.sort());
  });

  it('have a unit', () => {
    for (const { at, unit } of coefficients) expect(unit, at).toMatch(/\S/);
  });
});
