/** What the first paint does not wait for, in one script. */
export { cellProblem, cellRemark } from '../batch/cell-problem';
export { copyRange, copyText } from '../batch/copy';
export { pasteInto } from '../batch/paste';
export { cautionsAt } from '../formula/cautions';
export { compareRow, rowsThatDiffer } from '../formula/compare';
export { waysOut } from '../formula/ways-out';
export { describeProblem } from '../formula/words';
export { BatchTools } from './BatchTools';
export { Below } from './Below';
export { JarOf } from './JarOf';
export { Settings } from './Settings';
export { SheetTools } from './SheetTools';
export { Working } from './Working';
