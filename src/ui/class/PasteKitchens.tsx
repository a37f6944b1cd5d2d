import { useEffect, useId, useRef, useState } from 'preact/hooks';
import type { KeptClass, Kitchen } from '../../batch/document/document';
import { addKitchens, classSteps, roomFor } from '../../batch/edits/class-edits';
import type { Store } from '../../batch/store/store';
import { type KitchenLine, readKitchens } from '../../interchange/class-table';

interface Props {
  readonly kept: KeptClass;
  /** What a kitchen has of which the list says nothing. */
  readonly usual: Kitchen;
  readonly store: Store;
  readonly onAdded: (words: string) => void;
}

/** A list of kitchens, pasted from a table or typed a line each. What is not understood stays in the box. */
export function PasteKitchens({ kept, usual, store, onAdded }: Props) {
  const id = useId();
  const [text, setText] = useState('');
  const [left, setLeft] = useState<readonly KitchenLine[]>([]);
  const [open, setOpen] = useState(kept.kitchens.length === 0);
  const [problem, setProblem] = useState<string | null>(null);
  const told = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (left.length > 0) told.current?.scrollIntoView?.({ block: 'nearest' });
  }, [left]);
  const add = () => {
    const { name: _, ...rest } = usual;
    const { decimalComma } = store.settings.peek();
    const before = store.document.peek();
    const now = readKitchens(text, { usual: rest, room: roomFor(kept), decimalComma });
    if (now.isTooLong) {
      setProblem('A class holds 100 kitchens: paste at most 200 lines at once.');
      return;
    }
    setProblem(
      now.kitchens.length === 0 && now.left.length === 0
        ? 'There is no line in it yet: type one kitchen a line.'
        : null,
    );
    store.takeEdit(addKitchens(before, kept.key, now.kitchens), classSteps.addKitchens(now.kitchens.length));
    setLeft(now.left);
    setText(now.left.map((line) => line.text).join('\n'));
    const { length } = now.kitchens;
    onAdded(length === 0 ? '' : length === 1 ? '1 kitchen is added.' : `${length} kitchens are added.`);
    if (now.left.length === 0 && length > 0) setOpen(false);
  };
  return (
    <details class="fold-panel" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Paste a list</summary>
      <p id={id} class="hint">
        From a spreadsheet, or a line a kitchen: name, jar, room, metric or US, culture. A name alone will do.
      </p>
      <textarea
        class="class-box"
        aria-label="List of kitchens"
        aria-describedby={id}
        rows={6}
        value={text}
        placeholder={'Ana, quart, 24 C, US, milk grains\nBen, 2 L, 19 C\nCleo, half gallon, 72 F'}
        onInput={(event) => setText(event.currentTarget.value)}
      />
      {left.length > 0 && (
        <div class="problem refusal" role="alert" ref={told}>
          <ul class="class-unread">
            {left.map(({ text: line, problems }, place) => (
              <li key={place}>
                <bdi>{line}</bdi>: {problems.join(' ')}
              </li>
            ))}
          </ul>
        </div>
      )}
      {problem !== null && (
        <p class="problem" role="alert">
          {problem}
        </p>
      )}
      <p class="class-acts">
        <button type="button" class="button" onClick={add}>
          Add these kitchens
        </button>
      </p>
    </details>
  );
}
