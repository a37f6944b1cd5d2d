import { Component, type ComponentChildren } from 'preact';
import type { Store } from '../../batch/store/store';

interface Props {
  readonly store: Pick<Store, 'document'>;
  /** What is drawn, where that changes without an edit. */
  readonly of?: unknown;
  /** What stands there where drawing fails. */
  readonly instead: ComponentChildren;
  readonly children: ComponentChildren;
}

interface State {
  /** At which sheet and of what drawing failed; null where it has not. */
  readonly failed: { readonly document: unknown; readonly of: unknown } | null;
}

/** A part of the page that takes nothing else with it when it fails. It is tried again once there is another to draw. */
export class Guarded extends Component<Props, State> {
  override state: State = { failed: null };

  override componentDidCatch() {
    this.setState({ failed: { document: this.props.store.document.peek(), of: this.props.of } });
  }

  override render({ store, of, instead, children }: Props, { failed }: State) {
    return failed !== null && failed.document === store.document.value && failed.of === of ? instead : children;
  }
}
