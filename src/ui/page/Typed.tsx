import type { ComponentChildren, Ref } from 'preact';
import { useState } from 'preact/hooks';

interface Props {
  readonly value: string;
  readonly onText: (text: string) => void;
  /** Whether what stands in it can't be taken, for what a `Refusal` beside it says. */
  readonly isRefused?: boolean;
  readonly field?: Ref<HTMLInputElement>;
  readonly id?: string;
  readonly class?: string;
  readonly 'aria-label'?: string;
  readonly 'aria-describedby'?: string;
  readonly inputMode?: 'decimal' | 'numeric';
  readonly placeholder?: string;
  readonly maxLength?: number;
  readonly onBlur?: () => void;
  readonly onKeyDown?: (event: KeyboardEvent) => void;
}

/** A field for what a cook types; what can't be taken stays in it as it was typed. */
export function Typed({ value, onText, isRefused = false, field = null, ...rest }: Props) {
  return (
    <input
      {...rest}
      ref={field}
      value={value}
      autocomplete="off"
      aria-invalid={isRefused}
      onInput={(event) => onText(event.currentTarget.value)}
    />
  );
}

interface KeptProps extends Omit<Props, 'value' | 'onText'> {
  readonly kept: string;
  readonly onKeep: (text: string) => void;
}

/** A field over a text that is kept: what is typed takes its place on Enter and when the field is left. */
export function KeptTyped({ kept, onKeep, ...rest }: KeptProps) {
  const [text, setText] = useState<string | null>(null);
  const keep = () => {
    if (text !== null) onKeep(text);
    setText(null);
  };
  return (
    <Typed
      {...rest}
      value={text ?? kept}
      onText={setText}
      onBlur={keep}
      onKeyDown={({ key }) => key === 'Enter' && keep()}
    />
  );
}

/** Why what was typed can't be taken, and whatever helps out of it; nothing where it can. */
export function Refusal({ why, children }: { readonly why: string | null; readonly children?: ComponentChildren }) {
  if (why === null) return null;
  return (
    <div class="problem refusal" role="alert">
      <p>{why}</p>
      {children}
    </div>
  );
}
