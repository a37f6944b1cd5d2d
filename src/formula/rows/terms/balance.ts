import type { Ways } from '../row';

/** The stages of the mass balance between source and milk. */
export const balanceTerms = {
  sourceWeight: { cup: (x) => x.settled.treated.weight ?? Number.NaN },
  sourceSugars: {
    composition: (x) => {
      const ratio = x.of('waterRatio');
      if (Number.isNaN(ratio)) return ratio;
      const { sugars, own } = x.settled.at(ratio).reduced.strain;
      return sugars + own.sugars;
    },
  },
  sourceSolids: { composition: (x) => x.reduced().nonSugar },
  leached: { share: '{sourceMass} × {totalSugars} × {leaching}' },
  slurryMass: { balance: '{sourceMass} × {slurryPerGram}' },
  slurryVolume: { balance: '{sourceMass} × {slurryVolumePerGram}' },
  heldBack: { balance: (x) => x.stages()?.heldBack ?? Number.NaN },
  milkPerGram: { balance: (x) => x.stages()?.milkVolume ?? Number.NaN },
  usualMilk: { usual: '{usualSourceMass} × {usualMilkPerGram}' },
  milkMass: { balance: '{sourceMass} × {milkBeforeLoss} × (1 − {handlingLoss})' },
  milkDensity: { composition: '{densityOfMilk}' },
  usualMilkDensity: { usual: '{densityOfUsualMilk}' },
  lost: { balance: '{sourceMass} × {milkBeforeLoss} × {handlingLoss}' },
  ownLiquid: { balance: '{sourceMass} × {ownUsed}' },
  waterDensity: { plain: '{waterWeighs} ÷ 1000' },
} satisfies Record<string, Ways>;
