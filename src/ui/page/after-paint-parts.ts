/** What the first paint does not wait for, in one script. */
export { withEdits } from '../../batch/store';
export { rowsThatDiffer } from '../../formula/compare';
export { JarOf } from '../jar/JarOf';
export { LinkOffers } from '../paper/LinkOffers';
export { BatchTools } from '../sheet/BatchTools';
export { ChoiceRemarks, NumberRemarks } from '../sheet/CellRemarks';
export { Clipboard } from '../sheet/Clipboard';
export { SheetTools } from '../sheet/SheetTools';
export { Working } from '../working/Working';
export { Below } from './Below';
export { Foot } from './Foot';
export { Kept, KeptActions } from './Kept';
export { Settings } from './Settings';
