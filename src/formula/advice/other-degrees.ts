import { convertNumber } from '../../measure/units';
import { writeTrimmed } from '../../measure/write-quantity';
import { isWithinModels } from '../models/ripening';
import type { NumericRowId } from '../recipe/order';
import type { WayOut } from './way-out';

/**
 * The same number in the other degrees, where only those make a room of it: 70 is no room in °C, nor 21 in °F.
 * `celsius` is how it was read. None for a number finer than a tenth, which nobody types of a room.
 */
export function inOtherDegrees(row: NumericRowId, celsius: number): readonly WayOut[] {
  const fahrenheit = convertNumber(celsius, '°C', '°F');
  const readings = [
    { number: celsius, unit: '°F', amount: convertNumber(celsius, '°F', '°C') },
    { number: fahrenheit, unit: '°C', amount: fahrenheit },
  ];
  return readings
    .filter(({ number, amount }) => isWithinModels(amount) && isInTenths(number))
    .map(({ number, unit, amount }) => {
      const text = `${writeTrimmed(number, 1, false)} ${unit}`;
      return { label: `Make it ${text}`, changes: [{ do: 'type', row, text, kind: 'temperature', amount }] };
    });
}

function isInTenths(number: number): boolean {
  return writeTrimmed(number, 1, false) === writeTrimmed(number, 2, false);
}
