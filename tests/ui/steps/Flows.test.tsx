// @vitest-environment happy-dom
import { cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { formulate } from '../../../src/formula/engine/formulate';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import { flowsOf } from '../../../src/formula/steps/flows';
import { Flows } from '../../../src/ui/steps/Flows';
import { recipeOf, sourceIds, typed } from '../../batches';
import { textOf } from '../open-sheet';

afterEach(cleanup);

async function show(changes: Partial<Recipe> = {}) {
  const formulation = formulate(recipeOf(changes));
  render(<Flows formulation={formulation} kitchen={demo.settings} name="Monday" />);
  const region = screen.getByRole('region', { name: 'Where the mass goes in Monday' });
  const details = region.querySelector('details');
  if (details === null) throw new Error('nothing unfolds');
  expect(region.querySelector('li')).toBeNull();
  details.setAttribute('open', '');
  fireEvent(details, new Event('toggle'));
  await waitFor(() => expect(textOf(region)).not.toBe('Where the mass goes'));
  return { flows: flowsOf(formulation), region };
}

/** The grams and the percents of the list under a heading. */
function listUnder(region: HTMLElement, heading: string) {
  const list = within(region).getByRole('heading', { name: heading }).parentElement?.querySelectorAll('ul');
  const at = heading === 'Goes in' ? 0 : 1;
  const items = [...(list?.[at]?.querySelectorAll('li') ?? [])].map(textOf);
  const read = (pattern: RegExp) => items.map((text) => Number(pattern.exec(text)?.[1]));
  return { grams: read(/: ([\d.]+) g/), percents: read(/, ([\d.]+)%$/) };
}

const sum = (all: readonly number[]) => all.reduce((total, one) => total + one, 0);

describe('where the mass goes', () => {
  test.each(sourceIds)('for %s what goes in, as written, is what comes out', async (source) => {
    const { region } = await show({ source, given: [typed('vesselCount', 1)] });
    const [into, out] = [listUnder(region, 'Goes in'), listUnder(region, 'Comes out')];
    expect(into.grams.length).toBeGreaterThan(0);
    // Each writing is rounded to a gram, so two lists of a few lines differ by as many grams at most.
    expect(Math.abs(sum(into.grams) - sum(out.grams))).toBeLessThanOrEqual(into.grams.length + out.grams.length);
    expect(sum(into.percents)).toBeCloseTo(100, 0);
    expect(sum(out.percents)).toBeCloseTo(100, 0);
  });

  test('is written for every stream there is, and for no other', async () => {
    const { flows, region } = await show();
    const labels = [...(flows?.into ?? []), ...(flows?.out ?? [])].map(({ label }) => label);
    const items = within(region).getAllByRole('listitem').map(textOf);
    expect(items.map((text) => text.slice(0, text.indexOf(':')))).toEqual(labels);
  });

  test('says what to do where it can’t be had', async () => {
    const { region } = await show({ given: [typed('sourceMass', null)] });
    expect(textOf(region)).toContain('Nothing to draw yet: mend the marked cells first.');
  });
});
