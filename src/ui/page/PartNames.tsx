import { moveAlong } from '../sheet/grid-keys';
import type { PageState } from './page-state';
import { partIds } from './part-ids';
import { partList } from './part-list';

interface Props {
  readonly page: PageState;
}

/** The names of the parts, one of which is open beside the sheet. Arrows go from name to name, as in any tab list. */
export function PartNames({ page }: Props) {
  const here = page.part.value;
  const press = (event: KeyboardEvent) => {
    const next = moveAlong(partIds, here, event.key);
    if (next === null) return;
    event.preventDefault();
    page.open(next);
    document.getElementById(`name-${next}`)?.focus();
  };
  return (
    <div class="part-names" role="tablist" aria-label="Parts" onKeyDown={press}>
      {partIds.map((id) => (
        <button
          type="button"
          role="tab"
          key={id}
          id={`name-${id}`}
          class="part-name"
          aria-selected={id === here}
          aria-controls="part"
          tabIndex={id === here ? 0 : -1}
          title={partList[id].about}
          onClick={() => page.open(id)}
        >
          {partList[id].name}
        </button>
      ))}
    </div>
  );
}
