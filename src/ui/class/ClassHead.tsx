import type { KeptClass } from '../../batch/document/document';
import { longestName } from '../../batch/document/document';
import { chooseRecipe, classSteps, renameClass } from '../../batch/edits/class-edits';
import type { Store } from '../../batch/store/store';
import { KeptTyped } from '../page/Typed';

interface Props {
  readonly kept: KeptClass;
  readonly store: Store;
  readonly onOpen: (key: string) => void;
}

/** What a class is called and what it makes, and going to another. */
export function ClassHead({ kept, store, onOpen }: Props) {
  const document = store.document.value;
  const { batches, classes = [] } = document;
  const isThere = batches.some(({ id }) => id === kept.of);
  return (
    <div class="class-head">
      {classes.length > 1 && (
        <label>
          <span>Which class</span>
          <select value={kept.key} onChange={(event) => onOpen(event.currentTarget.value)}>
            {classes.map(({ key, name }) => (
              <option key={key} value={key}>
                {name}
              </option>
            ))}
          </select>
        </label>
      )}
      <label>
        <span>Name of the class</span>
        <KeptTyped
          kept={kept.name}
          maxLength={longestName}
          onKeep={(name) => store.takeEdit(renameClass(document, kept.key, name), classSteps.rename(name))}
        />
      </label>
      <label>
        <span>Recipe</span>
        <select
          value={isThere ? kept.of : ''}
          onChange={({ currentTarget: { value } }) =>
            store.takeEdit(chooseRecipe(document, kept.key, value), classSteps.recipe(kept))
          }
        >
          {!isThere && <option value="">It is gone: choose another</option>}
          {batches.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
    </div>
  );
}
