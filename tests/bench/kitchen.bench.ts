import { describe } from 'vitest';
import type { Logged, SheetDocument, Stock } from '../../src/batch/document/document';
import { findChromium } from '../browser/chromium';
import { median, report } from './in-turn';
import { timeKey } from './key-to-paint';
import { depthAt, edited, editedLine, manyBatches, openWith } from './many-batches';

const rounds = 9;
const warmUps = 2;

/** A year or several of a kitchen: so many batches, lines of the log and lines of a jar of grains. */
function kitchenOf(batches: number, entries: number, lines: number): SheetDocument {
  const log = Array.from({ length: entries }, (_, at): Logged => {
    const batch = at % batches;
    return {
      batch: `b${batch}`,
      name: `Batch ${batch}`,
      at: minute(at),
      found: at % 7 === 0 ? 'flat' : 'ready',
      hours: 9 + (at % 5),
      expected: 12,
      temperature: 21,
      acidity: 4.4,
      note: 'Thick on top.',
    };
  });
  const stock: Stock = {
    key: 'k1',
    name: 'Window sill',
    grains: 'water',
    lines: Array.from({ length: lines }, (_, at) => ({
      at: minute(at),
      did: at % 2 === 0 ? 'out' : 'back',
      grams: at % 2 === 0 ? 54 : 56,
      batch: `b${(at >> 1) % batches}`,
      name: `Batch ${(at >> 1) % batches}`,
      source: 'almond',
    })),
  };
  return { ...manyBatches(batches), log, stocks: [stock] };
}

function minute(at: number): string {
  return new Date(Date.UTC(2023, 0, 1) + at * 86_400_000).toISOString().slice(0, 16);
}

/** From a key to the last frame it has drawn in, ms: opening the log, the grains, and an amount with the log open. */
async function time(sheet: SheetDocument): Promise<readonly number[]> {
  const { opened, visit } = await openWith(sheet);
  const { page } = visit;
  const tab = (name: string) => page.getByRole('tab', { name, exact: true });
  try {
    const took: Record<'log' | 'grains' | 'amount', number[]> = { log: [], grains: [], amount: [] };
    for (let round = -warmUps; round < rounds; round += 1) {
      await tab('Plan').click();
      await tab('Plan').focus();
      const log = await timeKey(page, 'ArrowRight');
      await page.locator(edited).focus();
      await page.keyboard.type(depthAt(round + warmUps));
      const amount = await timeKey(page, 'Enter', editedLine);
      await tab('Log').focus();
      const grains = await timeKey(page, 'ArrowRight');
      if (round < 0) continue;
      took.log.push(log.all);
      took.amount.push(amount.all);
      took.grains.push(grains.all);
    }
    return Object.values(took).map(median);
  } finally {
    await opened.close();
  }
}

describe.skipIf(findChromium() === undefined)('a kitchen of years', () => {
  report('the log, the grains and an amount, with few and with many', async () => {
    const write = (figures: readonly number[]) => figures.map((one) => one.toFixed(0)).join(', ');
    const few = await time(kitchenOf(2, 10, 10));
    const many = await time(kitchenOf(200, 1000, 1000));
    return `opening the log, the grains, an amount beside the log, ms: ${write(many)} with 200 batches and 1000 lines of each, ${write(few)} with 2 and 10`;
  });
});
