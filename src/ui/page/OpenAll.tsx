interface Props {
  readonly isOpen: boolean;
  readonly onChange: (isOpen: boolean) => void;
}

/** Unfolds all that is folded in a part, to be read through or searched, and folds it again. */
export function OpenAll({ isOpen, onChange }: Props) {
  return (
    <button type="button" class="quiet" onClick={() => onChange(!isOpen)}>
      {isOpen ? 'Fold all' : 'Open all'}
    </button>
  );
}
