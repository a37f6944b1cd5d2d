import { writeCalendarDay } from '../../batch/document/calendar-day';
import type { ShoppingLine, ShoppingTold } from '../../formula/cost/shopping-words';

interface Props {
  readonly told: ShoppingTold;
  /** Of the batches that are shopped for. */
  readonly names: readonly string[];
  readonly hasCost: boolean;
  readonly day: string;
}

const mostNamed = 12;

/** The shopping list on paper, with a box to tick at each thing. */
export function ShoppingPaper({ told, names, hasCost, day }: Props) {
  const more = names.slice(mostNamed).length;
  return (
    <article class="shopping-paper" aria-label="Shopping list on paper">
      <header>
        <h2>Shopping list</h2>
        <p>{writeCalendarDay(day)}</p>
      </header>
      <p>
        For {names.slice(0, mostNamed).join(', ')}
        {more > 0 && ` and ${more} more`}
      </p>
      <table>
        <tbody>
          {told.lines.map((line) => (
            <Line key={line.food} line={line} />
          ))}
        </tbody>
      </table>
      {hasCost && (
        <p class="shopping-sum">
          {told.isPart ? 'So far' : 'Together'} {told.total}
        </p>
      )}
    </article>
  );
}

function Line({ line: { name, take, aside, cost } }: { readonly line: ShoppingLine }) {
  return (
    <tr>
      <td class="shopping-box" />
      <th scope="row">
        {name}
        <small>{aside}</small>
      </th>
      <td>{take}</td>
      <td>{cost}</td>
    </tr>
  );
}
