// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import type { PartId } from '../../../src/ui/page/part-ids';
import { openWith, textOf } from '../open-sheet';

afterEach(cleanup);

const parts: readonly (readonly [PartId, string])[] = [
  ['time', 'Time'],
  ['fizz', 'What happens to the sugar'],
  ['fizz', 'Fizz'],
  ['log', 'Log'],
  ['care', 'Take care'],
  ['trouble', 'What is wrong?'],
  ['steps', 'Where the mass goes'],
];

function headings(): readonly string[] {
  return screen.getAllByRole('heading', { level: 2 }).map(textOf);
}

describe.each(parts)('the part %s, under %s', (part, heading) => {
  test('says nothing of whose it is where there is one batch', async () => {
    await openWith(part)();
    expect(headings()).toContain(heading);
  });

  test('says which batch it is about where there are several', async () => {
    await openWith(part)((store) => {
      store.addBatch();
    });
    expect(headings()).toContain(`${heading} · Saturday almond`);
  });
});
