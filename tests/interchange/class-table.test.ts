import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../src/batch/document/demo';
import type { Kitchen } from '../../src/batch/document/document';
import { recipeOf } from '../../src/batch/document/document';
import { cleanName } from '../../src/batch/document/plain-text';
import { kitchenBatch, taughtBy } from '../../src/batch/edits/class-batches';
import { addClass, addKitchens } from '../../src/batch/edits/class-edits';
import { formulate } from '../../src/formula/engine/formulate';
import { writeClassCsv } from '../../src/interchange/class-csv';
import { readKitchens } from '../../src/interchange/class-table';
import { parseTable } from '../../src/interchange/table';
import { grains } from '../../src/reference/grains';
import { jarAliases } from '../../src/reference/jar-aliases';
import { grainAliases } from '../../src/reference/other-aliases';
import { grainIds, jarIds } from '../batches';
import '../seed';

const usual = { vessel: 'quartWide', temperature: null, leads: 'metric', grains: 'water' } as const;
const pasted = { usual, room: 100, decimalComma: false };
const read = (text: string, changes: Partial<typeof pasted> = {}) => readKitchens(text, { ...pasted, ...changes });
const one = (text: string): Kitchen => {
  const { kitchens, left } = read(text);
  expect(left).toEqual([]);
  return kitchens[0] ?? expect.fail('there is no kitchen');
};

describe('a list of kitchens', () => {
  test.each<[string, Kitchen]>([
    [
      'Ana, quart, 24 C, US, milk grains',
      { name: 'Ana', vessel: 'quartWide', temperature: 24, leads: 'us', grains: 'milk' },
    ],
    [
      'Ben\t2 L\t72F\tmetric\twater',
      { name: 'Ben', vessel: 'twoLitre', temperature: expect.closeTo(22.2222, 3), leads: 'metric', grains: 'water' },
    ],
    ['Cleo; half gallon; 19,5 °C; metric', { ...usual, name: 'Cleo', vessel: 'halfGallon', temperature: 19.5 }],
    ['Dee | US | 68', { ...usual, name: 'Dee', leads: 'us', temperature: expect.closeTo(20, 9) }],
    ['Eli, 24,5 C, 1,5 L', { ...usual, name: 'Eli', temperature: 24.5, vessel: 'litreAndHalf' }],
    ['Fay, quart, regular mouth, 1000 mL', { ...usual, name: 'Fay' }],
    ['Gus', { ...usual, name: 'Gus' }],
    [
      'Hal, milk kefir grains, 3 litres, 21',
      { ...usual, name: 'Hal', grains: 'milk', vessel: 'threeLitre', temperature: 21 },
    ],
    [
      'Ida, "Quart, regular mouth", 75 °F',
      { ...usual, name: 'Ida', vessel: 'quartRegular', temperature: expect.closeTo(23.8889, 3) },
    ],
    ['Jo, own jar, as the recipe, cups', { ...usual, name: 'Jo', vessel: 'own', leads: 'us' }],
    ['Kim, ½ gallon, 26 degrees C', { ...usual, name: 'Kim', vessel: 'halfGallon', temperature: 26 }],
    ['Lou,, 20C,', { ...usual, name: 'Lou', temperature: 20 }],
  ])('%s', (text, kitchen) => {
    if (text.startsWith('Fay')) {
      const { kitchens, left } = read(text);
      expect(kitchens).toEqual([]);
      expect(left[0]?.problems).toEqual(['There are two jars here: keep one.']);
    } else expect(one(text)).toEqual(kitchen);
  });

  test('is read by its headings in any order, and passes over what is none of it', () => {
    const text = 'Room (°F)\tCulture\tWho\tE-mail\tJar\n70\tmilk\tAna\ta@b.example\tgallon\n\tWater\tBen\t\t';
    expect(read(text)).toEqual({
      left: [],
      isTooLong: false,
      kitchens: [
        { name: 'Ana', vessel: 'gallon', temperature: expect.closeTo(21.1111, 3), leads: 'metric', grains: 'milk' },
        { ...usual, name: 'Ben' },
      ],
    });
  });

  test('takes a heading of names alone for one, and a name for a name', () => {
    expect(read('Name\nAna\n\nBen\n').kitchens.map(({ name }) => name)).toEqual(['Ana', 'Ben']);
    expect(read('Ana\nBen').kitchens).toHaveLength(2);
  });

  test.each<[string, RegExp]>([
    ['Ana, a bucket', /“a bucket” is no jar, room, unit or culture/],
    ['Ana, 750 mL', /none of the jars here: type quart, litre/],
    ['Ana, kefir grains', /may be either: type water kefir grains or milk kefir grains/],
    ['Ana, 24 C, 75 F', /two temperatures/],
    ['Ana, 90 C', /from -20 to 60 °C/],
    ['Ana, 5', /“5” is no jar/],
    [', quart', /Put a name first/],
    ['Name, Room\nAna, warm', /“warm” is no room temperature: type one such as 24 °C or 75 °F/],
    ['Name, Jar\nAna, a pot', /none of the jars/],
    ['Name, Units\nAna, imperial', /type metric or US/],
    ['Name, Culture\nAna, yoghurt', /no culture here/],
  ])('says of %s what to do, and gives the line back as typed', (text, said) => {
    const { kitchens, left } = read(text);
    expect(kitchens).toEqual([]);
    expect(left).toHaveLength(1);
    expect(left[0]?.problems.join(' ')).toMatch(said);
    expect(text.split('\n').at(-1)?.trim()).toBe(left[0]?.text);
  });

  test('of which one line is not understood gives the others', () => {
    const { kitchens, left } = read('Ana, quart\nBen, a bucket\nCleo, pint');
    expect(kitchens.map(({ name }) => name)).toEqual(['Ana', 'Cleo']);
    expect(left.map(({ text }) => text)).toEqual(['Ben, a bucket']);
  });

  test('that is longer than the class has room for says so', () => {
    const { kitchens, left } = read('Ana\nBen\nCleo', { room: 2 });
    expect(kitchens).toHaveLength(2);
    expect(left[0]).toMatchObject({ text: 'Cleo', problems: [expect.stringContaining('full')] });
  });

  test('knows every alias of a jar and of a culture', () => {
    for (const id of jarIds) for (const word of jarAliases[id]) expect(one(`A, ${word} jar`).vessel, word).toBe(id);
    for (const id of grainIds)
      for (const word of [grains[id].name, ...grainAliases[id]]) expect(one(`A, ${word}`).grains, word).toBe(id);
  });

  test('of any text at all gives kitchens that can be saved, or sentences', () => {
    const cell = fc.oneof(fc.string(), fc.constantFrom('quart', '24 C', 'US', 'milk', '1e400', '"', '=1+1', '٣'));
    const text = fc.array(fc.tuple(cell, fc.constantFrom(',', '\t', ';', '\n', '|'))).map((all) => all.flat().join(''));
    fc.assert(
      fc.property(text, (any) => {
        const { kitchens, left } = read(any);
        for (const { problems } of left) expect(problems.length).toBeGreaterThan(0);
        expect(addKitchens(addClass(demo, 'b1'), 'k1', kitchens).classes?.[0]?.kitchens ?? []).toHaveLength(
          kitchens.length,
        );
        for (const { temperature } of kitchens) expect(temperature === null || Number.isFinite(temperature)).toBe(true);
      }),
    );
  });
});

describe('a class as CSV', () => {
  const anyKitchen = fc.record({
    name: fc
      .oneof(fc.constantFrom('Ana', '=1+1', '-5', 'a;=b', 'x, "y"', '@me'), fc.string())
      .map((name) => cleanName(name).slice(0, 200))
      .filter((name) => name !== '' && !name.startsWith("'") && !/[;\t\r\n]'/.test(name)),
    vessel: fc.constantFrom(...jarIds),
    temperature: fc.option(fc.double({ min: -20, max: 60, noNaN: true })),
    leads: fc.constantFrom('metric' as const, 'us' as const),
    grains: fc.constantFrom(...grainIds),
  });
  const csvOf = (kitchens: readonly Kitchen[]): string => {
    const document = addKitchens(addClass(demo, 'b1'), 'k1', kitchens);
    const kept = document.classes?.[0] ?? expect.fail('there is no class');
    const taught = taughtBy(document, kept) ?? expect.fail('it can’t be taught');
    return writeClassCsv(
      kept.kitchens.map((kitchen) => ({
        kitchen,
        formulation: formulate(recipeOf(document, kitchenBatch(document, taught, kitchen, undefined).batch)),
      })),
    );
  };

  test('is read back as the kitchens that were written', () => {
    fc.assert(
      fc.property(fc.array(anyKitchen, { minLength: 1, maxLength: 8 }), (kitchens) => {
        const { kitchens: back, left } = read(csvOf(kitchens));
        expect(left).toEqual([]);
        expect(back).toEqual(
          kitchens.map((kitchen) => ({
            ...kitchen,
            name: kitchen.name.trim(),
            temperature: kitchen.temperature === null ? null : expect.closeTo(kitchen.temperature, 5),
          })),
        );
      }),
    );
  });

  test('has the amounts of each kitchen in plain numbers', () => {
    const kitchens = [
      { ...usual, name: 'Ana' },
      { ...usual, name: 'Ben', vessel: 'twoLitre', temperature: 8 },
    ] as const;
    const { lines } = parseTable(csvOf(kitchens), ',');
    expect(lines[0]).toContain('Milk source (g)');
    const at = lines[0]?.indexOf('Milk source (g)') ?? -1;
    const ready = lines[0]?.indexOf('Ready after (h)') ?? -1;
    expect(Number(lines[2]?.[at])).toBeGreaterThan(1.5 * Number(lines[1]?.[at]));
    expect(Number(lines[1]?.[ready])).toBeGreaterThan(5);
    expect(lines[2]?.[ready]).toBe('');
  });
});

test('a table parted by commas takes spaces before its quotes', () => {
  expect(parseTable('a, "b, c",d\n"e""f" , g', ',').lines).toEqual([
    ['a', 'b, c', 'd'],
    ['e"f', ' g'],
  ]);
});

test('of a list that is too long nothing is read, so that no kitchen of it is lost unseen', () => {
  const list = (count: number) => Array.from({ length: count }, (_, at) => `Cook ${at}`).join('\n');
  const pasted = { usual, room: 100, decimalComma: false };
  expect(readKitchens(list(201), pasted)).toEqual({ kitchens: [], left: [], isTooLong: true });
  const { kitchens, left, isTooLong } = readKitchens(list(200), pasted);
  expect([kitchens.length, left.length, isTooLong]).toEqual([100, 100, false]);
});

test('a page of blanks is soon read', () => {
  const begin = performance.now();
  expect(readKitchens(' '.repeat(900_000), { usual, room: 100, decimalComma: false }).kitchens).toEqual([]);
  expect(performance.now() - begin).toBeLessThan(20_000);
});
