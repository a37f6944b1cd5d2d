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
    words: 'sweetener',
    formula: '+ {sugarRate} ÷ 1000 ÷ {fermentable} × {sweetenerRoom}',
    rule: (x) => (x.of('sugarRate') / 1000 / x.of('fermentable')) * x.of('sweetenerRoom'),
  },
} satisfies Partial<Parts>;

const byWeight = {
  sweetener: {
    words: 'sweetener',
    formula: '+ {sweetenerMass} × {sweetenerRoom}',
    rule: (x) => x.of('sweetenerMass') * x.of('sweetenerRoom'),
  },
} satisfies Partial<Parts>;

/** One way for each of: both parts, one alone, neither. `start` is `1 ` or nothing, and is what neither leaves. */
function eachWay(words: string, start: '1 ' | '', parts: Parts): Term['ways'] {
  const one = start === '' ? 0 : 1;
  const alone = ({ formula }: Way): string => (start === '' ? formula.replace(/^\+ /, '') : `${start}${formula}`);
  const { sweetener, grains } = parts;
  return {
    both: {
      words: `${words}sweetener and grains.`,
      formula: `${alone(sweetener)} ${grains.formula}`,
      rule: (x) => one + sweetener.rule(x) + grains.rule(x),
    },
    sweetener: { words: `${words}sweetener.`, formula: alone(sweetener), rule: (x) => one + sweetener.rule(x) },
    grains: { words: `${words}grains.`, formula: alone(grains), rule: (x) => one + grains.rule(x) },
    neither: { words: `${words}none.`, formula: `${one}`, rule: () => one },
  };
}

/** What joins the jars to the milk: fills, headspaces, and the room that grains and sweetener take. */
export const fillTerms = {
  headspaceAsked: {
    label: 'Headspace to keep',
    symbol: 'h*',
    kind: 'length',
    ways: {
      usual: { words: 'The usual headspace.', formula: '{headspaceUsual}', rule: (x) => x.c('headspaceUsual') },
      typed: { words: 'The headspace you typed.', formula: '{headspaceTyped}', rule: typedHeadspace },
    },
  },
  fillAllowed: {
    label: 'Fill that keeps the headspace, each jar',
    symbol: 'F*',
    kind: 'volume',
    ways: {
      byDepth: {
        words: 'Brimful capacity less the room above the headspace to keep.',
        formula: '{brimful} − {roomAsked}',
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
        words: 'Milk, and the room that the dissolved sweetener and the grains take.',
        formula: '{milkVolume} + {sweetenerMass} × {sweetenerRoom} + {grainMass} ÷ {grainDensity}',
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
    ways: eachWay('One mL of milk, and the room of what goes in at a rate: ', '1 ', {
      sweetener: perMilk.sweetener,
      grains: {
        words: 'grains',
        formula: '+ {grainRate} ÷ 1000 ÷ {grainDensity}',
        rule: (x) => x.of('grainRate') / 1000 / x.c('grainDensity'),
      },
    }),
  },
  fixedRoom: {
    label: 'Room of what was typed by weight',
    symbol: 'F₀',
    kind: 'volume',
    ways: eachWay('Room of what was typed by weight, so that it does not grow with the batch: ', '', {
      sweetener: byWeight.sweetener,
      grains: {
        words: 'grains',
        formula: '+ {grainMass} ÷ {grainDensity}',
        rule: (x) => x.of('grainMass') / x.c('grainDensity'),
      },
    }),
  },
  drinkPerMilk: {
    label: 'Kefir per mL of milk',
    symbol: 'δ',
    kind: 'count',
    unit: 'mL/mL',
    ways: eachWay('One mL of milk, with what goes in at a rate, less what clings to the grains: ', '1 ', {
      sweetener: perMilk.sweetener,
      grains: {
        words: 'grains',
        formula: '− {grainRate} ÷ 1000 × {cling}',
        rule: (x) => -(x.of('grainRate') / 1000) * x.c('cling'),
      },
    }),
  },
  drinkFixed: {
    label: 'Kefir from what was typed by weight',
    symbol: 'D₀',
    kind: 'volume',
    ways: eachWay('Room of sweetener typed by weight, less what clings to grains typed by weight: ', '', {
      sweetener: byWeight.sweetener,
      grains: {
        words: 'grains',
        formula: '− {grainMass} × {cling}',
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
