import { moveAlong } from '../sheet/grid-keys';
import type { PageState, Side } from './page-state';
import { batchParts, kitchenParts, type PartId, partIds } from './part-ids';
import { partList } from './part-list';

interface Props {
  readonly page: PageState;
  readonly side: Side;
}

/** The names of the parts, one of which is open beside the sheet: those of a batch, then those of the kitchen. Arrows go from name to name, as in any tab list. */
export function PartNames({ page, side }: Props) {
  const here = page.parts[side].value;
  const press = (event: KeyboardEvent) => {
    const next = moveAlong(partIds, here, event.key);
    if (next === null) return;
    event.preventDefault();
    page.openOn(side, next);
    document.getElementById(`name-${next}-${side}`)?.focus();
  };
  return (
    <div class="part-names" role="tablist" aria-label={side === 'first' ? 'Parts' : 'Second part'} onKeyDown={press}>
      {[batchParts, kitchenParts].map((row) => (
        <div key={row[0]} role="presentation" class="part-row">
          {row.map((id) => (
            <Name key={id} id={id} page={page} side={side} />
          ))}
        </div>
      ))}
    </div>
  );
}

function Name({ id, page, side }: Props & { readonly id: PartId }) {
  const here = page.parts[side].value;
  return (
    <button
      type="button"
      role="tab"
      id={`name-${id}-${side}`}
      class="part-name"
      aria-selected={id === here}
      aria-controls={`part-${side}`}
      tabIndex={id === here ? 0 : -1}
      title={partList[id].about}
      onClick={() => page.openOn(side, id)}
    >
      {partList[id].name}
    </button>
  );
}
