import { depthBelowRim, roomAbove, wholeDepth } from '../models/vessel';
import type { Plan } from '../plan';
import { jarProfile } from '../profile';
import type { Access, Term, Way } from '../row';

interface Parts {
  readonly sweetener: Way;
  readonly grains: Way;
}

const perMilk = {
  sweetener: {
    rule: (x) => (x.of('sugarRate') / 1000 / x.of('fermentable')) * x.of('sweetenerRoom'),
  },
} satisfies Partial<Parts>;

const byWeight = {
  sweetener: {
    rule: (x) => x.of('sweetenerMass') * x.of('sweetenerRoom'),
  },
} satisfies Partial<Parts>;

/** One way for each of: both parts, one alone, neither. `one` is what neither leaves. */
function eachWay(one: 0 | 1, parts: Parts): Term['ways'] {
  const { sweetener, grains } = parts;
  return {
    both: {
      rule: (x) => one + sweetener.rule(x) + grains.rule(x),
    },
    sweetener: { rule: (x) => one + sweetener.rule(x) },
    grains: { rule: (x) => one + grains.rule(x) },
    neither: { rule: () => one },
  };
}

/** What joins the jars to the milk: fills, headspaces, and the room that grains and sweetener take. */
export const fillTerms = {
  headspaceAsked: {
    label: 'Headspace to keep',
    symbol: 'h*',
    kind: 'length',
    ways: {
      usual: { rule: (x) => x.c('headspaceUsual') },
      typed: { rule: typedHeadspace },
    },
  },
  fillAllowed: {
    label: 'Fill that keeps the headspace, each jar',
    symbol: 'F*',
    kind: 'volume',
    ways: {
      byDepth: {
        rule: (x) => {
          const jar = jarProfile(x);
          const allowed = x.of('brimful') - roomAbove(jar, x.of('headspaceAsked'));
          return allowed <= 0
            ? x.fail({ code: 'headspaceTooDeep', at: 'headspaceDepth', depth: wholeDepth(jar) })
            : allowed;
        },
      },
    },
  },
  totalFill: {
    label: 'Fill, all jars',
    symbol: 'ΣF',
    kind: 'volume',
    ways: {
      sum: {
        rule: (x) =>
          x.of('milkVolume') + x.of('sweetenerMass') * x.of('sweetenerRoom') + x.of('grainMass') / x.c('grainDensity'),
      },
    },
  },
  roomPerMilk: {
    label: 'Fill per mL of milk, sweetener and grains in',
    symbol: 'φ',
    kind: 'count',
    unit: 'mL/mL',
    ways: eachWay(1, {
      sweetener: perMilk.sweetener,
      grains: {
        rule: (x) => x.of('grainRate') / 1000 / x.c('grainDensity'),
      },
    }),
  },
  fixedRoom: {
    label: 'Room of what was typed by weight',
    symbol: 'F₀',
    kind: 'volume',
    ways: eachWay(0, {
      sweetener: byWeight.sweetener,
      grains: {
        rule: (x) => x.of('grainMass') / x.c('grainDensity'),
      },
    }),
  },
  drinkPerMilk: {
    label: 'Kefir per mL of milk',
    symbol: 'δ',
    kind: 'count',
    unit: 'mL/mL',
    ways: eachWay(1, {
      sweetener: perMilk.sweetener,
      grains: {
        rule: (x) => -(x.of('grainRate') / 1000) * x.c('cling'),
      },
    }),
  },
  drinkFixed: {
    label: 'Kefir from what was typed by weight',
    symbol: 'D₀',
    kind: 'volume',
    ways: eachWay(0, {
      sweetener: byWeight.sweetener,
      grains: {
        rule: (x) => -x.of('grainMass') * x.c('cling'),
      },
    }),
  },
} satisfies Record<string, Term>;

/** The way a term of the fill takes: of sweetener and grains, those that grow with the batch, or those that do not. */
export function fillWay(id: string, plan: Plan): string | undefined {
  if (id === 'headspaceAsked') return plan.asksHeadspace ? 'typed' : 'usual';
  if (id === 'fixedRoom' || id === 'drinkFixed') return wayName(plan.sweetenerFixed, plan.grainsFixed);
  const sweetens = !plan.sweetenerFixed && plan.sugarBy !== 'none';
  return id === 'roomPerMilk' || id === 'drinkPerMilk' ? wayName(sweetens, !plan.grainsFixed) : undefined;
}

function wayName(sweetener: boolean, grains: boolean): keyof Parts | 'both' | 'neither' {
  if (sweetener) return grains ? 'both' : 'sweetener';
  return grains ? 'grains' : 'neither';
}

/** The headspace to keep: the depth typed, or the depth of the room typed; of both, the one typed first. */
function typedHeadspace(x: Access): number {
  const depth = x.plan.against.has('headspaceDepth') ? Number.NaN : x.typed('headspaceDepth');
  return Number.isNaN(depth) ? depthBelowRim(jarProfile(x), x.typed('headspaceVolume')) : depth;
}
