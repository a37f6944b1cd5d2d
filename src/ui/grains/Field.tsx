import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { Refusal } from '../page/Typed';

interface About {
  readonly id: string;
  readonly 'aria-describedby': string;
  readonly isRefused: boolean;
}

interface Props {
  readonly label: string;
  readonly hint?: string | undefined;
  readonly problem?: string | null | undefined;
  readonly children: (about: About) => ComponentChildren;
}

/** A field with its name over it; under it what may be typed, and why what was typed can’t be taken. */
export function Field({ label, hint = '', problem = null, children }: Props) {
  const id = useId();
  return (
    <div class="grains-field">
      <label for={id}>{label}</label>
      {children({ id, 'aria-describedby': `${id}-hint`, isRefused: problem !== null })}
      <div id={`${id}-hint`}>
        {hint !== '' && <span class="hint">{hint}</span>}
        <Refusal why={problem} />
      </div>
    </div>
  );
}
