import type { PageState } from './page-state';
import { atThumb } from './part-ids';
import { partList } from './part-list';

interface Props {
  readonly page: PageState;
}

/** The way about the page on a phone. */
export function PhoneBar({ page }: Props) {
  const {
    shown,
    parts: { first: part },
  } = page;
  const isMore = shown.value === 'more' || (shown.value === 'part' && !atThumb.some((id) => id === part.value));
  return (
    <nav class="phone-bar" aria-label="Parts of this page">
      <Way name="Batch" here={shown.value === 'batch'} go={() => show(page, 'batch')} />
      {atThumb.map((id) => (
        <Way
          key={id}
          name={partList[id].name}
          here={shown.value === 'part' && part.value === id}
          go={() => page.open(id)}
        />
      ))}
      <Way name="More" here={isMore} go={() => show(page, 'more')} />
    </nav>
  );
}

function show({ shown }: PageState, what: 'batch' | 'more'): void {
  shown.value = what;
  scrollTo?.({ top: 0 });
}

function Way({ name, here, go }: { readonly name: string; readonly here: boolean; readonly go: () => void }) {
  return (
    <button type="button" aria-current={here ? 'page' : undefined} onClick={go}>
      {name}
    </button>
  );
}
