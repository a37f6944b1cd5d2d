import type { ComponentChildren } from 'preact';
import type { Store } from '../../batch/store/store';

interface Props {
  readonly store: Pick<Store, 'readOnly'>;
  readonly children: ComponentChildren;
}

/** What edits the sheet: it can be read and not used in a window that may only read. */
export function MayEdit({ store, children }: Props) {
  return (
    <fieldset class="may-edit" role="presentation" disabled={store.readOnly.value}>
      {children}
    </fieldset>
  );
}
