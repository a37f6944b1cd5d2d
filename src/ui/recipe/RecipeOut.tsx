import { useState } from 'preact/hooks';
import type { Batch } from '../../batch/document/document';
import type { Store } from '../../batch/store/store';
import { scaleTo } from '../../formula/advice/scale-to';
import { writeRecipe } from '../../interchange/recipe-out';
import { type JarId, jars } from '../../reference/jars';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
}

/** The batch as a plain recipe again, in grams or in the cook's own scoops, to be copied or printed. */
export function RecipeOut({ batch, store }: Props) {
  const settings = store.settings.value;
  const [how, setHow] = useState<'grams' | 'scoops'>(settings.leads === 'us' ? 'scoops' : 'grams');
  const [copied, setCopied] = useState<string | null>(null);
  const [jar, setJar] = useState<JarId | null>(null);
  const formulation = store.formulationOf(batch);
  const text = writeRecipe(jar === null ? formulation : scaleTo(formulation, jar), batch.name, how, settings);
  const copy = () => {
    navigator.clipboard.writeText(text).then(
      () => setCopied('Copied.'),
      () => setCopied('This browser does not let the page copy. Select the text and copy it.'),
    );
  };
  return (
    <section class="panel" aria-label={`${batch.name} as a recipe`}>
      <h2>As a recipe</h2>
      <p>The same batch as plain text, and on paper while this is open.</p>
      <p class="correct">
        <label>
          Scaled to{' '}
          <select value={jar ?? ''} onChange={(event) => setJar(jarOf(event.currentTarget.value))}>
            <option value="">the batch as it is</option>
            {jarIds.map((id) => (
              <option key={id} value={id}>
                {jars[id].name}
              </option>
            ))}
          </select>
        </label>
      </p>
      <p class="correct">
        {(['grams', 'scoops'] as const).map((one) => (
          <label key={one}>
            <input type="radio" name="recipe-how" checked={how === one} onChange={() => setHow(one)} />
            {one === 'grams' ? 'for a scale' : 'for my spoons and cups'}
          </label>
        ))}
      </p>
      <pre class="recipe-text">{text}</pre>
      <p class="correct">
        <button type="button" class="button" onClick={copy}>
          Copy the recipe
        </button>
        <span role="status">{copied}</span>
      </p>
    </section>
  );
}

function jarOf(value: string): JarId | null {
  return jarIds.find((id) => id === value) ?? null;
}

const jarIds = Object.keys(jars)
  .filter((id): id is JarId => Object.hasOwn(jars, id))
  .filter((id) => id !== 'own');
