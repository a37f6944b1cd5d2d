import { useEffect, useState } from 'preact/hooks';
import type { Batch } from '../../batch/document/document';
import type { Store } from '../../batch/store/store';
import { packFragment } from '../../interchange/link-cache';
import { endOfLinkMark } from '../../interchange/link-mark';
import { linkTo, longestFragment } from '../../interchange/share-link';
import { LinkCode } from './LinkCode';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
  /** Offers the batch in a pasted link. */
  readonly onLink: (text: string) => void;
}

const tooLong = `This batch is too long for a link of at most ${longestFragment} characters. Save a copy of it instead.`;

/** A batch as a link and as a picture of it; and a link of somebody else’s, pasted. */
export function ShareLink({ batch, store, onLink }: Props) {
  const document = store.document.value;
  const [fragment, setFragment] = useState<string | null | undefined>(undefined);
  const [said, setSaid] = useState<string | null>(null);
  const [pasted, setPasted] = useState('');
  const [problem, setProblem] = useState<string | null>(null);
  useEffect(() => {
    let isOld = false;
    setSaid(null);
    packFragment(document, batch).then((packed) => {
      if (!isOld) setFragment(packed);
    });
    return () => {
      isOld = true;
    };
  }, [document, batch]);
  const link = typeof fragment === 'string' ? linkTo(location.href, fragment) : '';
  const copy = () => {
    navigator.clipboard.writeText(link).then(
      () => setSaid('Copied.'),
      () => setSaid('This browser does not let the page copy. Select the link and copy it.'),
    );
  };
  const look = () => {
    const isLink = endOfLinkMark(pasted) >= 0;
    setProblem(isLink ? null : 'There is no batch in this. Paste the whole link, with all that follows the #.');
    if (!isLink) return;
    onLink(pasted);
    setPasted('');
  };
  return (
    <section class="panel" aria-label="Share a link">
      <h2>
        <bdi>{batch.name}</bdi> as a link
      </h2>
      <p>
        The whole recipe is in the link itself and goes to no server: choices, what was typed and measured, heat and
        your figures for it. What is on hand, dates and prices stay here.
      </p>
      {fragment === null ? (
        <p class="message">{tooLong}</p>
      ) : (
        <>
          <p class="correct">
            <input
              class="link-box"
              aria-label="Link to this batch"
              readOnly
              value={link}
              onFocus={(event) => event.currentTarget.select()}
            />
            <button type="button" class="button" disabled={link === ''} onClick={copy}>
              Copy the link
            </button>
            <span role="status">{said}</span>
          </p>
          {link !== '' && <LinkCode batch={batch} store={store} />}
        </>
      )}
      <h3>Open a link</h3>
      <p class="correct">
        <input
          class="link-box"
          aria-label="A link to a batch"
          placeholder="Paste a link"
          value={pasted}
          onInput={(event) => setPasted(event.currentTarget.value)}
        />
        <button type="button" class="button" onClick={look}>
          Look at it
        </button>
        <span role="status">{problem}</span>
      </p>
    </section>
  );
}
