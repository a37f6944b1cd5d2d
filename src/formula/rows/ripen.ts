import { kitchen } from '../../reference/kitchen';
import { isWithinModels } from '../models/ripening';
import { outsideModels } from './outside-models';
import type { NumericRow } from './row';
import { usualRange } from './usual-range';

export const roomTemperature: NumericRow = {
  label: 'Room temperature',
  kind: 'temperature',
  typed: 'rate',
  range: { least: -20, most: 60, zero: true },
  usual: () => usualRange(kitchen.roomTemperature),
  ways: { usual: '{roomUsual}' },
};

export const readyTime: NumericRow = {
  label: 'Ready to taste after',
  kind: 'time',
  typed: 'never',
  range: { least: 0, most: 10000 },
  bounds: { low: 'readySoonest', high: 'readyLatest' },
  ways: {
    ripening: {
      formula: '{readyUsual} × {slower} × {asLong} × {atDoseAndSugar} ÷ ({pace} × {paceOfGrains} × {paceOfSource})',
      guard: (x, hours) => {
        const celsius = x.of('roomTemperature');
        if (Number.isNaN(celsius)) return celsius;
        if (!isWithinModels(celsius)) return x.fail(outsideModels('readyTime', celsius));
        // A trace of sugar would take longer than a number can say.
        const isEndless = x.of('startingSugar') <= 0 || hours === Number.POSITIVE_INFINITY;
        return isEndless ? x.fail({ code: 'nothingToRipen', at: 'readyTime' }) : hours;
      },
    },
  },
};
