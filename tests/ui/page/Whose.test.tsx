// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { openSheet, textOf } from '../open-sheet';

afterEach(cleanup);

const parts = ['Time', 'What happens to the sugar', 'Fizz', 'Log', 'Take care', 'Where the mass goes'];

function headings(): readonly string[] {
  return screen.getAllByRole('heading', { level: 2 }).map(textOf);
}

describe('the parts under the sheet', () => {
  test('say nothing of whose they are where there is one batch', async () => {
    await openSheet();
    for (const part of parts) expect(headings()).toContain(part);
  });

  test('say which batch they are about where there are several', async () => {
    await openSheet((store) => {
      store.addBatch();
    });
    for (const part of parts) expect(headings()).toContain(`${part} · Saturday almond`);
  });
});
