/** What the first paint does not wait for, in one script. */
export { withEdits } from '../batch/store';
export { rowsThatDiffer } from '../formula/compare';
export { BatchTools } from './BatchTools';
export { Below } from './Below';
export { ChoiceRemarks, NumberRemarks } from './CellRemarks';
export { Clipboard } from './Clipboard';
export { Foot } from './Foot';
export { JarOf } from './JarOf';
export { Kept, KeptActions } from './Kept';
export { LinkOffers } from './LinkOffers';
export { Settings } from './Settings';
export { SheetTools } from './SheetTools';
export { Working } from './Working';
