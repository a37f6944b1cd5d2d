import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseTable } from '../../src/interchange/table';

describe('parseTable', () => {
  test.each<[string, string, readonly (readonly string[])[]]>([
    ['one cell', '300 g', [['300 g']]],
    ['cells of a line', '1\t2\t3', [['1', '2', '3']]],
    [
      'lines by line feed',
      '1\t2\n3\t4',
      [
        ['1', '2'],
        ['3', '4'],
      ],
    ],
    [
      'lines as Windows writes them',
      '1\t2\r\n3\t4',
      [
        ['1', '2'],
        ['3', '4'],
      ],
    ],
    [
      'lines by carriage return',
      '1\t2\r3\t4',
      [
        ['1', '2'],
        ['3', '4'],
      ],
    ],
    [
      'empty cells',
      '\t2\n\t',
      [
        ['', '2'],
        ['', ''],
      ],
    ],
    ['lines of unlike length', '1\n2\t3', [['1'], ['2', '3']]],
    ['a quoted cell with a tab, a line and a quote in it', '"a\tb\nc ""d"""\t2', [['a\tb\nc "d"', '2']]],
    ['a quoted cell alone, and an empty one', '"a"\n""', [['a'], ['']]],
    ['a quoted cell before a line of Windows', '"a\r\nb"\r\n"c"', [['a\r\nb'], ['c']]],
    ['spaces behind a quoted cell as none', '"a" \t"b" ', [['a', 'b']]],
    ['a quote within a cell as it is', '8" jar\t"8" jar"', [['8" jar', '8" jar']]],
    ['a quote that is never closed as holding the rest', '"a\tb\nc', [['a\tb\nc']]],
    ['a line end at the end as an empty line', 'a\r\n', [['a'], ['']]],
    ['lines that end in several ways', 'a\nb\r\nc\rd', [['a'], ['b'], ['c'], ['d']]],
    ['no more than the text behind the mark of UTF-8', '\uFEFFa\tb', [['a', 'b']]],
    ['nothing', '', []],
    ['commas and semicolons, which part nothing', '1,5;2\t3', [['1,5;2', '3']]],
    ['spaces as they are', ' 1 \t2', [[' 1 ', '2']]],
    ['formulas as text', '=1+1\t@A1', [['=1+1', '@A1']]],
    ['keys of prototypes', '__proto__\tconstructor', [['__proto__', 'constructor']]],
  ])('reads %s', (_, text, lines) => {
    expect(parseTable(text)).toEqual({ lines, isCut: false });
  });

  test('looks at 200 lines and 2000 columns, and says so', () => {
    const long = parseTable('1\n'.repeat(5000));
    expect([long.lines.length, long.isCut]).toEqual([200, true]);
    const wide = parseTable('1\t'.repeat(5000));
    expect([wide.lines[0]?.length, wide.isCut]).toEqual([2000, true]);
    expect(parseTable('1\n'.repeat(199)).isCut).toBe(false);
  });

  test.each(['x', '"', '\t', '\n', '"\t', '\u202E', '\u0000'])('looks at a million characters of ten: %j', (text) => {
    const { lines, isCut } = parseTable(text.repeat(10_000_000 / text.length));
    expect(isCut).toBe(true);
    expect(lines.flat().join('').length).toBeLessThanOrEqual(1_000_000);
  });

  test('reads back any cells that were quoted by RFC 4180, whatever ends their lines', () => {
    const anyCell = fc.array(fc.constantFrom('"', '\t', '\n', '\r', ' ', 'a', ',', '½'), { maxLength: 8 });
    const anyLines = fc.array(fc.array(anyCell, { minLength: 1, maxLength: 4 }), { minLength: 1, maxLength: 4 });
    const quote = (cell: string) => `"${cell.replaceAll('"', '""')}"`;
    fc.assert(
      fc.property(anyLines, fc.constantFrom('\n', '\r\n', '\r'), (cells, lineEnd) => {
        const lines = cells.map((line) => line.map((cell) => cell.join('')));
        expect(parseTable(lines.map((line) => line.map(quote).join('\t')).join(lineEnd)).lines).toEqual(lines);
      }),
    );
  });

  test('never throws, and gives lines of texts', () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom('"', '\t', '\n', '\r', ' ', 'a', '=', '\u202E', '\u0000', ','), { maxLength: 60 }),
        (parts) => {
          for (const line of parseTable(parts.join('')).lines) {
            for (const cell of line) expect(typeof cell).toBe('string');
          }
        },
      ),
    );
  });
});
