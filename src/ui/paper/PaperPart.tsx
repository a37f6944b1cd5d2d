import type { PartProps } from '../page/part-props';
import { Files } from './Files';
import { Kept } from './Kept';
import { Labels } from './Labels';
import { PrintTools } from './PrintTools';
import './files.css';
import './labels.css';
import './kept.css';

/** What goes to paper, files in and out, and what this browser keeps. */
export default function PaperPart({ batch, store, state }: PartProps) {
  return (
    <>
      <PrintTools store={store} />
      <Labels key={batch.id} batch={batch} store={store} />
      <Files batch={batch} store={store} state={state} />
      <Kept store={store} />
    </>
  );
}
