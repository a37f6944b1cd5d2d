import { describe, expect, it } from 'vitest';
import { cautions } from '../../src/reference/cautions';

describe('cautions', () => {
  it('have unique ids and texts', () => {
    expect(new Set(cautions.map(({ id }) => id)).size).toBe(cautions.length);
    expect(new Set(cautions.map(({ text }) => text)).size).toBe(cautions.length);
  });

  it('are whole sentences', () => {
    for (const { id, text } of cautions) expect(text, id).toMatch(/^[A-Z].+\.$/);
  });

  it.each([
    ['soakCold', 'soakTime', /8 h at most/],
    ['coolBeforeGrains', 'blendWater', /30 °C/],
    ['acidityLine', 'finalPH', /4\.6.+24 h.+Taste is no test/],
    ['honeyInfants', 'sweetener', /under 12 months/],
    ['milkProtein', 'grains', /milk protein/],
    ['jarsUnrated', 'vessel', /rated for no pressure/],
    ['howToTest', 'finalPH', /clean spoon.+no strip and no meter in the jar/],
    ['readyIsARange', 'readyTime', /moves the times and never a line of safety/],
    ['passedOnly', 'bottleTime', /pH 4\.6 or less/],
    ['openBottles', 'bottleTime', /Chill.+towel.+away from your face.+slowly/],
    ['forgottenBottles', 'bottlePressureForgotten', /towel.+open it only cold/],
    ['limitMeans', 'bottleLimit', /test pressure.+no working pressure.+scuffed/],
    ['timeOut', 'keepDays', /Put it back soon/],
    ['throwOut', 'keepDays', /mould, pink or slim/],
    ['higherRisk', 'foot', /pregnant/],
    ['notKefirByName', 'foot', /plant-milk kefir/],
  ])('say %s at %s', (id, at, words) => {
    const found = cautions.find((caution) => caution.id === id);
    expect(found?.at).toBe(at);
    expect(found?.text).toMatch(words);
  });
});
