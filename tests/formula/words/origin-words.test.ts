import { describe, expect, test } from 'vitest';
import { chooseFrom, coefficientIds, coefficientInEffect } from '../../../src/formula/recipe/coefficients';
import { describeCoefficient, describeOrigin } from '../../../src/formula/words/origin-words';
import { cautions } from '../../../src/reference/cautions';
import { commonPractice, fromMemory, judgement, type Origin, published } from '../../../src/reference/origins';
import { notesOf } from '../../../src/reference/source-notes';
import { sources } from '../../../src/reference/sources';
import { works } from '../../../src/reference/works';
import { recipeOf, sourceIds } from '../../batches';

const plain = (text: string): string => text.replaceAll('\u00A0', ' ');

describe('an origin', () => {
  test.each<readonly [Origin, string]>([
    [published('usda-sr', 'record 12061'), `Published: ${works['usda-sr'].title}, record 12061.`],
    [commonPractice(), 'Common practice, no source found.'],
    [commonPractice('The deeper end.'), 'Common practice, no source found. The deeper end.'],
    [fromMemory('Low confidence.'), 'From memory. Low confidence.'],
    [judgement('It has none.'), 'A judgement of this sheet: It has none.'],
    [{ kind: 'invented' }, 'Invented for the example.'],
    [{ kind: 'yours', how: 'typed' }, 'Yours, typed.'],
    [{ kind: 'yours', how: 'measured' }, 'Yours, measured.'],
    [{ kind: 'yours', how: 'learned' }, 'Yours, learned from your log.'],
  ])('%j is described', (origin, words) => {
    expect(describeOrigin(origin)).toBe(words);
  });

  test('names the year where the title does not, and no place twice', () => {
    expect(describeOrigin(published('almond-soak-2020', 'summary'))).toMatch(/\(2020\), summary\.$/);
    expect(describeOrigin(published('codex-243', '§ 2.1')).match(/§ 2\.1/g)).toHaveLength(1);
    expect(describeOrigin(published('cfr-21-114', '§ 114.3'))).not.toContain('in force');
  });

  test('names who wrote it, and in what journal', () => {
    expect(describeOrigin(published('carroll-1991', 'abstract'))).toBe(
      'Published: Carroll J.J., Slupsky J.D., Mather A.E., The solubility of carbon dioxide in water at low pressure, J. Phys. Chem. Ref. Data 20: 1201–1209 (1991), abstract.',
    );
  });

  test('gives its note last', () => {
    expect(describeOrigin(published('fsis-danger-zone', 'page', 'A note.'))).toMatch(/, page\. A note\.$/);
  });

  test('of every caution and note is whole sentences', () => {
    const notes = sourceIds.flatMap((id) => notesOf(id, 'milk'));
    for (const { origin } of [...cautions, ...notes]) {
      expect(describeOrigin(origin)).toMatch(/^[A-Z].+\.$/);
      expect(describeOrigin(origin)).not.toMatch(/undefined|\.\.| {2}/);
    }
  });
});

describe('a coefficient', () => {
  test.each<readonly [Origin, string]>([
    [fromMemory('Home bag.'), 'From memory; believed between 0.35 and 0.55. Home bag.'],
    [commonPractice(), 'Common practice, no source found; usually between 0.35 and 0.55.'],
    [judgement('As it is.'), 'A judgement of this sheet: As it is; taken to lie between 0.35 and 0.55.'],
    [{ kind: 'invented' }, 'Invented for the example; between 0.35 and 0.55.'],
  ])('with %j gives its range', (origin, words) => {
    expect(describeCoefficient({ value: 0.45, unit: 'share', low: 0.35, high: 0.55, origin })).toBe(words);
  });

  test('that is published gives the range without saying who believes it', () => {
    const { perGram } = sources.coconutFresh.ownWater ?? { perGram: null };
    expect(perGram === null ? '' : plain(describeCoefficient(perGram))).toMatch(/; range 0 to 0\.6 g\/g\. Computed/);
  });

  test('has the unit and the decimal comma', () => {
    const coefficient = { value: 0.25, unit: 'mL/g', low: 0.1, high: 0.5, origin: fromMemory() };
    expect(plain(describeCoefficient(coefficient, true))).toBe('From memory; believed between 0,1 and 0,5 mL/g.');
  });

  test('without a range says its origin alone', () => {
    expect(describeCoefficient({ value: 1, unit: 'g', origin: { kind: 'yours', how: 'typed' } })).toBe('Yours, typed.');
  });

  test('of the tables is always described', () => {
    for (const source of sourceIds) {
      const recipe = recipeOf({ source });
      for (const id of coefficientIds) {
        const text = describeCoefficient(coefficientInEffect(id, recipe, chooseFrom(recipe)));
        expect(text).toMatch(/^[A-Z].+\.$/);
        expect(text).not.toMatch(/undefined|NaN| {2}/);
      }
    }
  });
});
