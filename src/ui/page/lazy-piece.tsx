import type { FunctionComponent } from 'preact';
import { useEffect, useState } from 'preact/hooks';

const nextTry = 3000;

/** A piece of the page in a script of its own, asked for when it is first drawn, and again where it can't be had. */
export function lazyPiece<P extends object>(
  load: () => Promise<{ readonly default: FunctionComponent<P> }>,
): FunctionComponent<P> {
  let Piece: FunctionComponent<P> | null = null;
  return function Lazy(props: P) {
    const [, draw] = useState(false);
    useEffect(() => {
      let isGone = false;
      const get = async () => {
        while (Piece === null && !isGone) {
          Piece = (await load().catch(() => null))?.default ?? null;
          if (Piece === null) await new Promise((resolve) => setTimeout(resolve, nextTry));
        }
        if (!isGone) draw(true);
      };
      void get();
      return () => {
        isGone = true;
      };
    }, []);
    return Piece === null ? null : <Piece {...props} />;
  };
}
