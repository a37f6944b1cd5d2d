import type { OptionGroup } from './choices';

interface Props {
  readonly groups: readonly OptionGroup[];
}

/** The entries of a menu, in their groups. */
export function MenuOptions({ groups }: Props) {
  return groups.map(({ label, options }) => (
    <optgroup key={label} label={label}>
      {options.map((option) => (
        <option key={option.value} value={option.value}>
          {option.label}
        </option>
      ))}
    </optgroup>
  ));
}
