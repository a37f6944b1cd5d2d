import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { SheetDocument } from '../../../src/batch/document/document-schema';
import { currentVersion, migrate } from '../../../src/batch/document/migrations';
import { readDocument } from '../../../src/batch/document/read-document';

const folder = 'tests/batch/versions';

function fixture(name: string): unknown {
  return JSON.parse(readFileSync(`${folder}/${name}`, 'utf8'));
}

function open(data: unknown): SheetDocument {
  const read = readDocument(data);
  return read.ok ? read.document : expect.fail(JSON.stringify(read.why));
}

describe('migrate', () => {
  test('has a saved sheet of every version there ever was', () => {
    const versions = Array.from({ length: currentVersion }, (_, at) => `version-${at + 1}.json`);
    expect(readdirSync(folder).sort()).toEqual(versions.sort());
  });

  test.each(readdirSync(folder))('opens %s with nothing typed missing', (name) => {
    const before = fixture(name);
    const { version, settings, ...rest } = open(before);
    expect(version).toBe(currentVersion);
    expect(before).toMatchObject({ batches: rest.batches, yours: rest.yours });
    expect(JSON.stringify(before)).toContain('1 1/2 cups');
    expect(rest.batches.flatMap(({ given }) => given.map(({ text }) => text))).toContain('1 1/2 cups');
    expect(settings).toMatchObject({ leads: 'us', cups: 'us' });
  });

  test('gives a sheet of the first version a log and a night', () => {
    expect(open(fixture('version-1.json'))).toMatchObject({
      log: [],
      settings: { quiet: { from: '22:00', to: '07:00' } },
    });
  });

  test('leaves data of this version and of none we know as it is', () => {
    for (const data of [
      { version: currentVersion },
      { version: 99 },
      { version: 0 },
      { version: -1 },
      {},
      null,
      7,
      [],
    ]) {
      expect(migrate(data)).toBe(data);
    }
  });

  test('does not mistake what every object has for a migration', () => {
    const data = { version: 'constructor' };
    expect(migrate(data)).toBe(data);
  });
});
