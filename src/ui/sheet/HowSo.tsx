import type { SheetState, Spot } from './sheet-state';

interface Props {
  readonly spot: Spot;
  readonly label: string;
  readonly state: SheetState;
}

/** Opens the working of the cell it stands in. */
export function HowSo({ spot, label, state }: Props) {
  return (
    <button
      type="button"
      class="how-so"
      aria-label={`How ${label} comes about`}
      onClick={() => {
        state.working.value = spot;
      }}
    >
      how
    </button>
  );
}
