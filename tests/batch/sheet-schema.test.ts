import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { demo } from '../../src/batch/document/demo';
import { sheetDocument } from '../../src/batch/document/document-schema';

// The schema that stands beside the page, for whoever reads or writes its files with another program. It is made from the
// check itself; what a schema can’t say (ids and rows are not used twice, at most so many figures) is in its words.

function schemaOfSheet(): Readonly<Record<string, unknown>> {
  const { $schema, ...rest } = z.toJSONSchema(sheetDocument, { io: 'input' });
  return {
    $schema,
    title: 'A Jarwright sheet',
    description:
      'A saved copy. No two batches have one id, and no two cells in `given` one row. An amount is in the base unit of its kind (g, mL, cm, h, °C, bar, g/g, g/L, %), and null where a text can’t be read. Keys that are not named here are kept and not looked at.',
    ...rest,
  };
}

const width = 120;

/** JSON as the other files here are written: a list of plain values in one line where it fits. */
function write(value: unknown, indent = '', before = indent.length): string {
  const inner = `${indent}  `;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  if (Array.isArray(value)) {
    const line = `[${value.map((one) => JSON.stringify(one)).join(', ')}]`;
    const isPlain = value.every((one) => typeof one !== 'object');
    // One more for the comma behind it.
    if (isPlain && before + line.length + 1 <= width) return line;
    return `[\n${value.map((one) => `${inner}${write(one, inner)}`).join(',\n')}\n${indent}]`;
  }
  const lines = Object.entries(value).map(([key, one]) => {
    const start = `${inner}${JSON.stringify(key)}: `;
    return `${start}${write(one, inner, start.length)}`;
  });
  return lines.length === 0 ? '{}' : `{\n${lines.join(',\n')}\n${indent}}`;
}

describe('the published schema of a sheet', () => {
  test('says what the page checks', async () => {
    const text = `${write(schemaOfSheet())}\n`;
    expect(JSON.parse(text)).toEqual(schemaOfSheet());
    await expect(text).toMatchFileSnapshot('../../public/sheet.schema.json');
  });

  test('names each part of a sheet, and asks for those that every sheet has', () => {
    const { properties, required } = schemaOfSheet();
    expect(Object.keys(Object(properties))).toEqual(expect.arrayContaining(Object.keys(demo)));
    expect(required).toEqual(['version', 'batches', 'yours', 'settings', 'log']);
  });
});
