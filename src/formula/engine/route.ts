import type { NumericRowId } from '../recipe/order';
import type { Plan } from '../recipe/sizing';
import type { Access, NumericRow, TermId, Way } from '../rows/row';
import { numericRows } from '../rows/sheet';
import { fillWay } from '../rows/terms/fill';
import { type Rule, ruleOf } from './rule';
import { termIds } from './slots';
import { isRow, waysOf } from './ways-of';

/** How each term comes about by a plan, by its slot: found once for all batches of which the same is typed. */
export interface Route {
  readonly plan: Plan;
  /** The names of the ways, under which they are told too. */
  readonly names: readonly string[];
  readonly rules: readonly Rule[];
  /** Whether there is no such quantity, which counts as 0; undefined of what is always there. */
  readonly absent: readonly NumericRow['absent'][];
}

const routes = new WeakMap<Plan, Route>();
const routesKnowing = new WeakMap<Plan, Route>();

/** The route of a plan. `knowsSugarLeft`: whether somebody measured the sugar that was left when straining. */
export function routeOf(plan: Plan, knowsSugarLeft: boolean): Route {
  const among = knowsSugarLeft ? routesKnowing : routes;
  const route = among.get(plan) ?? makeRoute(plan, knowsSugarLeft);
  among.set(plan, route);
  return route;
}

function makeRoute(plan: Plan, knowsSugarLeft: boolean): Route {
  const names = termIds.map((id) => wayName(id, plan, knowsSugarLeft));
  const isTyped = (id: TermId): id is NumericRowId => isRow(id) && plan.accepted.has(id);
  return {
    plan,
    names,
    rules: termIds.map((id, slot) =>
      isTyped(id) ? (x: Access) => x.typed(id) : ruleOf(wayCalled(names[slot] ?? '', id)),
    ),
    absent: termIds.map((id) => (isRow(id) && !plan.accepted.has(id) ? numericRows[id].absent : undefined)),
  };
}

function wayName(id: TermId, plan: Plan, knowsSugarLeft: boolean): string {
  const ways = waysOf(id);
  const name = isRow(id) ? plan.ways[id] : sharedWay(id, plan, knowsSugarLeft);
  return (name !== undefined && name in ways ? name : Object.keys(ways)[0]) ?? '';
}

function sharedWay(id: string, plan: Plan, knowsSugarLeft: boolean): string | undefined {
  if (id === 'sugarForgotten' || id === 'gasLeast' || id === 'gasMost') return knowsSugarLeft ? 'measured' : 'all';
  if (id === 'liquid') return plan.stays ? 'whole' : 'fill';
  if (id === 'drinkSugar' || id === 'drinkSugarMost') return plan.stays ? 'withStarter' : 'perLiquid';
  return fillWay(id, plan);
}

/** A way by its name. */
export function wayCalled(name: string, id: TermId): Way {
  const way = waysOf(id)[name];
  if (way === undefined) throw new Error(id);
  return way;
}
