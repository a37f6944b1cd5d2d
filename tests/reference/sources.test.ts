import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { keysOf } from '../../src/batch/document/table-keys';
import { allergens } from '../../src/reference/allergens';
import { foods } from '../../src/reference/foods';
import { notesOf } from '../../src/reference/source-notes';
import { sources } from '../../src/reference/sources';

const entries = Object.entries(sources);
const every = fc.constantFrom(...entries);

describe('sources', () => {
  it('are more than 20, with unique names', () => {
    expect(entries.length).toBeGreaterThanOrEqual(20);
    expect(new Set(entries.map(([, { name }]) => name)).size).toBe(entries.length);
  });

  it('take the composition of the record they name, nothing missing turned to zero', () => {
    for (const [id, { food, composition }] of entries) {
      // Soy’s own sugars were not analysed: see its origin.
      if (food === null || id === 'soy') continue;
      const { origin, sugarsEstimate, ...parts } = composition;
      expect(foods[food], id).toMatchObject(parts);
      expect(origin.kind).toBe('published');
      expect(sugarsEstimate?.kind, id).toBe(composition.sugars === null ? 'judgement' : undefined);
    }
    expect(sources.chia.composition.sugars).toBeNull();
    expect(sources.coconutMilk.composition.fibre).toBeNull();
  });

  it('have a record or a label, never both', () => {
    for (const [id, { food, label, family }] of entries) {
      expect(food === null, id).toBe(family === 'carton' || id === 'tigerNut' || id === 'own');
      expect(label === null, id).toBe(family !== 'carton');
    }
  });

  it('have a label whose sugar agrees with the composition of the carton', () => {
    for (const { label, composition } of [sources.cartonPlain, sources.cartonSweetened]) {
      const per100 = ((label?.sugarPerServing.value ?? Number.NaN) / (label?.serving.value ?? Number.NaN)) * 100;
      expect(Math.abs(per100 - (composition.sugars ?? Number.NaN))).toBeLessThan(0.1);
    }
  });

  it('have a cup of a plausible density', () => {
    for (const [id, { cup }] of entries) {
      if (cup === null) continue;
      expect(cup.grams / cup.millilitres, id).toBeGreaterThan(0.3);
      expect(cup.grams / cup.millilitres, id).toBeLessThan(1.1);
    }
  });

  it('leave the pulp drier than the slurry at the usual ratio, or nothing passes the bag', () => {
    fc.assert(
      fc.property(every, ([, { composition, uptake, waterRatio, passing, pulpMoisture }]) => {
        const water = composition.water / 100 + uptake.value + waterRatio.value;
        const kept = (pulpMoisture.value / (1 - pulpMoisture.value)) * (1 - passing.value);
        expect(kept * (1 - composition.water / 100)).toBeLessThan(water);
      }),
      { numRuns: 300 },
    );
  });

  it('soak for the midpoint of their range, and leach only where soaking water is poured away', () => {
    for (const [id, { soak, leaching }] of entries) {
      if (soak) {
        const { value, low = Number.NaN, high = Number.NaN } = soak.hours;
        expect(value, id).toBeCloseTo((low + high) / 2, 12);
      }
      expect(leaching.high !== undefined, id).toBe(soak?.drained === true);
      expect(leaching.value, id).toBe(0);
    }
  });

  it('take up water only when soaked and drained', () => {
    for (const [id, { soak, uptake }] of entries) expect(uptake.value > 0, id).toBe(soak?.drained === true);
  });

  it('take the published uptake where there is one', () => {
    expect(sources.almond.uptake).toMatchObject({ value: 0.593, origin: { work: 'almond-soak-2020' } });
    expect(sources.walnut.uptake).toMatchObject({ value: 0.371, origin: { work: 'walnut-soak' } });
  });

  it('own that the uptake of peanuts is read into the moistures of a study', () => {
    expect(sources.peanut.uptake).toMatchObject({ value: 0.439, origin: { kind: 'judgement' } });
  });

  it('pour liquids without pulp, loss or blender', () => {
    for (const [id, source] of entries.filter(([, { form }]) => form === 'liquid')) {
      expect(source, id).toMatchObject({ soak: null, blendSeconds: null, blendWater: null });
      expect([source.passing.value, source.pulpMoisture.value, source.handlingLoss.value], id).toEqual([1, 0, 0]);
    }
  });

  it('have a blender time and blending water for every solid', () => {
    for (const [id, source] of entries.filter(([, { form }]) => form === 'solid')) {
      expect(source.blendSeconds?.value ?? 0, id).toBeGreaterThan(0);
      expect(source.blendWater, id).not.toBeNull();
    }
  });

  it('gel only as flax, chia and oats do, in cool water and briefly', () => {
    expect(entries.filter(([, { gels }]) => gels).map(([id]) => id)).toEqual(['flax', 'chia', 'oats']);
    for (const { blendWater, blendSeconds } of [sources.flax, sources.chia, sources.oats]) {
      expect(blendWater?.words).toBe('cool');
      expect(blendSeconds?.value).toBeLessThan(60);
    }
  });

  it('count the water of a fresh coconut only there: 206 g to 397 g of flesh', () => {
    expect(entries.filter(([, { ownWater }]) => ownWater).map(([id]) => id)).toEqual([
      'coconutFresh',
      'coconutFreshWhole',
    ]);
    expect(sources.coconutFresh.ownWater?.perGram.value).toBeCloseTo(206 / 397, 3);
    expect(sources.coconutFresh.ownWater?.composition.water).toBe(94.99);
  });

  it('name their allergens: every nut one of both lists, coconut on neither', () => {
    for (const [id, { family, allergens: named }] of entries) {
      if (family !== 'nut' && family !== 'legume') continue;
      expect(named, id).toHaveLength(1);
      for (const allergen of named) expect(allergens[allergen], id).toMatchObject({ us: true, eu: id !== 'pineNut' });
    }
    expect(sources.sesameHulled.allergens).toEqual(['sesame']);
    expect(sources.coconutMilk.allergens).toEqual(['coconut']);
    expect(allergens.coconut).toMatchObject({ us: false, eu: false });
  });

  it('cook what is not eaten raw', () => {
    expect(entries.flatMap(([id, { cook }]) => (cook ? [`${id} ${cook.what}`] : []))).toEqual([
      'peanut milk',
      'soy milk',
      'rice source',
    ]);
  });

  it('say their dangers as cautions', () => {
    const cautioned = keysOf(sources).filter((id) => notesOf(id, 'water').some(({ caution }) => caution));
    expect(cautioned).toEqual(
      expect.arrayContaining(['almond', 'almondBlanched', 'flax', 'soy', 'rice', 'cartonPlain']),
    );
  });
});

test('each water ratio is what the amounts beside it divide to, to what a kitchen measures', () => {
  for (const [id, { waterRatio, form }] of entries) {
    const { origin, value } = waterRatio;
    if (value === 0) continue;
    const note = origin.kind === 'common practice' ? (origin.note ?? '') : `${id} is ${origin.kind}`;
    const [grams, millilitres] = [/([\d.]+) g\b/.exec(note)?.[1], [...note.matchAll(/([\d.]+) mL/g)].at(0)?.[1]];
    if (/two cans of water/.test(note)) continue;
    const own = /(\d+) g of water/.exec(note)?.[1] ?? '0';
    const share = (Number(millilitres) + Number(own)) / Number(grams) / value;
    expect(Math.abs(share - 1), `${id}, ${form}: ${note}`).toBeLessThan(0.025);
  }
});
