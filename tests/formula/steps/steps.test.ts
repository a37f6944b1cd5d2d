import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import type { NumericRowId } from '../../../src/formula/recipe/order';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import { type Step, type StepId, stepOrder, stepsOf } from '../../../src/formula/steps/steps';
import type { Kitchen } from '../../../src/formula/words/write-row';
import { usualScoopSet } from '../../../src/measure/scoops';
import { notesOf as ownNotesOf } from '../../../src/reference/source-notes';
import { sources } from '../../../src/reference/sources';
import { anyRecipe, grainIds, bottledRecipe as recipeOf, sourceIds, typed } from '../../batches';

const mark = (row: NumericRowId): string => `<${row}>`;

function stepsFor(changes: Partial<Recipe>, kitchen?: Kitchen): readonly Step[] {
  return stepsOf(formulate(recipeOf(changes)), mark, kitchen);
}

function idsFor(changes: Partial<Recipe>): readonly StepId[] {
  return stepsFor(changes).map(({ id }) => id);
}

function textOf(id: StepId, changes: Partial<Recipe>): string {
  const text = stepsFor(changes).find((step) => step.id === id)?.text ?? 'no such step';
  return text.replaceAll('\u00A0', ' ');
}

function notesOf(id: StepId, changes: Partial<Recipe>): readonly string[] {
  return stepsFor(changes)
    .filter((step) => step.id === id)
    .flatMap(({ notes }) => notes.map(({ text }) => text));
}

function allText(steps: readonly Step[]): string {
  return steps
    .flatMap(({ title, text, perJar, notes }) => [title, text, perJar ?? '', ...notes.map((note) => note.text)])
    .join('\n');
}

const everyBatch = sourceIds.flatMap((source) => grainIds.map((grains) => ({ source, grains })));

describe.each(everyBatch)('steps of $source with $grains grains', (changes) => {
  const steps = stepsFor(changes);
  const { form, passing } = sources[changes.source];

  test('stand in the order of the work, each once', () => {
    const ids = steps.map(({ id }) => id);
    expect(ids).toEqual(stepOrder.filter((id) => ids.includes(id)));
    expect(ids).toEqual(
      expect.arrayContaining(['choose', 'blend', 'sweeten', 'culture', 'cover', 'wait', 'lift', 'bottle', 'keep']),
    );
  });

  test('hold the amounts', () => {
    const text = allText(steps);
    const rows = ['sourceMass', 'milkVolume', 'grainMass', 'fillVolume', 'headspaceDepth', 'drinkVolume'];
    const solid = form === 'solid' ? ['blendWater', ...(passing.value < 1 ? ['pulpMass'] : [])] : [];
    for (const row of [...rows, ...solid]) expect(text).toContain(`<${row}>`);
  });

  test('are clean sentences under short titles', () => {
    expect(allText(steps)).not.toMatch(/undefined|NaN|null| {2}/);
    for (const { title, text } of steps) {
      expect(title.split(' ').length).toBeLessThanOrEqual(3);
      expect(text).toMatch(/^[A-Z0-9<].+\.$/);
      // The dash is what a number that is none is written as.
      expect(text).not.toContain('–');
    }
  });

  test('leave none of the source’s own notes out, and none twice', () => {
    const noted = steps.flatMap(({ notes }) => notes.map(({ text }) => text));
    expect(noted).toEqual(expect.arrayContaining(ownNotesOf(changes.source, changes.grains).map(({ text }) => text)));
    expect(new Set(noted).size).toBe(noted.length);
  });
});

test('steps of any recipe at all can be written', () => {
  fc.assert(
    fc.property(anyRecipe, (recipe) => {
      const steps = stepsOf(formulate(recipe), mark);
      expect(allText(steps)).not.toMatch(/undefined|NaN|null| {2}/);
    }),
  );
});

test('an amount is asked for only where the sheet has one', () => {
  fc.assert(
    fc.property(anyRecipe, (recipe) => {
      const formulation = formulate(recipe);
      stepsOf(formulation, (row) => {
        expect(formulation.rows[row].value).not.toBeNull();
        return mark(row);
      });
    }),
  );
});

test('an amount that can’t be worked out names the row to mend', () => {
  const text = textOf('blend', { given: [typed('headspaceDepth', 100)] });
  expect(text).toContain(': the amount the sheet gives once “Headspace” is mended.');
});

describe('almonds', () => {
  test('soak cold, then drain', () => {
    expect(textOf('soak', {})).toMatch(/<soakWater>.+in the refrigerator for <soakTime>/);
    expect(notesOf('soak', {})).toEqual([expect.stringContaining('8 h at most')]);
    expect(textOf('drain', {})).toContain('Expected weight: <soakedMass>.');
  });

  test('are blended with cool water for minutes, in a load', () => {
    expect(textOf('blend', {})).toBe(
      'Blend the soaked almonds with cool water, about 18 °C (64 °F): <blendWater>. About 2 min, in one load.',
    );
  });

  test('are blended in several loads where the blender is small', () => {
    expect(textOf('blend', { given: [typed('milkVolume', 3000)] })).toContain(
      'About 2 min each, in <blenderLoads> equal loads.',
    );
  });

  test('need no cooling', () => {
    expect(idsFor({})).not.toContain('cool');
  });

  test('show what was measured as measured', () => {
    const measured = { milkVolume: { kind: 'volume', amount: 600 } } as const;
    expect(textOf('strain', { measured })).toContain('Measured milk: <milkVolume>.');
    expect(textOf('strain', {})).toContain('Expected milk: <milkVolume>.');
  });
});

describe.each(['flax', 'chia'] as const)('%s', (source) => {
  test('is not soaked, is blended briefly in cool water and strained at once', () => {
    expect(idsFor({ source })).not.toContain('soak');
    expect(textOf('blend', { source })).toMatch(/cool water, about 15 °C \(59 °F\).+About 45 s \(60 s at most\)/);
    expect(textOf('strain', { source })).toContain('Strain it at once');
  });
});

describe('dried coconut', () => {
  const source = 'coconutDried';

  test('steeps in its warm blending water, which is not drained', () => {
    expect(textOf('soak', { source })).toBe(
      'Cover the dried coconut with warm water, about 45 °C (113 °F): <blendWater>. Leave it for <soakTime>.',
    );
    expect(notesOf('soak', { source })).toEqual([expect.stringContaining('wait ten minutes')]);
    expect(idsFor({ source })).not.toContain('drain');
  });

  test('counts its water once', () => {
    expect(allText(stepsFor({ source })).match(/<blendWater>/g)).toHaveLength(1);
  });

  test('cools before the grains go in', () => {
    expect(textOf('cool', { source })).toBe('Cool the milk to 30 °C (86 °F) or less before the grains go in.');
  });
});

test('canned coconut milk is stirred and let down, neither soaked nor strained', () => {
  const source = 'coconutMilk';
  expect(textOf('blend', { source })).toMatch(/^Stir the canned.+Let it down with water: <blendWater>\./);
  expect(idsFor({ source })).not.toContain('soak');
  expect(idsFor({ source })).not.toContain('strain');
  expect(textOf('choose', { source })).toContain('A can holds about 400 mL');
});

test('canned coconut milk used neat is not let down', () => {
  const given = [typed('waterRatio', 0)];
  expect(textOf('blend', { source: 'coconutMilk', given })).not.toContain('Let it down');
});

test.each(['cartonPlain', 'cartonSweetened', 'coconutWater'] as const)('%s is poured as it is', (source) => {
  expect(idsFor({ source }).slice(0, 2)).toEqual(['choose', 'blend']);
  expect(textOf('blend', { source })).toMatch(/^Shake the .+ and pour it into a jug\. Expected milk: <milkVolume>\.$/);
});

test('only a carton may wait for days', () => {
  const howTo = expect.stringContaining('clean spoon');
  const [hours, days] = [expect.stringContaining('12 to 72 h'), expect.stringContaining('Waiting for days')];
  expect(notesOf('wait', { source: 'cartonPlain' })).toEqual([hours, days, howTo]);
  const neat = { source: 'coconutMilk', given: [typed('waterRatio', 0)] } as const;
  expect(notesOf('wait', neat)).toEqual([days, howTo]);
  expect(textOf('wait', neat)).not.toContain('pH 4.6');
  expect(notesOf('wait', { source: 'coconutMilk' })).toEqual([howTo]);
  expect(textOf('wait', { source: 'coconutMilk' })).toContain('pH 4.6 or less by strip or meter within 24 h');
  expect(textOf('wait', { source: 'cartonPlain' })).not.toContain('pH 4.6');
});

describe('fresh coconut', () => {
  const source = 'coconutFresh';

  test('takes its own water first', () => {
    expect(textOf('blend', { source })).toMatch(
      /with its own water, about \d+ mL, then cool water, about 15 °C \(59 °F\): <blendWater>\./,
    );
  });

  test('takes no other water where its own is enough', () => {
    const given = [typed('waterRatio', 0.4)];
    expect(textOf('blend', { source, given })).toMatch(/with its own water, about \d+ mL, and no other\./);
  });
});

describe('grains', () => {
  test('of milk are rinsed of dairy, float, and warn of milk protein', () => {
    expect(textOf('culture', { grains: 'milk' })).toMatch(/^Rinse the dairy milk off.+<grainMass>.+float/);
    expect(notesOf('culture', { grains: 'milk' })).toEqual([expect.stringContaining('milk protein')]);
  });

  test('of water are not rinsed of dairy, and sink', () => {
    expect(textOf('culture', { grains: 'water' })).toBe('Drain the grains and add <grainMass>. Water grains sink.');
  });
});

describe('a heat step', () => {
  const at = { temperature: 85, minutes: 5 };
  const noClaim = 'No time and temperature is claimed safe here.';

  test('of the milk comes after straining and before cooling', () => {
    const changes = { heat: { what: 'milk', ...at } } as const;
    expect(idsFor(changes)).toEqual(
      expect.arrayContaining(['strain', 'heatMilk', 'sweeten', 'cool', 'culture'] satisfies StepId[]),
    );
    expect(textOf('heatMilk', changes)).toBe(`Heat the milk to 85 °C (185 °F) and keep it there for 5 min. ${noClaim}`);
  });

  test('of a drained source is a blanch before blending', () => {
    const changes = { heat: { what: 'source', ...at } } as const;
    expect(idsFor(changes).slice(0, 5)).toEqual(['choose', 'soak', 'drain', 'heatSource', 'blend']);
    expect(textOf('heatSource', changes)).toMatch(/^Put the almonds in water at 85 °C \(185 °F\) for 5 min\./);
    expect(textOf('heatSource', changes)).toContain(noClaim);
    expect(idsFor(changes)).toContain('cool');
  });

  test.each(['hemp', 'coconutDried', 'coconutFresh'] as const)('of %s keeps the blending water, once', (source) => {
    const changes = { source, heat: { what: 'source', ...at } } as const;
    expect(textOf('heatSource', changes)).toContain('pour nothing away');
    expect(allText(stepsFor(changes)).match(/<blendWater>/g)).toHaveLength(1);
  });

  test('that is not asked for is not there', () => {
    expect(idsFor({ heat: null })).not.toContain('heatMilk');
    expect(idsFor({ heat: null })).not.toContain('heatSource');
  });
});

describe('sweetening', () => {
  test('names each part of a blend with its own amount', () => {
    const sweetener = [
      { id: 'mapleSyrup', share: 0.5 },
      { id: 'caneWhite', share: 0.5 },
    ] as const;
    const text = textOf('sweeten', { sweetener, given: [typed('sweetenerMass', 40)] });
    expect(text).toMatch(/^Maple syrup: 20 g \(0\.71 oz\)\. Cane sugar, white: 20 g \(0\.71 oz\)\./);
  });

  test('with dates happens in the blender', () => {
    const changes = { sweetener: [{ id: 'dates', share: 1 }] } as const;
    expect(idsFor(changes)).not.toContain('sweeten');
    expect(textOf('blend', changes)).toContain('Dates, medjool, blended in: <sweetenerMass>.');
    expect(notesOf('blend', changes)).toEqual([expect.stringContaining('before straining')]);
  });

  test('is left out with no sweetener, with one the grains can’t use, and where the source is sweet enough', () => {
    expect(textOf('sweeten', { sweetener: [{ id: 'none', share: 1 }] })).toMatch(/^None is chosen/);
    expect(textOf('sweeten', { sweetener: [{ id: 'stevia', share: 1 }] })).toMatch(/^Stevia does not feed the grains/);
    expect(textOf('sweeten', { source: 'coconutDriedSweetened' })).toBe('This batch needs none.');
  });
});

describe('several jars', () => {
  const given = [typed('vesselCount', 2), typed('grainMass', 60)];
  const find = (id: StepId, kitchen?: Kitchen) => stepsFor({ given }, kitchen).find((step) => step.id === id);

  test('say how much goes in each', () => {
    expect(find('culture')?.perJar?.replaceAll('\u00A0', ' ')).toBe('Grains for each jar: 30 g (1.1 oz).');
    expect(find('cover')?.text).toContain('<vesselCount> jars (Quart, wide mouth)');
    expect(find('cover')?.perJar).toBe('Milk and grains in each jar: <fillVolume>.');
  });

  test('are written as the kitchen reads where it is known', () => {
    const kitchen = { leads: 'us', cups: 'us', scoops: usualScoopSet, decimalComma: true } as const;
    expect(find('culture', kitchen)?.perJar?.replaceAll('\u00A0', ' ')).toMatch(/tbsp.+1,1 oz \(30 g\)\.$/);
  });

  test('are not spoken of where there is one', () => {
    expect(stepsFor({}).every(({ perJar }) => perJar === undefined)).toBe(true);
  });
});

test('the acidity to reach is written as the kitchen writes decimals', () => {
  const kitchen = { leads: 'metric', cups: 'us', scoops: usualScoopSet, decimalComma: true } as const;
  const steps = stepsOf(formulate(recipeOf({ given: [typed('bottleTime', 12)] })), (row) => `<${row}>`, kitchen);
  const text = (id: string) => steps.find((step) => step.id === id)?.text ?? '';
  expect(text('bottle')).toContain('Only at pH 4,6 or less, by strip or meter.');
  expect(text('wait')).toContain('pH 4,6 or less by strip or meter');
});

test('the wait is the range of hours of this batch, as an estimate, under a cover that lets gas out', () => {
  expect(textOf('wait', {})).toBe(
    'Leave it at <roomTemperature> and taste it from 8 h on. Likely ready after <readyTime>, perhaps only after 16 h: an estimate, not a promise. Ready, it is tart and fresh, smells a little of yeast, and has thickened or parted: a head over a clear layer is normal, stir it in. Measure its pH when you first taste it, by 12 h at the latest (expect pH 4.9 to 5.9): at pH 5.0 or less and falling, let it go on. pH 4.6 or less by strip or meter within 24 h, or throw it out. No strips or meter? Buy some first: without them nobody can tell.',
  );
  const warm = textOf('wait', { given: [typed('roomTemperature', 26)] });
  expect(warm).toMatch(/taste it from [4-6](\.\d)? h on/);
  expect(warm).toContain(
    'Still falling after 13 h, it may stand until 20 h, no longer. pH 4.6 or less by strip or meter within 20 h',
  );
  expect(textOf('wait', { source: 'tigerNut' })).toContain('by 12 h at the latest: at pH 5.0 or less');
  expect(textOf('wait', { source: 'cartonPlain' })).not.toContain('Measure its pH');
  expect(textOf('cover', {})).toMatch(/cloth, an airlock, or a lid that is not tightened/);
});

test('the grains end in their resting jar', () => {
  expect(textOf('lift', {})).toMatch(
    /^Only at pH 4\.6 or less, by strip or meter\. Strain.+Expected kefir: <drinkVolume>\..+resting jar/,
  );
});

test('what grains grow to in this milk, and never to mix them, stands under more where they are lifted', () => {
  const notesAt = (changes: Partial<Recipe>) => {
    const lift = stepsFor(changes).find(({ id }) => id === 'lift') ?? expect.fail('no lift');
    return lift.notes.map(({ text }) => text).join(' ');
  };
  expect(notesAt({})).toMatch(/grow little in this milk.+Never put water grains and milk grains together/);
  expect(notesAt({ source: 'coconutMilk' })).toContain('Grains grow well in coconut.');
  expect(notesAt({ source: 'soy', grains: 'milk' })).toContain('about 18 % a batch');
});

test('a wait that no model tells names the room to mend', () => {
  const text = textOf('wait', { given: [typed('roomTemperature', 12)] });
  expect(text).toMatch(/^Leave it at <roomTemperature>\. How long can’t be told: see “Ready to taste after”\./);
});

describe('bottles', () => {
  test('are filled, left, chilled and kept, in that order', () => {
    expect(idsFor({}).slice(-5)).toEqual(['lift', 'bottle', 'second', 'chill', 'keep']);
  });

  test('are as many as it takes, with room left, and nothing is said of sugar where none is added', () => {
    expect(textOf('bottle', {})).toBe(
      'Only at pH 4.6 or less, by strip or meter. Clean bottles made for fizz, of <bottleVolume> to the rim: <bottleCount>. Leave this much empty in each: <bottleHeadspace>. One that comes out less full is no harm. Close them.',
    );
  });

  test('take sugar as so much cane sugar each', () => {
    // 475 mL at 10 g/L are 4.75 g of hexose; 1.0505 g of it to a gram of sugar: 4.52 g.
    const given = [typed('bottleSugar', 10)];
    expect(textOf('bottle', { given })).toContain('<bottleSugar>. As white cane sugar that is 4.5 g (0.16 oz) in each');
  });

  test('say what builds up, and how to look after them', () => {
    expect(textOf('second', {})).toMatch(
      /<bottleTime> at <bottleTemperature>\. .+<bottlePressureLikely>\..+<bottlePressureForgotten>\. Check before/,
    );
    expect(textOf('second', { given: [typed('bottleTemperature', 34)] })).not.toContain('Likely pressure');
  });

  test('are opened cold', () => {
    expect(textOf('chill', {})).toMatch(/for about 4 h before you open any\. Open each cold: in a towel, slowly/);
  });

  test('come with their cautions', () => {
    expect(notesOf('bottle', {})).toEqual([
      expect.stringContaining('can burst'),
      expect.stringContaining('Bottle only kefir that has passed'),
    ]);
  });

  test('are not spoken of where there is no second ferment', () => {
    const given = [typed('bottleTime', 0)];
    expect(idsFor({ given }).slice(-2)).toEqual(['lift', 'keep']);
    expect(allText(stepsFor({ given }))).not.toMatch(/bottles/);
  });
});

test('it keeps for the days of its source, as a range', () => {
  expect(textOf('keep', {})).toBe(
    'Keep it in the refrigerator, at 5 °C (41 °F) or less. Usual, counted from straining: <keepDays>. Kitchens differ: 6 to 8 days.',
  );
  expect(textOf('keep', { source: 'coconutMilk' })).toContain('7 to 10 days');
  expect(notesOf('keep', {})).toEqual([
    expect.stringContaining('mould'),
    expect.stringContaining('Out of the refrigerator'),
  ]);
});
