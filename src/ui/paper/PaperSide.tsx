import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import './paper-side.css';

interface Props {
  readonly children: ComponentChildren;
}

/** Sizes of type from the one that reads at arm's length to the one that a long batch needs, as in the style sheet. */
const types = ['largest', 'large', 'middle', 'small', 'smaller', 'smallest'] as const;

/** A side of a sheet that is no longer than A4 and Letter both hold, in the largest type in which all of it fits. */
export function PaperSide({ children }: Props) {
  const side = useRef<HTMLElement>(null);
  const room = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const { current: paper } = side;
    const { current: ruler } = room;
    if (paper === null || ruler === null) return;
    for (const type of types) {
      paper.dataset.type = type;
      if (paper.offsetHeight <= ruler.offsetHeight) return;
    }
  });
  return (
    <section class="paper-side" ref={side}>
      <div class="paper-room" ref={room} aria-hidden="true" />
      {children}
    </section>
  );
}
