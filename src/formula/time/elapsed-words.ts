import { convertNumber } from '../../measure/units';
import { writeTrimmed } from '../../measure/write-quantity';
import { dayMinutes } from './span';

const hardSpace = '\u00A0';

/** Elapsed minutes, whole and not negative, as a cook says them: 45 min, 10 h 15 min; from three days on 7.9 days. */
export function writeElapsed(minutes: number, decimalComma: boolean): string {
  if (minutes > 2 * dayMinutes + dayMinutes) {
    return `${writeTrimmed(minutes / dayMinutes, 1, decimalComma)}${hardSpace}days`;
  }
  const whole = Math.floor(convertNumber(minutes, 'min', 'h'));
  const rest = Math.round(minutes - convertNumber(whole, 'h', 'min'));
  const hours = `${whole}${hardSpace}h`;
  if (rest === 0 && whole > 0) return hours;
  const short = `${rest}${hardSpace}min`;
  return whole === 0 ? short : `${hours} ${short}`;
}
