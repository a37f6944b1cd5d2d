export { demo } from '../../src/batch/document/demo';
export { createStore } from '../../src/batch/store/store';
export { formulate } from '../../src/formula/engine/formulate';
export { writeRow } from '../../src/formula/words/write-row';
export { workingIn } from '../../src/formula/working/working';
