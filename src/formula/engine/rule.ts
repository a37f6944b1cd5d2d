import { wholeAbove } from '../../measure/nearly';
import { coefficientSlot, isCoefficient } from '../recipe/coefficients';
import { figureValue } from '../rows/figure-values';
import type { Access, Way } from '../rows/row';
import { type Pairing, readFormula } from './expression';
import { slots } from './slots';

/** What works a term out, bound to the places of what goes into it. */
export type Rule = (x: Access) => number;

const larger = (left: Rule, right: Rule) => (x: Access) => Math.max(left(x), right(x));

const pairs: Readonly<Record<Pairing, (left: Rule, right: Rule) => Rule>> = {
  '+': (left, right) => (x) => left(x) + right(x),
  '−': (left, right) => (x) => left(x) - right(x),
  '×': (left, right) => (x) => left(x) * right(x),
  '÷': (left, right) => (x) => left(x) / right(x),
  // What can't be had stays so: to the power of 0 it would count as 1.
  '^': (left, right) => (x) => {
    const base = left(x);
    return Number.isNaN(base) ? base : base ** right(x);
  },
  'the warmer of': larger,
  'the most of': larger,
  ', if above 0': larger,
  ', never below 0': larger,
  ', at least 1': larger,
  ', rounded up': (left) => (x) => wholeAbove(left(x)),
  ', rounded': (left) => (x) => Math.round(left(x)),
};

function bindLeaf(text: string): Rule {
  const value = Number(text);
  if (/^\d/.test(text)) return () => value;
  const name = text.slice(1, -1);
  const slot = slots.get(name);
  if (slot !== undefined) return (x) => x.at(slot);
  if (!isCoefficient(name)) return figureValue(name);
  const place = coefficientSlot(name);
  return (x) => x.settled.coefficients[place] ?? Number.NaN;
}

function bind(formula: string): Rule {
  return readFormula(formula, bindLeaf, (op, left, right) => pairs[op](left, right));
}

const rules = new Map<Way, Rule>();

/** The rule of a way, bound when it is first taken. */
export function ruleOf(way: Way): Rule {
  const known = rules.get(way);
  if (known !== undefined) return known;
  const rule = bindWay(way);
  rules.set(way, rule);
  return rule;
}

function bindWay(way: Way): Rule {
  if (typeof way === 'function') return way;
  if (typeof way === 'string') return bind(way);
  const reckon = bind(way.formula);
  return (x) => way.guard(x, reckon(x));
}
