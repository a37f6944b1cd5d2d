import { type Stages, stagesAt } from '../models/milk';
import { type Extreme, pressingAt } from '../pressing';
import type { Access, Term } from '../row';
import { reducedFor } from '../treated';

/** A figure of the balance where bag and hand are at an extreme; NaN where that would gel. */
function figureAt(x: Access, extreme: Extreme, figure: keyof Stages): number {
  const ratio = x.of('waterRatio');
  return stagesAt(reducedFor(x, ratio, pressingAt(x, extreme)), ratio)?.[figure] ?? Number.NaN;
}

function milk(label: string, symbol: string, extreme: 'leastMilk' | 'mostMilk'): Term {
  const rule = (x: Access) => x.of('sourceMass') * figureAt(x, extreme, 'milkVolume');
  return { label, symbol, kind: 'volume', ways: { balance: { rule } } };
}

function solids(label: string, symbol: string, extreme: 'leastSolids' | 'mostSolids'): Term {
  const rule = (x: Access) => 100 * figureAt(x, extreme, 'milkSolids');
  return { label, symbol, kind: 'share', ways: { balance: { rule } } };
}

/** What milk may come of the same source and water, with another bag and another hand. */
export const yieldTerms = {
  milkLeast: milk('The least milk that may come of it', 'V₋', 'leastMilk'),
  milkMost: milk('The most milk that may come of it', 'V₊', 'mostMilk'),
  solidsLeast: solids('The least solids that may be in the milk', 'σ₋', 'leastSolids'),
  solidsMost: solids('The most solids that may be in the milk', 'σ₊', 'mostSolids'),
} satisfies Record<string, Term>;
