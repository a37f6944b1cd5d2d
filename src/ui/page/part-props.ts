import type { Batch } from '../../batch/document/document';
import type { Store } from '../../batch/store/store';
import type { SheetState } from '../sheet/sheet-state';
import type { PageState } from './page-state';

/** What a part is given: the batch that is looked at, and the page around it. */
export interface PartProps {
  readonly batch: Batch;
  readonly store: Store;
  readonly state: SheetState;
  readonly page: PageState;
}
