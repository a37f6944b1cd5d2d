import { wholeDepth } from '../../models/vessel';
import type { Plan } from '../../recipe/sizing';
import { jarProfile } from '../jar-profile';
import type { Ways } from '../row';

const sweetenerPerMilk = '{sugarRate} ÷ 1000 ÷ {fermentable} × {sweetenerRoom}';
const sweetenerByWeight = '{sweetenerMass} × {sweetenerRoom}';
const roomOfGrains = '{grainMass} ÷ {grainDensity}';

/** What joins the jars to the milk: fills, headspaces, and the room that grains and sweetener take. */
export const fillTerms = {
  headspaceAsked: { usual: 'the most of {headspaceUsual}, {shareDepth}', typed: '{headspaceTyped}' },
  fillAllowed: {
    byDepth: {
      formula: '{brimful} − {roomAsked}',
      guard: (x, allowed) =>
        allowed <= 0
          ? x.fail({ code: 'headspaceTooDeep', at: 'headspaceDepth', depth: wholeDepth(jarProfile(x)) })
          : allowed,
    },
  },
  fillMost: {
    asked: '{fillAllowed}',
    usual: {
      formula: '{brimful} − the most of {roomAboveUsual}, {headspaceShareLeast} ÷ 100 × {brimful}',
      guard: (x, most) =>
        most <= 0 ? x.fail({ code: 'headspaceTooDeep', at: 'headspaceDepth', depth: wholeDepth(jarProfile(x)) }) : most,
    },
  },
  totalFill: { sum: `{milkVolume} + ${sweetenerByWeight} + ${roomOfGrains}` },
  roomPerMilk: {
    both: `1 + ${sweetenerPerMilk} + {grainRate} ÷ 1000 ÷ {grainDensity}`,
    sweetener: `1 + ${sweetenerPerMilk}`,
    grains: '1 + {grainRate} ÷ 1000 ÷ {grainDensity}',
    neither: '1',
  },
  fixedRoom: {
    both: `${sweetenerByWeight} + ${roomOfGrains}`,
    sweetener: sweetenerByWeight,
    grains: roomOfGrains,
    neither: '0',
  },
  drinkPerMilk: {
    both: `1 + ${sweetenerPerMilk} − {grainRate} ÷ 1000 × {cling}`,
    sweetener: `1 + ${sweetenerPerMilk}`,
    grains: '1 − {grainRate} ÷ 1000 × {cling}',
    neither: '1',
    bothStay: `1 + ${sweetenerPerMilk} + {grainRate} ÷ 1000 ÷ {grainDensity}`,
    grainsStay: '1 + {grainRate} ÷ 1000 ÷ {grainDensity}',
  },
  drinkFixed: {
    both: `${sweetenerByWeight} − {grainMass} × {cling}`,
    sweetener: sweetenerByWeight,
    grains: '− {grainMass} × {cling}',
    neither: '0',
    bothStay: `${sweetenerByWeight} + ${roomOfGrains}`,
    grainsStay: roomOfGrains,
  },
} satisfies Record<string, Ways>;

/** The way a term of the fill takes: of sweetener and grains, those that grow with the batch, or those that do not. */
export function fillWay(id: string, plan: Plan): string | undefined {
  if (id === 'headspaceAsked') return plan.asksHeadspace ? 'typed' : 'usual';
  if (id === 'fillMost') return plan.asksHeadspace ? 'asked' : 'usual';
  if (id === 'fixedRoom') return wayName(plan.sweetenerFixed, plan.grainsFixed);
  if (id === 'drinkFixed') return drinkWay(wayName(plan.sweetenerFixed, plan.grainsFixed), plan);
  const sweetens = !plan.sweetenerFixed && plan.sugarBy !== 'none';
  if (id === 'roomPerMilk') return wayName(sweetens, !plan.grainsFixed);
  return id === 'drinkPerMilk' ? drinkWay(wayName(sweetens, !plan.grainsFixed), plan) : undefined;
}

/** Of what stays in the drink its room counts; of grains, what clings to them is lost. */
function drinkWay(name: ReturnType<typeof wayName>, { stays }: Plan): string {
  return stays && (name === 'both' || name === 'grains') ? `${name}Stay` : name;
}

function wayName(sweetener: boolean, grains: boolean): 'both' | 'sweetener' | 'grains' | 'neither' {
  if (sweetener) return grains ? 'both' : 'sweetener';
  return grains ? 'grains' : 'neither';
}
