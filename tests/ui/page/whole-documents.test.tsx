// @vitest-environment happy-dom
import { cleanup, render } from '@testing-library/preact';
import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import { createStore } from '../../../src/batch/store/store';
import { App } from '../../../src/ui/page/App';
import { loadPart } from '../../../src/ui/page/PartPane';
import { partIds } from '../../../src/ui/page/part-ids';
import { anyAllowedDocument, fuzzRuns } from '../../documents';
import { isUnfit } from '../../everything-said';
// Loaded before any test, so that a busy machine does not outrun the wait for it.
import '../../../src/ui/sheet/Remarks';

beforeAll(async () => {
  for (const id of partIds) await loadPart(id);
}, 60_000);

test('the page shows every document that may be opened, with any part beside it, and no piece of it fails', {
  timeout: 36_000_000,
}, async () => {
  await fc.assert(
    fc.asyncProperty(anyAllowedDocument, fc.constantFrom(...partIds), async (document, part) => {
      localStorage.setItem('jarwright.part', part);
      const { container } = render(<App store={createStore(document)} storage={localStorage} />);
      for (let turn = 0; turn < 3; turn += 1) await new Promise((resolve) => setTimeout(resolve, 0));
      const { textContent } = container;
      const drawn = [...container.querySelectorAll('*')].flatMap((element) =>
        [...element.attributes].map(({ name, value }) => ({ where: `${element.tagName} ${name}`, what: value })),
      );
      cleanup();
      expect(textContent).not.toMatch(/can’t be worked out|can’t be shown/);
      expect([{ where: 'page', what: textContent }, ...drawn].filter(isUnfit)).toEqual([]);
    }),
    { numRuns: fuzzRuns(12) },
  );
});
