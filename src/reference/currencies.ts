import { fromMemory, type Origin } from './origins';

/** How money is written: with two decimals, but for currencies that have no smaller coin, or thousandths. */
export const currencies: {
  readonly places: number;
  readonly others: readonly { readonly places: number; readonly signs: readonly string[] }[];
  readonly origin: Origin;
} = {
  places: 2,
  others: [
    {
      places: 0,
      signs: [
        '¥',
        '￥',
        '円',
        'JPY',
        '₩',
        '원',
        'KRW',
        '₫',
        'VND',
        'CLP',
        'ISK',
        'XAF',
        'XOF',
        'XPF',
        'UGX',
        'RWF',
        'PYG',
      ],
    },
    { places: 3, signs: ['KWD', 'BHD', 'OMR', 'JOD', 'TND', 'IQD', 'LYD'] },
  ],
  origin: fromMemory('The minor units of ISO 4217.'),
};
