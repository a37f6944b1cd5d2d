// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { labelOfBatch } from '../../../src/formula/steps/label-text';
import { stepsOf } from '../../../src/formula/steps/steps';
import { openWith, textOf } from '../open-sheet';

afterEach(cleanup);

const openFizz = openWith('fizz');

test('fruit stays fruit in its row, its step and on the label, until the sugar is typed anew', async () => {
  const { store, user, batch } = await openFizz((sheet) => sheet.typeCell('b1', 'bottleTime', '12 h'));
  const form = textOf(await screen.findByRole('heading', { name: 'Add sugar or fruit to each bottle' }));
  expect(form).toContain('fruit');
  await user.selectOptions(screen.getByRole('combobox', { name: 'What' }), 'Raspberries');
  const amount = screen.getByRole('textbox', { name: 'How much in each bottle' });
  await user.clear(amount);
  await user.type(amount, '1/4 cup');
  await user.click(screen.getByRole('button', { name: /^Count/ }));
  expect(batch().fruit).toMatchObject({ name: 'raspberries', amount: '1/4 cup', grams: 30.75 });
  expect(store.undoName.value).toBe('Add 1/4 cup of raspberries to each bottle');
  const formulation = () => store.formulationOf(batch());
  const said = () => ({
    row: formulation().rows.bottleSugar.problems.map(({ code }) => code),
    step: stepsOf(formulation(), (row) => row).find(({ id }) => id === 'bottle')?.text ?? '',
    label: labelOfBatch(formulation(), { name: 'Mine', days: { made: null, tasteBy: null, useBy: null } })
      .map(({ text }) => text)
      .join('\n'),
  });
  expect(said().row).toContain('fruitInEach');
  expect(said().step.replaceAll('\u00A0', ' ')).toMatch(/of raspberries: 1\/4 cup, 31 g/);
  expect(said().label).toContain('In each bottle: raspberries.');
  store.typeCell('b1', 'bottleSugar', '3 g');
  expect(said().row).not.toContain('fruitInEach');
  expect(said().label).not.toContain('raspberries');
});
