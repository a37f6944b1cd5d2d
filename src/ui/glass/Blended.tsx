import { useState } from 'preact/hooks';
import type { KeptBlend } from '../../batch/document/document';
import type { ReadPart } from '../../batch/reading/read-blend';
import type { Store } from '../../batch/store/store';
import { blend } from '../../formula/blend/blend';
import { blendCare, blendCautions, blendLabel, blendLines } from '../../formula/blend/blend-words';

interface Props {
  readonly kept: KeptBlend;
  readonly read: readonly ReadPart[];
  readonly store: Pick<Store, 'settings'>;
}

/** What a blend comes to, what to mind with it, and its label as text. */
export function Blended({ kept, read, store }: Props) {
  const [copied, setCopied] = useState('');
  const kitchen = store.settings.value;
  const poured = read.map((one) => one.poured).filter((one) => one !== null);
  const found = poured.length < read.length ? null : blend(poured);
  if (found === null) {
    return <p>{read.length === 0 ? 'Nothing is poured in yet.' : 'Nothing to tell yet: mend what is marked first.'}</p>;
  }
  const copy = () => {
    navigator.clipboard.writeText(blendLabel(kept.name, poured, found).join('\n')).then(
      () => setCopied('Copied.'),
      () => setCopied('This browser does not let the page copy.'),
    );
  };
  return (
    <section class="blended" aria-label={`In ${kept.name}`}>
      <dl class="blend-lines">
        {blendLines(found, kitchen).map(({ label, text }) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
      {blendCautions(found, kitchen).map((text) => (
        <p key={text} class="problem caution">
          {text}
        </p>
      ))}
      {blendCare(poured).map((text) => (
        <p key={text} class="pulp-care">
          {text}
        </p>
      ))}
      <p class="glass-note">
        Estimates. Grains are never mixed: strain each batch by itself. Drink it soon or keep it cold and loosely
        covered; how hard it would press in a sealed bottle is not worked out.
      </p>
      <p class="blend-acts">
        <button type="button" class="button" onClick={copy}>
          Copy text for a label
        </button>
        <span role="status">{copied}</span>
      </p>
    </section>
  );
}
