import { useId } from 'preact/hooks';
import type { JarDrawing as Drawing, Layer } from '../../formula/steps/drawing';

interface Props {
  readonly drawing: Drawing | null;
  /** The same in words, for those who can't see it. */
  readonly words: string;
  /** How deep the room over it is, in words; null where the drawing is small and stands without its measure. */
  readonly headspace: string | null;
}

const glass = 0.28;
const rightRoom = 5.2;

/** A jar to scale: one unit of the drawing is one centimetre of the jar. */
export function JarDrawing({ drawing, words, headspace }: Props) {
  // The jar may be on the page twice, and a part that is not shown clips nothing.
  const clip = useId();
  if (drawing === null) {
    return (
      <p class="jar-missing" role="img" aria-label={words}>
        {words}
      </p>
    );
  }
  const { depth, widest, surface } = drawing;
  const middle = widest / 2 + glass;
  const width = widest + glass * 2 + (headspace === null ? 0 : rightRoom);
  const inside = outlinePath(drawing, middle, 0);
  return (
    <svg
      class="jar"
      role="img"
      aria-label={words}
      viewBox={`-0.2 -1 ${width + 0.4} ${depth + glass + 1.6}`}
      preserveAspectRatio="xMidYMax meet"
    >
      <defs>
        <clipPath id={clip}>
          <path d={inside} />
        </clipPath>
      </defs>
      <g clip-path={`url(#${clip})`}>
        {band({ from: surface, to: depth }, width, 'milk')}
        {band(drawing.cream, width, 'cream')}
        {drawing.grains !== null && band(drawing.grains, width, 'grain-bed')}
        {drawing.grains !== null && beads(drawing.grains, middle - widest / 2, widest)}
        <line class="surface" x1="0" x2={width} y1={surface} y2={surface} />
      </g>
      <path class="glass" d={outlinePath(drawing, middle, glass / 2)} />
      <path class="rim" d={`M ${middle - neck(drawing) / 2 - glass} 0 H ${middle + neck(drawing) / 2 + glass}`} />
      {headspace !== null && <Measure from={0} to={surface} x={middle + widest / 2 + 0.9} text={headspace} />}
    </svg>
  );
}

function neck(drawing: Drawing): number {
  return drawing.outline[0]?.diameter ?? 0;
}

function outlinePath(drawing: Drawing, middle: number, out: number): string {
  const right = drawing.outline.map(({ depth, diameter }) => ({ x: middle + diameter / 2 + out, y: depth }));
  const left = drawing.outline.map(({ depth, diameter }) => ({ x: middle - diameter / 2 - out, y: depth }));
  const round = 0.7;
  const floor = drawing.depth + out;
  const down = right.slice(0, -1).map(({ x, y }) => `L ${x} ${y}`);
  const up = [...left.slice(0, -1)].reverse().map(({ x, y }) => `L ${x} ${y}`);
  const side = right[right.length - 1]?.x ?? middle;
  const far = left[left.length - 1]?.x ?? middle;
  const start = right[0]?.x ?? middle;
  return [
    `M ${start} 0`,
    ...down,
    `L ${side} ${floor - round} Q ${side} ${floor} ${side - round} ${floor}`,
    `L ${far + round} ${floor} Q ${far} ${floor} ${far} ${floor - round}`,
    ...up,
  ].join(' ');
}

function band(layer: Layer, width: number, name: string) {
  return <rect class={name} x="0" width={width} y={layer.from} height={Math.max(layer.to - layer.from, 0)} />;
}

/** Beads in the layer where the grains lie, in rows that fill it; the layer itself is to scale. One path, for speed. */
function beads(layer: Layer, left: number, width: number) {
  const size = 0.34;
  const rows = Math.max(1, Math.round((layer.to - layer.from) / (size * 1.8)));
  const columns = Math.floor(width / (size * 2));
  const places = Array.from({ length: rows * columns }, (_, at) => {
    const row = Math.floor(at / columns);
    const column = at % columns;
    const step = (layer.to - layer.from) / rows;
    const shift = row % 2 === 0 ? 0 : size;
    return {
      x: left + size + column * size * 2 + shift,
      y: layer.from + step * (row + 0.5),
      r: size * (0.72 + ((at * 7) % 5) * 0.06),
    };
  });
  const circles = places.map(
    ({ x, y, r }) => `M ${x - r} ${y} a ${r} ${r} 0 1 0 ${2 * r} 0 a ${r} ${r} 0 1 0 ${-2 * r} 0`,
  );
  return <path class="grains" d={circles.join(' ')} />;
}

/** A dimension line from the rim to the surface, with its length beside it. */
function Measure({ from, to, x, text }: { from: number; to: number; x: number; text: string }) {
  const arm = 0.3;
  return (
    <g class="dimension">
      <path d={`M ${x - arm} ${from} H ${x + arm} M ${x} ${from} V ${to} M ${x - arm} ${to} H ${x + arm}`} />
      <text x={x + 0.45} y={(from + to) / 2 + 0.35}>
        {text}
      </text>
    </g>
  );
}
