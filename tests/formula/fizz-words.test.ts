import { describe, expect, test } from 'vitest';
import { fizzOf, tightLidOf } from '../../src/formula/fizz';
import {
  describeFizz,
  describeTightLid,
  explainFizz,
  explainVerdict,
  writePlace,
  writeVerdict,
  writeVolumes,
} from '../../src/formula/fizz-words';
import { formulate } from '../../src/formula/formulate';
import type { Recipe } from '../../src/formula/recipe';
import type { Kitchen } from '../../src/formula/write-row';
import { usualScoopSet } from '../../src/measure/scoops';
import { recipeOf, typed } from '../batches';

const metric: Kitchen = { leads: 'metric', cups: 'us', scoops: usualScoopSet, decimalComma: false };
const fizz = (...given: Recipe['given']) => fizzOf(formulate(recipeOf({ given }))) ?? expect.fail('there is no bottle');
const spaced = (text: string) => text.replaceAll('\u00A0', ' ');
const said = (...given: Recipe['given']): string => {
  const found = fizz(...given);
  return spaced(`${writeVerdict(found)}. ${explainVerdict(found, metric)}`);
};

describe('the verdict in words', () => {
  test('says first what it is, then by how much', () => {
    expect(said()).toMatch(/^No limit typed\. Ordinary jars and bottles have no rating\./);
    expect(said(typed('bottleLimit', 6))).toBe(
      'Could go over. Forgotten, it can reach 14.24 bar (206.6 psi); its maker allows 6.00 bar (87.0 psi).',
    );
    const weak = [typed('startingSugar', 10)];
    expect(said(...weak, typed('bottleLimit', 5.3))).toMatch(/^Close\. .+too near to count on: .+up to 0\.4\d bar/);
    expect(said(...weak, typed('bottleLimit', 8))).toMatch(
      /^Holds\. Even forgotten it stays under 8\.00 bar .+: 5\.\d\d bar/,
    );
    expect(said(typed('bottleLimit', 16))).toMatch(/^Can’t be told\. .+some 14\.24 bar .+Over 10\.00 bar .+only rough/);
  });

  test('leads with psi where US measure does', () => {
    expect(
      spaced(explainVerdict(fizz(typed('bottleLimit', 6)), { ...metric, leads: 'us', decimalComma: true })),
    ).toMatch(/206,6 psi \(14,24 bar\); its maker allows 87,0 psi \(6,00 bar\)/);
  });
});

test('the drawing has a twin in words', () => {
  expect(spaced(describeFizz(fizz(), metric))).toBe(
    'Pressure of a sealed bottle: likely 0.82 bar (11.9 psi); if forgotten up to 14.24 bar (206.6 psi); no limit typed.',
  );
  expect(describeFizz(fizz(typed('bottleTemperature', 34)), metric)).toContain('likely: can’t be told');
});

test('a place has its temperature both ways, volumes one decimal', () => {
  const [cold] = fizz().warming;
  expect(cold === undefined ? '' : spaced(writePlace(cold, metric))).toBe('In the fridge, 4 °C (39 °F)');
  expect(writeVolumes(2.345, metric)).toBe('2.3 volumes');
});

test('what is left out is named with its size', () => {
  expect(spaced(explainFizz(fizz(), metric))).toMatch(/no gas is ideal are left out, up to 1\.52 bar/);
});

describe('a tight lid', () => {
  const words = (...given: Recipe['given']) => {
    const lid = tightLidOf(formulate(recipeOf({ given }))) ?? expect.fail('there is no jar');
    return spaced(describeTightLid(lid, metric));
  };

  test('has both figures and the caution', () => {
    expect(words()).toMatch(
      /tight in the first ferment: likely 1\.06 bar .+ready, forgotten up to 8\.98 bar .+no pressure rating: loosen the lid\.$/,
    );
  });

  test('of a jar too full says so, and without a time only the bound', () => {
    expect(words(typed('headspaceVolume', 20))).toMatch(/the liquid alone can burst it/);
    expect(words(typed('roomTemperature', 34))).toMatch(/first ferment: forgotten up to/);
  });
});
