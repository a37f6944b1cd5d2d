import { createContext } from 'preact';
import { useContext } from 'preact/hooks';

/** The name of the batch that the parts under the sheet are about, where there are several; else null. */
export const WhoseName = createContext<string | null>(null);

/** Behind a heading: whose part it is, where there are several batches. */
export function Whose() {
  const name = useContext(WhoseName);
  if (name === null) return null;
  return (
    <small class="whose">
      {' · '}
      <bdi>{name}</bdi>
    </small>
  );
}
