import type { WayOut } from '../../formula/advice/ways-out';

interface Props<W extends WayOut> {
  readonly ways: readonly W[];
  readonly onTake: (way: W) => void;
  /** Whether the buttons can be tabbed to. */
  readonly tabbed?: boolean;
}

/** The ways out of a problem, a button each. */
export function WaysOut<W extends WayOut>({ ways, onTake, tabbed = true }: Props<W>) {
  if (ways.length === 0) return null;
  return (
    <div class="ways-out">
      {ways.map((way) => (
        <button type="button" class="way-out" key={way.label} tabIndex={tabbed ? 0 : -1} onClick={() => onTake(way)}>
          {way.label}
        </button>
      ))}
    </div>
  );
}
