import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Batch } from '../../batch/document/document';
import { readHeat } from '../../batch/reading/read-heat';
import type { Store } from '../../batch/store/store';
import { Refusal, Typed } from '../page/Typed';

interface Props {
  readonly batch: string;
  readonly heat: Batch['heat'];
  readonly store: Store;
}

/** The optional heat step: what is heated, to what, for how long, as the cook says; none is claimed safe. */
export function Heat({ batch, heat, store }: Props) {
  const [what, setWhat] = useState<'source' | 'milk'>(heat?.what ?? 'milk');
  const [temperature, setTemperature] = useState('');
  const [minutes, setMinutes] = useState('');
  const [problem, setProblem] = useState<string | null>(null);
  const way = useRef<HTMLElement | null>(null);
  const isPressed = useRef(false);
  // The step takes the place of its form, and the form that of the step: the focus stays where the press was.
  useLayoutEffect(() => {
    if (isPressed.current) way.current?.focus();
    isPressed.current = false;
  }, [heat]);
  if (heat !== null) {
    const leaveOut = () => {
      isPressed.current = true;
      store.setHeat(batch, null);
    };
    return (
      <button
        type="button"
        class="button"
        ref={(element) => {
          way.current = element;
        }}
        onClick={leaveOut}
      >
        Leave out the heat step
      </button>
    );
  }
  const add = (event: Event) => {
    event.preventDefault();
    const read = readHeat(what, temperature, minutes, store.settings.value);
    isPressed.current = read.ok;
    if (read.ok) store.setHeat(batch, read.heat);
    setProblem(read.ok ? null : read.why);
  };
  return (
    <details class="fold-panel heat">
      <summary
        ref={(element) => {
          way.current = element;
        }}
      >
        Add a heat step
      </summary>
      <form class="correct" onSubmit={add}>
        <label>
          Heat{' '}
          <select
            value={what}
            onChange={(event) => setWhat(event.currentTarget.value === 'source' ? 'source' : 'milk')}
          >
            <option value="milk">the milk, after straining</option>
            <option value="source">the nut or seed, before blending</option>
          </select>
        </label>
        <label>
          to <Typed aria-label="Temperature of the heat step" value={temperature} onText={setTemperature} />
        </label>
        <label>
          for <Typed aria-label="Time of the heat step" value={minutes} onText={setMinutes} />
        </label>
        <button type="submit" class="button">
          Add
        </button>
        <Refusal why={problem} />
      </form>
    </details>
  );
}
