// @vitest-environment happy-dom
import { cleanup, screen, within } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { openSheet, textOf } from '../open-sheet';

afterEach(cleanup);

function steps(): HTMLElement {
  return screen.getByRole('region', { name: 'Steps for Saturday almond' });
}

describe('the steps', () => {
  test('hold the amounts of the batch, as typed for it', async () => {
    await openSheet((store) => store.typeCell('b1', 'sourceMass', '200 g'));
    expect(textOf(steps())).toContain('Weigh out the almonds: 200 g (1 ⅓ cups + 1 tbsp');
    expect(within(steps()).getAllByRole('listitem').length).toBeGreaterThan(8);
  });

  test('lead with the unit the cook leads with', async () => {
    await openSheet((store) => {
      store.typeCell('b1', 'blendWater', '500 mL');
      store.changeSettings({ leads: 'us' });
    });
    expect(textOf(steps())).toMatch(/2 cups[^.]*\(500 mL\)/);
  });

  test('leave out what a source has not, and name the row to mend where an amount is missing', async () => {
    await openSheet((store) => {
      store.choose('b1', 'source', 'hemp');
      store.typeCell('b1', 'sourceMass', '17o g');
    });
    expect(textOf(steps())).not.toContain('Soak it');
    expect(textOf(steps())).toContain('once “Source, as bought” is mended');
  });
});

describe('the heat step', () => {
  async function open() {
    const sheet = await openSheet();
    await sheet.user.click(screen.getByText('Add a heat step'));
    return sheet;
  }
  const temperature = () => screen.getByRole('textbox', { name: 'Temperature of the heat step' });
  const time = () => screen.getByRole('textbox', { name: 'Time of the heat step' });
  const add = () => screen.getByRole('button', { name: 'Add' });

  test('is added with what was typed, and left out again', async () => {
    const { store, user, batch } = await open();
    await user.type(temperature(), '85');
    await user.type(time(), '5');
    await user.click(add());
    expect(batch().heat).toEqual({ what: 'milk', temperature: 85, minutes: 5 });
    expect(textOf(steps())).toContain('85 °C');
    await user.click(within(steps()).getByRole('button', { name: 'Leave out the heat step' }));
    expect(batch().heat).toBeNull();
    expect(store.undoName.value).toBe('Leave out the heat step');
  });

  test('reads °F, and blanches the source', async () => {
    const { user, batch } = await open();
    await user.selectOptions(within(steps()).getByRole('combobox'), 'the source, before blending');
    await user.type(temperature(), '212 F');
    await user.type(time(), '1 h');
    await user.click(add());
    expect(batch().heat).toEqual({ what: 'source', temperature: 100, minutes: 60 });
  });

  test.each([
    ['hot', '5', 'hot'],
    ['185', '5', 'between 0 °C and 100 °C'],
    ['85', '0', 'more than 0 minutes'],
    ['', '', ''],
  ])('of %j for %j is explained, and what was typed stays', async (degrees, minutes, says) => {
    const { store, user } = await open();
    if (degrees !== '') await user.type(temperature(), degrees);
    if (minutes !== '') await user.type(time(), minutes);
    await user.click(add());
    const said = textOf(within(steps()).getByRole('alert'));
    expect(said.length).toBeGreaterThan(10);
    expect(said).toContain(says);
    expect(temperature()).toHaveProperty('value', degrees);
    expect(store.undoName.value).toBeNull();
  });
});
