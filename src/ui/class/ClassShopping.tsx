import { useState } from 'preact/hooks';
import { dayHere } from '../../batch/document/calendar-day';
import type { WorkedClass } from '../../batch/store/class-sheet';
import type { Store } from '../../batch/store/store';
import { currencyOf } from '../../formula/cost/money';
import { shoppingList, toShopFor } from '../../formula/cost/shopping-list';
import { tellShopping, writeShoppingText } from '../../formula/cost/shopping-words';
import { culturesToBring } from '../../formula/lesson/lesson';
import { tellCulture } from '../../formula/lesson/lesson-words';
import { ShoppingPaper } from '../cost/ShoppingPaper';
import { useSheetOnPaper } from '../paper/use-sheet-on-paper';
import '../cost/shopping.css';

interface Props {
  readonly worked: WorkedClass;
  readonly store: Store;
}

/** What to buy for all kitchens of a class together, and the culture to bring. */
export function ClassShopping({ worked, store }: Props) {
  const { packages = [] } = store.document.value;
  const settings = store.settings.value;
  const [copied, setCopied] = useState('');
  const paper = useSheetOnPaper('shopping');
  const list = shoppingList(
    worked.kitchens.map(({ batch, kitchen, formulation }) => toShopFor(kitchen.name, formulation, batch.carton)),
    packages,
    { lessInHouse: false },
  );
  const bought = tellShopping(list, currencyOf(settings.currency), settings);
  const cultures = culturesToBring(worked.kitchens.map(({ formulation }) => formulation));
  const told = { ...bought, lines: [...bought.lines, ...cultures.map((one) => tellCulture(one, settings))] };
  const copy = () => {
    navigator.clipboard.writeText(writeShoppingText(told)).then(
      () => setCopied('Copied.'),
      () => setCopied('This browser does not let the page copy. Print the list instead.'),
    );
  };
  const hasCost = told.lines.some(({ cost }) => cost !== null);
  return (
    <section class="class-shopping" aria-label="Shopping list of the class">
      <h3>Shopping list</h3>
      <ul>
        {told.lines.map(({ food, name, take, aside, cost }) => (
          <li key={food}>
            <span>
              {name} <small class="hint">{aside}</small>
            </span>
            <b>{take}</b>
            {hasCost && <span class="class-cost">{cost}</span>}
          </li>
        ))}
      </ul>
      {hasCost && (
        <p>
          {told.isPart ? 'So far' : 'Together'}: <b>{told.total}</b>
        </p>
      )}
      <p class="class-acts">
        <button type="button" class="button" onClick={paper.start}>
          Print the list
        </button>
        <button type="button" class="button" onClick={copy}>
          Copy it
        </button>
        <span role="status">{copied}</span>
      </p>
      {paper.isOn && (
        <ShoppingPaper
          told={told}
          names={worked.kitchens.map(({ kitchen }) => kitchen.name)}
          hasCost={hasCost}
          day={dayHere(new Date())}
        />
      )}
    </section>
  );
}
