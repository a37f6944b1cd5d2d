// @vitest-environment happy-dom
import { cleanup, render, screen, within } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { formulate } from '../../../src/formula/engine/formulate';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import { Ripening } from '../../../src/ui/time/Ripening';
import { recipeOf, typed } from '../../batches';
import { openWith, textOf } from '../open-sheet';

const openSheet = openWith('time');

afterEach(cleanup);

function show(changes: Partial<Recipe> = {}, isOpened = false) {
  render(
    <Ripening formulation={formulate(recipeOf(changes))} kitchen={demo.settings} name="Saturday" isOpened={isOpened} />,
  );
  return screen.getByRole('region', { name: 'Time for Saturday' });
}
const drawing = (section: HTMLElement) => within(section).queryByRole('img');

describe('the time of a batch', () => {
  test('is drawn with its point, named in words, and told in a table a degree', () => {
    const section = show();
    expect(textOf(within(section).getByRole('status'))).toMatch(/^At 21 °C \(70 °F\) it is likely ready .* 12 h/);
    expect(drawing(section)?.getAttribute('aria-label')).toMatch(/^Hours until ready to taste against/);
    expect(section.querySelectorAll('.ripening-plot .dot')).toHaveLength(1);
    expect(section.querySelectorAll('table tbody tr')).toHaveLength(15);
    expect(section.innerHTML).not.toMatch(/NaN|Infinity|undefined/);
  });

  test('writes both °C and °F along the room', () => {
    const axes = [...show().querySelectorAll('.ripening-axis')].map(textOf);
    expect(axes).toEqual(['°C1618202224262830', '°F6164687275798286']);
  });

  test('of a carton leads to where it is said to be opened for the batch', () => {
    const link = within(show({ source: 'cartonPlain' })).getByRole('link', { name: /opened for this batch/ });
    expect(link.getAttribute('href')).toBe('#how-long-to-wait');
    cleanup();
    const opened = within(show({ source: 'cartonPlain' }, true)).getByRole('link', { name: /each day/ });
    expect(opened.getAttribute('href')).toBe('#how-long-to-wait');
    cleanup();
    expect(within(show()).queryByRole('link')).toBeNull();
  });

  test('outside the models has curves but no point, and says why', () => {
    const section = show({ given: [typed('roomTemperature', 35)] });
    expect(textOf(within(section).getByRole('status'))).toMatch(/^At 35 °C \(95 °F\) no time can be told/);
    expect(drawing(section)).not.toBeNull();
    expect(section.querySelectorAll('.dot, .reach')).toHaveLength(0);
    expect(textOf(section)).not.toContain('this batch');
  });

  test('where nothing ripens has no drawing, and says so', () => {
    const section = show({ source: 'cartonPlain', given: [typed('sugarRate', 0)] });
    expect(drawing(section)).toBeNull();
    expect(textOf(section)).toMatch(/nothing ripens/);
  });

  test('follows what is typed on the page', async () => {
    const { store, batch } = await openSheet();
    store.typeCell(batch().id, 'roomTemperature', '25 C');
    expect(await screen.findByText(/^At 25\s°C \(77\s°F\) it is likely ready to taste after/)).toBeTruthy();
  });
});
