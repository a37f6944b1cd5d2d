import type { SheetStore } from '../../batch/sheet-store';
import type { SheetState } from '../sheet/sheet-state';
import { afterPaint } from './after-paint';

interface Props {
  readonly store: SheetStore;
  readonly state: SheetState;
}

/** The working, from just after the first paint. */
export function WorkingLater({ store, state }: Props) {
  const parts = afterPaint.value;
  return parts === null ? (
    <section class="working" aria-busy="true" aria-label="Working" />
  ) : (
    <parts.Working store={parts.withEdits(store)} state={state} />
  );
}

/** Steps, what is on hand, balance and cautions, from just after the first paint. */
export function BelowLater({ store, state }: Props) {
  const parts = afterPaint.value;
  return parts === null ? (
    <div class="below" aria-busy="true" />
  ) : (
    <parts.Below store={parts.withEdits(store)} state={state} />
  );
}

/** The kitchen's settings, from just after the first paint. */
export function SettingsLater({ store }: Pick<Props, 'store'>) {
  const parts = afterPaint.value;
  return parts === null ? null : <parts.Settings store={parts.withEdits(store)} />;
}
