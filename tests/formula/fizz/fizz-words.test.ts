import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import { fizzOf, tightLidOf } from '../../../src/formula/fizz/fizz';
import {
  adviseFizz,
  describeFizz,
  describePlanned,
  describeTightLid,
  explainFizz,
  explainVerdict,
  writePlace,
  writePressure,
  writeVerdict,
  writeVolumes,
} from '../../../src/formula/fizz/fizz-words';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import type { Kitchen } from '../../../src/formula/words/write-row';
import { usualScoopSet } from '../../../src/measure/scoops';
import { tightBag as recipeOf, typed } from '../../batches';

const metric: Kitchen = { leads: 'metric', cups: 'us', scoops: usualScoopSet, decimalComma: false };
const fizz = (...given: Recipe['given']) => fizzOf(formulate(recipeOf({ given }))) ?? expect.fail('there is no bottle');
const spaced = (text: string) => text.replaceAll('\u00A0', ' ');
const said = (...given: Recipe['given']): string => {
  const found = fizz(...given);
  return spaced(`${writeVerdict(found)}. ${explainVerdict(found, metric)}`);
};

describe('the verdict in words', () => {
  test('says first what it is, then by how much', () => {
    expect(said()).toMatch(
      /^Bottles made for fizz only\. Ordinary jars and bottles are rated for no pressure: count on none\. Chill it in time\.$/,
    );
    expect(said(typed('bottleLimit', 6))).toBe(
      'Could go over. Forgotten, it can reach some 14 bar (207 psi); its maker allows 6.0 bar (87 psi).',
    );
    const weak = [typed('startingSugar', 10)];
    expect(said(...weak, typed('bottleLimit', 5.3))).toMatch(/^Close\. .+too near to count on: .+up to 0\.\d bar/);
    expect(said(...weak, typed('bottleLimit', 8))).toMatch(
      /^Holds\. Even forgotten it stays under 8\.0 bar .+: some 5\.\d bar .+ what these sums leave out adds up to 0\.\d bar/,
    );
    expect(said(typed('bottleLimit', 16))).toMatch(
      /^Can’t be told\. .+some 14 bar .+Over 10 bar .+only rough\. Don’t count on the bottle\.$/,
    );
  });

  test('leads with psi where US measure does', () => {
    expect(
      spaced(explainVerdict(fizz(typed('bottleLimit', 6)), { ...metric, leads: 'us', decimalComma: true })),
    ).toMatch(/207 psi \(14 bar\); its maker allows 87 psi \(6,0 bar\)/);
  });
});

test('what to do comes first: chill in time, open cold, use less sugar', () => {
  const advice = (...given: Recipe['given']) => adviseFizz(formulate(recipeOf({ given })), metric).map(spaced);
  expect(advice()).toEqual([
    'Chill them after 8 h, sooner if one gets hard or fizzy. Leave none in the warmth.',
    'Open each cold, over the sink, in a towel, away from your face.',
    'For less pressure use less sugar, in the jar and in the bottle.',
  ]);
  expect(advice(typed('bottleTime', null))[0]).toBe('Chill them if one gets hard or fizzy. Leave none in the warmth.');
});

test('warmth beyond the sums is named', () => {
  const warm = {
    ...recipeOf({ given: [typed('bottleLimit', 9), typed('bottleTemperature', 35)] }),
    measured: { sugarLeft: { kind: 'concentration', amount: 8 } },
  } as const;
  const found = fizzOf(formulate(warm)) ?? expect.fail('there is no bottle');
  expect(spaced(explainVerdict(found, metric))).toMatch(/Over 30 °C \(86 °F\) more is left out than these sums know/);
});

test('the drawing has a twin in words', () => {
  // The cook's own figures leave only what the first ferment used to be estimated.
  expect(spaced(describeFizz(fizz(), metric))).toMatch(
    /^Pressure of a sealed bottle: after 8 h likely 0\.8 bar \(12 psi\), from 0\.\d bar to 0\.\d bar; left 12 h longer likely 1\.\d bar .+; left a week longer likely .+; 2\.0 bar \(29 psi\): beyond it trust no bottle but one made for fizz\.$/,
  );
  expect(describeFizz(fizz(typed('bottleTemperature', 34)), metric)).toContain('likely: can’t be told');
});

test('a place has its temperature both ways, volumes one decimal', () => {
  const [cold] = fizz().warming;
  expect(cold === undefined ? '' : spaced(writePlace(cold, metric))).toBe('In the fridge, 4 °C (39 °F)');
  expect(writeVolumes(2.345, metric)).toBe('2.3 volumes');
});

test('what is left out is named with its size', () => {
  expect(spaced(explainFizz(fizz(), metric))).toMatch(
    /is no upper bound either: .+no gas is ideal are left out, and can add up to 1\.6 bar/,
  );
});

describe('a tight lid', () => {
  const words = (...given: Recipe['given']) => {
    const lid = tightLidOf(formulate(recipeOf({ given }))) ?? expect.fail('there is no jar');
    return spaced(describeTightLid(lid, metric));
  };

  test('has both figures and the caution', () => {
    expect(words()).toMatch(
      /tight in the first ferment: likely 1\.1 bar .+ready, forgotten some 9\.0 bar .+no pressure rating: loosen the lid\.$/,
    );
  });

  test('of a jar too full says so, and without a time only the bound', () => {
    expect(words(typed('headspaceVolume', 20))).toMatch(/the liquid alone can burst it/);
    expect(words(typed('roomTemperature', 34))).toMatch(/first ferment: forgotten some/);
  });
});

test('other hours by the plan are told with their pressure, and nothing where they are the same', () => {
  const formulation = formulate(recipeOf());
  const told = (hours: number | null) => describePlanned(formulation, hours, metric);
  expect(told(null)).toBeNull();
  expect(told(8)).toBeNull();
  const at = formulate(recipeOf({ given: [typed('bottleTime', 10)] })).rows.bottlePressureLikely.value;
  expect(typeof at === 'number' && at > 0.82).toBe(true);
  expect(spaced(told(10) ?? '')).toBe(
    `Your plan lets them stand for 10 h instead: likely ${spaced(writePressure(Number(at), metric))} by then.`,
  );
});
