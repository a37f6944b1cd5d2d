import { signal } from '@preact/signals';
import { longestName } from '../../batch/document/document';
import { mostBlended, mostBlends } from '../../batch/document/document-limits';
import { addBlend, addPart, blendSteps, removeBlend, renameBlend } from '../../batch/edits/blend-edits';
import { readBlend } from '../../batch/reading/read-blend';
import { MayEdit } from '../page/MayEdit';
import type { PartProps } from '../page/part-props';
import { KeptTyped } from '../page/Typed';
import { Blended } from './Blended';
import { BlendPart } from './BlendPart';
import './blends.css';

/** Which blend is looked at; null for the last that the batch is in. */
const openBlend = signal<string | null>(null);

/** Whether the fold stands open, whatever batch is looked at. */
const isUnfolded = signal(false);

/** Finished drinks poured together: how much of each, and what that comes to. */
export function Blends({ batch, store }: Pick<PartProps, 'batch' | 'store'>) {
  const { batches, blends = [] } = store.document.value;
  const kept =
    blends.find(({ key }) => key === openBlend.value) ??
    blends.findLast(({ parts }) => parts.some(({ of }) => of === batch.id)) ??
    blends[0];
  const other = batches.find(({ id }) => id !== batch.id);
  const add = () => {
    if (other === undefined) return;
    const next = addBlend(store.document.peek(), [batch.id, other.id]);
    store.takeEdit(next, blendSteps.add);
    openBlend.value = next.blends?.at(-1)?.key ?? null;
  };
  const change = (next: Parameters<typeof store.takeEdit>[0], step: string) => store.takeEdit(next, step);
  const read =
    kept === undefined
      ? []
      : readBlend(kept, { batches, settings: store.settings.value, formulationOf: store.formulationOf });
  // The next batch that is not in it yet.
  const another = batches.find(({ id }) => !read.some(({ part }) => part.of === id));
  return (
    <details
      class="fold-panel blends"
      open={isUnfolded.value}
      onToggle={(event) => {
        isUnfolded.value = event.currentTarget.open;
      }}
    >
      <summary>Blend finished drinks</summary>
      {kept === undefined ? (
        <>
          <p>
            Pour two finished batches into one glass and see what it holds. Strain each by itself first: grains are
            never mixed.
          </p>
          {other === undefined ? (
            <p>It takes two batches: add another to the sheet.</p>
          ) : (
            <MayEdit store={store}>
              <p>
                <button type="button" class="button" onClick={add}>
                  Blend {batch.name} with another
                </button>
              </p>
            </MayEdit>
          )}
        </>
      ) : (
        <>
          {blends.length > 1 && (
            <label class="blend-field">
              <span>Which blend</span>
              <select
                value={kept.key}
                onChange={({ currentTarget: { value } }) => {
                  openBlend.value = value;
                }}
              >
                {blends.map(({ key, name }) => (
                  <option key={key} value={key}>
                    {name}
                  </option>
                ))}
              </select>
            </label>
          )}
          <MayEdit store={store}>
            <label class="blend-field">
              <span>Name of the blend</span>
              <KeptTyped
                key={kept.key}
                kept={kept.name}
                maxLength={longestName}
                onKeep={(name) => change(renameBlend(store.document.peek(), kept.key, name), blendSteps.rename(name))}
              />
            </label>
            <ul class="blend-parts">
              {read.map((one, place) => (
                <BlendPart key={`${kept.key} ${place}`} kept={kept} place={place} read={one} store={store} />
              ))}
            </ul>
            {another !== undefined && kept.parts.length < mostBlended && (
              <p>
                <button
                  type="button"
                  class="quiet"
                  onClick={() =>
                    change(addPart(store.document.peek(), kept.key, another.id), blendSteps.addPart(another.name))
                  }
                >
                  Pour in another batch
                </button>
              </p>
            )}
          </MayEdit>
          <Blended kept={kept} read={read} store={store} />
          <MayEdit store={store}>
            <p class="blend-acts">
              {blends.length < mostBlends && other !== undefined && (
                <button type="button" class="quiet" onClick={add}>
                  Another blend
                </button>
              )}
              <button
                type="button"
                class="quiet"
                onClick={() => change(removeBlend(store.document.peek(), kept.key), blendSteps.remove(kept))}
              >
                Remove this blend
              </button>
            </p>
          </MayEdit>
        </>
      )}
    </details>
  );
}
