import type { Store } from '../batch/store';
import type { SheetState } from './sheet-state';
import { useLoaded } from './use-loaded';

interface Props {
  readonly store: Store;
  readonly state: SheetState;
}

const failed = 'This part of the page could not be loaded. Reload the page when you are online again.';

/** The working, loaded after the first paint. */
export function WorkingLater({ store, state }: Props) {
  const part = useLoaded(() => import('./Working'));
  if (part === null) return <section class="working" aria-busy="true" aria-label="Working" />;
  return part === 'failed' ? <p class="working">{failed}</p> : <part.Working store={store} state={state} />;
}

/** Steps, balance and cautions, loaded after the first paint. */
export function BelowLater({ store }: Pick<Props, 'store'>) {
  const part = useLoaded(() => import('./Below'));
  if (part === null) return <div class="below" aria-busy="true" />;
  return part === 'failed' ? <p class="below">{failed}</p> : <part.Below store={store} />;
}

/** The kitchen's settings, loaded after the first paint. */
export function SettingsLater({ store }: Pick<Props, 'store'>) {
  const part = useLoaded(() => import('./Settings'));
  return part === null || part === 'failed' ? null : <part.Settings store={store} />;
}
