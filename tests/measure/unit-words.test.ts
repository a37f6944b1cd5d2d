import { describe, expect, test } from 'vitest';
import { cupStandards } from '../../src/measure/cup-standards';
import { chooseUnit, findUnitWord, squeezeWord, unitEntries } from '../../src/measure/unit-words';
import { type Kind, toBase, units } from '../../src/measure/units';

function nameUnit(word: string, kind: Kind): string | null {
  const found = findUnitWord(word, 0);
  const meaning = found?.meanings.get(kind);
  return found?.to === word.length && meaning !== undefined ? chooseUnit(meaning, 'us', '°C') : null;
}

describe('words of units', () => {
  test('mean one thing in each kind, as they are written', () => {
    const seen = unitEntries.map(({ alias, kind }) => `${kind}: ${squeezeWord(alias)}`);
    expect(seen.filter((word, index) => seen.indexOf(word) !== index)).toEqual([]);
  });

  test('mean one thing in each kind in any case, but for T and t', () => {
    const meanings = new Map<string, Set<string>>();
    for (const { alias, kind, meaning } of unitEntries) {
      const key = `${kind}: ${squeezeWord(alias).toLowerCase()}`;
      meanings.set(key, (meanings.get(key) ?? new Set()).add(JSON.stringify(meaning)));
    }
    const ambiguous = [...meanings].filter(([, set]) => set.size > 1).map(([key]) => key);
    expect(ambiguous).toEqual(['volume: t']);
  });

  test('are all found, each as the whole of itself', () => {
    for (const { alias, kind } of unitEntries) expect([alias, nameUnit(alias, kind)]).not.toEqual([alias, null]);
  });

  test.each([
    ['T', 'volume', 'tbsp'],
    ['t', 'volume', 'tsp'],
    ['C', 'volume', 'cup'],
    ['C', 'temperature', '°C'],
    ['oz', 'mass', 'oz'],
    ['oz', 'volume', 'flOz'],
    ['FL. OZ.', 'volume', 'flOz'],
    ['floz', 'volume', 'flOz'],
    ['ML', 'volume', 'mL'],
    ['Tablespoons', 'volume', 'tbsp'],
    ['° F', 'temperature', '°F'],
    ['deg. C', 'temperature', '°C'],
    ['degrees', 'temperature', '°C'],
    ['"', 'length', 'in'],
    ['percent', 'share', '%'],
  ] as const)('reads %s as a %s: %s', (word, kind, unit) => {
    expect(nameUnit(word, kind)).toBe(unit);
  });

  test('end where the word ends', () => {
    expect(findUnitWord('grapes', 0)).toBeNull();
    expect(findUnitWord('g/L', 0)?.meanings.has('concentration')).toBe(true);
    expect(findUnitWord('', 0)).toBeNull();
  });
});

describe('cup standards', () => {
  test('say volumes, and keep the order tsp, tbsp, cup', () => {
    for (const [id, standard] of Object.entries(cupStandards)) {
      expect(standard.id).toBe(id);
      for (const unit of [standard.cup, standard.tbsp, standard.tsp, standard.flOz]) {
        expect(units[unit].kind).toBe('volume');
      }
      expect(toBase(1, standard.tsp).compare(toBase(1, standard.tbsp))).toBeLessThan(0);
      expect(toBase(1, standard.tbsp).compare(toBase(1, standard.cup))).toBeLessThan(0);
    }
  });
});
