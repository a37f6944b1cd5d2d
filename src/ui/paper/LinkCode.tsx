import { signal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import type { Batch } from '../../batch/document/document';
import type { Store } from '../../batch/store/store';
import { fragmentAtOnce } from '../../interchange/link-cache';
import { linkTo } from '../../interchange/share-link';

type Qr = typeof import('../../interchange/qr-code');

const qr = signal<Qr | null>(null);
let isLoading = false;

/** Fetches what draws the pictures, so that it is there when the page goes to paper. */
export async function loadQr(): Promise<void> {
  if (isLoading || qr.peek() !== null) return;
  isLoading = true;
  try {
    qr.value = await import('../../interchange/qr-code');
  } catch {
    // Without it cards print without their pictures, which says so.
  }
  isLoading = false;
}

interface Props {
  readonly batch: Batch;
  readonly store: Pick<Store, 'document'>;
}

/** The link to a batch as a QR picture, for its card on paper; in its place the reason where there can be none. */
export function LinkCode({ batch, store }: Props) {
  const draw = qr.value;
  const document = store.document.value;
  const fragment = fragmentAtOnce(document, batch);
  const code = useMemo(
    () => (draw === null || fragment === null ? null : draw.drawQr(linkTo(location.href, fragment))),
    [draw, fragment],
  );
  if (code === null) {
    return (
      <p class="link-code-missing">
        {draw === null && fragment !== null
          ? 'Without a picture of its link: a part of the page could not be loaded.'
          : 'Without a picture of its link: this batch is too long for one that scans well from paper. Send the link itself.'}
      </p>
    );
  }
  return (
    <figure class="link-code">
      <svg
        viewBox={`0 0 ${code.size} ${code.size}`}
        role="img"
        aria-label={`QR picture of the link to ${batch.name}`}
        shape-rendering="crispEdges"
      >
        <rect width={code.size} height={code.size} fill="#fff" />
        <path d={code.path} fill="#000" />
      </svg>
      <figcaption>Scan to open this batch</figcaption>
    </figure>
  );
}
