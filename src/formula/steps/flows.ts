import { nearly } from '../../measure/nearly';
import type { Formulation } from '../engine/formulate';

/** A stream of mass into or out of making the milk, g. */
export interface Flow {
  readonly id: 'source' | 'uptake' | 'water' | 'ownLiquid' | 'milk' | 'pulp' | 'lost' | 'leached';
  readonly label: string;
  readonly mass: number;
  /** Of all that goes in, 0 to 1. */
  readonly share: number;
}

export interface Flows {
  readonly into: readonly Flow[];
  readonly out: readonly Flow[];
  readonly total: number;
}

/**
 * Where the mass of a batch goes on the way from source to milk, g: what goes in equals what comes out, to rounding.
 * Streams of no mass are left out. Null where the balance can't be had, or a measured figure fits none; its cell says so.
 * Source: conservation of mass.
 */
export function flowsOf(formulation: Formulation): Flows | null {
  const { of, evaluation } = formulation;
  const source = of('sourceMass');
  const own = of('ownLiquid');
  const water = of('waterRatio') * source - own;
  const into = [
    { id: 'source', label: 'Source', mass: source },
    { id: 'uptake', label: 'Water taken up in soaking', mass: source * evaluation.c('uptake') },
    { id: 'ownLiquid', label: 'Its own liquid', mass: own },
    { id: 'water', label: 'Water to blend', mass: water },
  ] as const;
  const milk = of('milkMass');
  const out = [
    { id: 'milk', label: 'Milk', mass: milk },
    { id: 'pulp', label: 'Wet pulp', mass: of('pulpMass') },
    { id: 'lost', label: 'Left on sides and cloth', mass: of('lost') },
    { id: 'leached', label: 'Sugar in the drained soaking water', mass: of('leached') },
  ] as const;
  const total = into.reduce((sum, { mass }) => sum + mass, 0);
  if (!Number.isFinite(total) || !Number.isFinite(milk) || total <= 0) return null;
  const told = out.reduce((sum, { mass }) => sum + mass, 0);
  if (!nearly(told, total)) return null;
  const withShare = (flow: Omit<Flow, 'share'>): Flow => ({ ...flow, share: flow.mass / total });
  return {
    into: into.filter(({ mass }) => mass > 0).map(withShare),
    out: out.filter(({ mass }) => mass > 0).map(withShare),
    total,
  };
}
