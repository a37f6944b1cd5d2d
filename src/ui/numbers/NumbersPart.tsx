import { useState } from 'preact/hooks';

type Loaded = typeof import('./NumbersFrom');

/** Where the numbers come from: the list is a script of its own, asked for when it is opened. */
export function NumbersPart({ decimalComma }: { readonly decimalComma: boolean }) {
  const [list, setList] = useState<Loaded | 'missing' | 'comes' | null>(null);
  const load = async () => {
    setList('comes');
    setList(await import('./NumbersFrom').catch(() => 'missing' as const));
  };
  return (
    <details class="numbers-part" onToggle={(event) => event.currentTarget.open && void load()}>
      <summary>Where the numbers come from</summary>
      {list === 'missing' && (
        <p role="status">The list could not be loaded. Close this and open it again to try once more.</p>
      )}
      {list === 'comes' && <p role="status">The list is on its way.</p>}
      {list !== null && typeof list !== 'string' && <list.NumbersFrom decimalComma={decimalComma} />}
    </details>
  );
}
