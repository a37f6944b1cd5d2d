import { lazyPiece } from '../page/lazy-piece';
import type { RemarksProps } from './Remarks';

/** What is said under a line, in a script of its own: the first figures and edits do not wait for its sentences. */
export const Remarks = lazyPiece<RemarksProps>(() => import('./Remarks'));
