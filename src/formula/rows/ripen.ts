import { kitchen } from '../../reference/kitchen';
import { atThisDoseAndSugar } from '../dose-and-sugar';
import { isWithinModels } from '../models/ripening';
import { outsideModels } from '../outside-models';
import type { NumericRow } from '../row';
import { usualRange } from '../usual-range';

export const roomTemperature: NumericRow = {
  label: 'Room temperature',
  symbol: 'T',
  kind: 'temperature',
  typed: 'rate',
  range: { least: -20, most: 60, zero: true },
  usual: () => usualRange(kitchen.roomTemperature),
  ways: { usual: { rule: (x) => x.c('roomUsual') } },
};

export const readyTime: NumericRow = {
  label: 'Ready to taste after',
  symbol: 't',
  kind: 'time',
  typed: 'never',
  range: { least: 0, most: 10000 },
  bounds: { low: 'readySoonest', high: 'readyLatest' },
  ways: {
    ripening: {
      rule: (x) => {
        const celsius = x.of('roomTemperature');
        if (Number.isNaN(celsius)) return celsius;
        if (!isWithinModels(celsius)) return x.fail(outsideModels('readyTime', celsius));
        const sugar = x.of('startingSugar');
        if (sugar <= 0) return x.fail({ code: 'nothingToRipen', at: 'readyTime' });
        const hours = (x.c('readyUsual') * x.of('asLong') * atThisDoseAndSugar(x)) / x.c('pace');
        // A trace of sugar would take longer than a number can say.
        return hours === Number.POSITIVE_INFINITY ? x.fail({ code: 'nothingToRipen', at: 'readyTime' }) : hours;
      },
    },
  },
};
