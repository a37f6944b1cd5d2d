import { expect, test } from 'vitest';
import { formulate } from '../../src/formula/engine/formulate';
import { rowOrder } from '../../src/formula/recipe/order';
import type { Recipe } from '../../src/formula/recipe/recipe';
import { workingIn } from '../../src/formula/working/working';
import { recipeOf } from '../batches';

function writeValue(value: number | string | null): string {
  if (typeof value !== 'number') return value ?? '–';
  return value === 0 ? '0' : `${Number(value.toPrecision(4))}`;
}

/** Every row of a batch as text: value to four significant digits, kind, status, and how it came about. */
function writeBatch(title: string, recipe: Recipe): string {
  const { rows, sizedFrom } = formulate(recipe);
  const lines = rowOrder.flatMap((id) => {
    const { value, kind, status, absence, problems } = rows[id];
    const working = workingIn(rows[id]);
    const codes = problems.map(({ code }) => code).join(', ');
    const inputs = working?.inputs.map((input) => `${input.id} ${writeValue(input.value)}`).join(', ');
    return [
      `${id}: ${writeValue(value)} [${kind}] ${absence ?? status}${codes === '' ? '' : ` (${codes})`}`,
      ...(working === null ? [] : [`    ${working.words}`, `    = ${working.formula}`]),
      ...(inputs === undefined || inputs === '' ? [] : [`    with ${inputs}`]),
    ];
  });
  return [`# ${title}, sized from ${sizedFrom}`, '', ...lines, ''].join('\n');
}

test('two batches, every row with its working', async () => {
  const almond = recipeOf({ source: 'almond', vessel: 'quartWide', grains: 'water' });
  const coconut = recipeOf({
    source: 'coconutFresh',
    vessel: 'litre',
    grains: 'milk',
    sweetener: [{ id: 'honey', share: 1 }],
  });
  const text = [
    writeBatch('Almonds, wide-mouth quart, white cane sugar, water grains', almond),
    writeBatch('Fresh coconut, litre jar, honey, milk grains', coconut),
  ].join('\n');
  await expect(text).toMatchFileSnapshot('demo.snapshot.txt');
});
