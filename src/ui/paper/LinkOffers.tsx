import type { Store } from '../../batch/store/store';
import type { SheetState } from '../sheet/sheet-state';
import { LinkOffer } from './LinkOffer';
import { linkHere, offeredLink } from './offered-link';

interface Props {
  readonly store: Store;
  readonly state: SheetState;
}

/** The batch that the page was opened with, or whose link was pasted, offered before it is added. */
export default function LinkOffers({ store, state }: Props) {
  const done = () => {
    offeredLink.value = null;
    if (linkHere() !== null) history.replaceState(null, '', `${location.pathname}${location.search}`);
  };
  const link = offeredLink.value;
  return link === null ? null : <LinkOffer key={link} text={link} store={store} state={state} onDone={done} />;
}
