import { useState } from 'preact/hooks';
import type { WorkedClass } from '../../batch/store/class-sheet';
import type { Store } from '../../batch/store/store';
import { currencyOf } from '../../formula/cost/money';
import { shoppingList, toShopFor } from '../../formula/cost/shopping-list';
import { tellShopping, writeShoppingText } from '../../formula/cost/shopping-words';
import { culturesToBring } from '../../formula/lesson/lesson';
import { tellCulture } from '../../formula/lesson/lesson-words';

interface Props {
  readonly worked: WorkedClass;
  readonly store: Store;
}

/** What to buy for all kitchens of a class together, and the culture to bring. */
export function ClassShopping({ worked, store }: Props) {
  const { packages = [] } = store.document.value;
  const settings = store.settings.value;
  const [copied, setCopied] = useState('');
  const list = shoppingList(
    worked.kitchens.map(({ batch, kitchen, formulation }) => toShopFor(kitchen.name, formulation, batch.carton)),
    packages,
    { lessInHouse: false },
  );
  const told = tellShopping(list, currencyOf(settings.currency), settings);
  const cultures = culturesToBring(worked.kitchens.map(({ formulation }) => formulation)).map((one) =>
    tellCulture(one, settings),
  );
  const copy = () => {
    const text = [writeShoppingText(told), ...cultures.map((one) => `Bring ${one}`)].join('\n');
    navigator.clipboard.writeText(text).then(
      () => setCopied('Copied.'),
      () => setCopied('This browser does not let the page copy. Select the text and copy it.'),
    );
  };
  const hasCost = told.lines.some(({ cost }) => cost !== null);
  return (
    <section class="class-shopping" aria-label="Shopping list of the class">
      <h3>Shopping list</h3>
      <ul>
        {told.lines.map(({ food, name, take, aside, cost }) => (
          <li key={food}>
            <b>{take}</b> {name}
            {[aside, cost].map((one) =>
              one === null || one === '' ? null : (
                <span key={one} class="hint">
                  {' '}
                  · {one}
                </span>
              ),
            )}
          </li>
        ))}
        {cultures.map((one) => (
          <li key={one}>Bring {one}</li>
        ))}
      </ul>
      {hasCost && (
        <p>
          {told.isPart ? 'So far' : 'Together'}: <b>{told.total}</b>
        </p>
      )}
      <p class="class-acts">
        <button type="button" class="button" onClick={copy}>
          Copy the list
        </button>
        <span role="status">{copied}</span>
      </p>
    </section>
  );
}
