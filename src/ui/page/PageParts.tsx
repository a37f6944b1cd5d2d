import type { ComponentChildren } from 'preact';

/** The parts of the page that one can go to, in their order. */
const parts = {
  sheet: 'Sheet',
  steps: 'Steps',
  time: 'Time',
  sugar: 'Sugar',
  fizz: 'Fizz',
  plan: 'Plan',
  log: 'Log',
  share: 'Share and print',
  care: 'Take care',
} as const;
type PartId = keyof typeof parts;

function isPart(id: string): id is PartId {
  return id in parts;
}

/** The way to each part of the page, in sight wherever one is on it. */
export function PageParts() {
  return (
    <nav class="page-parts" aria-label="Parts of this page">
      <ul>
        {Object.keys(parts)
          .filter(isPart)
          .map((id) => (
            <li key={id}>
              <a href={`#${placeOf(id)}`}>{parts[id]}</a>
            </li>
          ))}
      </ul>
    </nav>
  );
}

/** A part of the page, with the place that one gets to. */
export function Part({ id, children }: { readonly id: PartId; readonly children: ComponentChildren }) {
  return (
    <div class="page-part" id={placeOf(id)} tabIndex={-1}>
      {children}
    </div>
  );
}

/** The place of a part, which its link leads to. */
export function placeOf(id: PartId): string {
  return `part-${id}`;
}
