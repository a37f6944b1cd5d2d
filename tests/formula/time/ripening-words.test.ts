import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { formulate } from '../../../src/formula/engine/formulate';
import { ripeningAgainstRoom } from '../../../src/formula/time/ripening-chart';
import { describeChart, describeReady, ripeningLines } from '../../../src/formula/time/ripening-words';
import { recipeOf, typed } from '../../batches';

const kitchen = demo.settings;
const plain = (text: string): string => text.replaceAll('\u00A0', ' ');
const ready = (celsius: number | null, leads: typeof kitchen.leads = 'metric') =>
  plain(describeReady(formulate(recipeOf({ given: [typed('roomTemperature', celsius)] })), { ...kitchen, leads }));

describe('when it is ready', () => {
  test('is said with its room in both units, its range, and that it is an estimate', () => {
    expect(ready(21)).toBe(
      'At 21 °C (70 °F) it is likely ready to taste after 12 h, somewhere in 8–16 h. An estimate: taste from the soonest on.',
    );
    expect(ready(21, 'us')).toMatch(/^At 70 °F \(21 °C\) it is/);
  });

  test('outside the models it is said why not', () => {
    expect(ready(35)).toMatch(/^At 35 °C \(95 °F\) no time can be told: .* 16 °C \(61 °F\) to 30 °C \(86 °F\)/);
  });

  test('with a room that can’t be read it is said what it waits for', () => {
    expect(ready(null)).toBe('Waits for “Room temperature”, which needs mending first.');
  });

  test('without sugar it is said that nothing ripens', () => {
    const recipe = recipeOf({ source: 'cartonPlain', given: [typed('sugarRate', 0)] });
    expect(describeReady(formulate(recipe), kitchen)).toMatch(/nothing ripens/);
  });
});

describe('the chart in words', () => {
  const points = ripeningAgainstRoom(formulate(recipeOf())) ?? [];

  test('says its two ends', () => {
    expect(plain(describeChart(points, kitchen))).toMatch(
      /likely 24\.\d h at 16 °C \(61 °F\), falling to 5\.\d h at 30 °C \(86 °F\)\.$/,
    );
    expect(describeChart([], kitchen)).toBe('');
  });

  test('as a table has a line a degree, the usual room at 8, 12 and 16 h', () => {
    const lines = ripeningLines(points, kitchen);
    expect(lines).toHaveLength(15);
    const usual = lines.find(({ room }) => room.startsWith('21'));
    expect(Object.values(usual ?? {}).map(plain)).toEqual(['21 °C (70 °F)', '8 h', '12 h', '16 h']);
  });
});
