import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { type LogForm, readLogEntry } from '../../../src/batch/reading/read-log-entry';
import { anySettings, anyText } from '../any-edit';

const now = '2026-11-24T08:00';
const settings = demo.settings;

function read(changes: Partial<LogForm>, how = settings) {
  const form = { found: 'ready', hours: '9', when: '', temperature: '', acidity: '', note: '', ...changes } as const;
  return readLogEntry(form, how, now);
}

function found(changes: Partial<LogForm>, how = settings) {
  const result = read(changes, how);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.found;
}

const problemsOf = (changes: Partial<LogForm>) => {
  const result = read(changes);
  return result.ok ? {} : result.problems;
};

describe('readLogEntry', () => {
  test.each([
    ['14', 14],
    ['14 h', 14],
    ['13:30', 13.5],
    ['9:05 h', 9 + 5 / 60],
    ['2 h 30 min', 2.5],
    ['90 min', 1.5],
    ['1½', 1.5],
  ])('reads the hours %s', (text, hours) => {
    expect(found({ hours: text }).hours).toBeCloseTo(hours, 12);
  });

  test('reads a bare temperature in the unit that leads, and one with a unit in it', () => {
    expect(found({ temperature: '21' }).temperature).toBe(21);
    expect(found({ temperature: '70' }, { ...settings, leads: 'us' }).temperature).toBeCloseTo(21.11, 2);
    expect(found({ temperature: '68F' }).temperature).toBe(20);
  });

  test('reads a pH with a point or with the cook’s comma, and keeps the note without its edges', () => {
    expect(found({ acidity: 'pH 4.4' }).acidity).toBe(4.4);
    expect(found({ acidity: '4,4' }, { ...settings, decimalComma: true }).acidity).toBe(4.4);
    expect(found({ note: '  thick, clean ' }).note).toBe('thick, clean');
  });

  test('takes now where no time is chosen, else the chosen one', () => {
    expect(found({}).at).toBe(now);
    expect(found({ when: '2026-11-23T22:15' }).at).toBe('2026-11-23T22:15');
    expect(found({ when: '2026-11-23T22:15:30' }).at).toBe('2026-11-23T22:15');
    expect(problemsOf({ when: '2026-11-25T08:00' }).when).toMatch(/still to come/);
    expect(problemsOf({ when: 'yesterday' }).when).toMatch(/Choose a date/);
  });

  test('needs to know what was found, and after how many hours', () => {
    expect(problemsOf({ found: null }).found).toBe('Choose what you found.');
    expect(problemsOf({ hours: '' }).hours).toMatch(/how many hours/);
    expect(problemsOf({ hours: '0' }).hours).toBe('Type a time between 1 min and 1000 h.');
  });

  test('of a mere look needs no hours, but something to keep', () => {
    expect(found({ found: 'looked', hours: '', note: 'skin on top' }).hours).toBeNull();
    expect(found({ found: 'looked', hours: '', acidity: '5' }).acidity).toBe(5);
    expect(problemsOf({ found: 'looked', hours: '3' }).note).toMatch(/nothing to save/);
  });

  test('tells what it can’t read field by field, all at once', () => {
    const problems = problemsOf({ hours: 'all night', temperature: '-3', acidity: '15' });
    expect(Object.keys(problems).sort()).toEqual(['acidity', 'hours', 'temperature']);
    expect(problems.hours).toMatch(/12 h/);
    expect(problems.temperature).toMatch(/between 0 °C and 50 °C \(32 °F and 122 °F\)/);
    expect(problems.acidity).toBe('Type a pH between 0 and 14.');
  });

  test('gives finite numbers or a sentence for anything at all, and never throws', () => {
    fc.assert(
      fc.property(anyText, anyText, anyText, anyText, anySettings, (hours, temperature, acidity, note, how) => {
        const result = read({ hours, temperature, acidity, note }, { ...settings, ...how });
        if (result.ok) {
          for (const value of [result.found.hours, result.found.temperature, result.found.acidity])
            expect(value === null || Number.isFinite(value)).toBe(true);
        } else {
          expect(Object.values(result.problems).length).toBeGreaterThan(0);
          for (const problem of Object.values(result.problems)) expect(problem.length).toBeGreaterThan(10);
        }
      }),
    );
  });
});
