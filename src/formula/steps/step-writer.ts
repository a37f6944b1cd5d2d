import { convertNumber, type Kind, units } from '../../measure/units';
import { writeMetric, writeNumber, writeTrimmed, writeUS } from '../../measure/write-quantity';
import { acidTime } from '../../reference/acid-time';
import { kitchen as limits } from '../../reference/kitchen';
import type { Formulation } from '../engine/formulate';
import type { NumericRowId } from '../recipe/order';
import { bothUnits } from '../words/both-units';
import { labelOf } from '../words/labels';
import { type Kitchen, type Written, writeNumeric, writeValue } from '../words/write-row';
import { markAmount } from './marked';
import type { WriteAmount } from './step';

/** Writes the amounts of one batch into the sentences of its steps, marked as amounts. */
export class StepWriter {
  constructor(
    readonly formulation: Formulation,
    private readonly write: WriteAmount,
    private readonly kitchen: Kitchen | undefined,
  ) {}

  /** The value of a row, or null where it has none. */
  value(row: NumericRowId): number | null {
    const { value } = this.formulation.rows[row];
    return typeof value === 'number' ? value : null;
  }

  /** A row's amount as the cook reads it; where the sheet can't work it out, which row has to be mended first. */
  amount(row: NumericRowId): string {
    const { value, problems } = this.formulation.rows[row];
    if (value !== null) return markAmount(this.write(row));
    const waiting = problems.find(({ code }) => code === 'waits');
    const root = waiting?.code === 'waits' ? waiting.for : row;
    return `the amount the sheet gives once “${labelOf(root)}” is mended`;
  }

  /** A row's amount with what it is: expected, or read off while making it. */
  outcome(row: NumericRowId, name: string): string {
    const { status } = this.formulation.rows[row];
    return `${status === 'measured' ? 'Measured' : 'Expected'} ${name}: ${this.amount(row)}.`;
  }

  /** The part of a row's amount that one jar gets; null for a single jar and where the amount is not known. */
  eachJar(row: NumericRowId): string | null {
    const [value, jars] = [this.value(row), this.value('vesselCount')];
    return value === null || jars === null || jars <= 1 ? null : this.share(row, 1 / jars);
  }

  /** A share (0 to 1) of a row's amount; null where the amount is not known. */
  share(row: NumericRowId, share: number): string | null {
    const value = this.value(row);
    if (value === null) return null;
    if (this.kitchen !== undefined) return this.lead(writeNumeric(this.formulation, row, value * share, this.kitchen));
    const { kind } = this.formulation.rows[row];
    return kind === 'choice' ? null : this.quantity(value * share, kind);
  }

  /** A quantity that has no row, in base units of its kind. */
  quantity(value: number, kind: Kind): string {
    if (this.kitchen !== undefined) return this.lead(writeValue(value, kind, null, this.kitchen));
    return this.lead({ metric: writeMetric(value, kind, false), us: writeUS(value, kind, false) });
  }

  /** Seconds as one counts them at a blender: minutes from two on where they are whole. */
  seconds(value: number): string {
    const minutes = convertNumber(value, 's', 'min');
    const [amount, unit] = Number.isInteger(minutes) && minutes > 1 ? [minutes, units.min] : [value, units.s];
    return markAmount(`${writeTrimmed(amount, 0, this.kitchen?.decimalComma ?? false)}\u00A0${unit.symbol}`);
  }

  minutes(value: number): string {
    return this.quantity(convertNumber(value, 'min', 'h'), 'time');
  }

  /** The acidity that kefir has to reach. */
  acidityLine(): string {
    return this.acidity(limits.acidityLine.value);
  }

  /** How far down a milk is that turns, though it is not there yet. */
  onItsWay(): string {
    return `${this.acidity(acidTime.onItsWay.value)} or less`;
  }

  acidity(value: number, to = value): string {
    const [low, high] = [value, to].map((end) => writeNumber(end, 1, this.kitchen?.decimalComma ?? false));
    return low === high ? `pH ${low}` : `pH ${low} to ${high}`;
  }

  /** Under which kefir alone goes on to what follows. */
  onlyAcid(): string {
    return `Only at ${this.acidityLine()} or less, by strip or meter.`;
  }

  private lead(written: Pick<Written, 'metric' | 'us'>): string {
    return markAmount(bothUnits(written, this.kitchen?.leads ?? 'metric'));
  }
}

/** Sentences in a row, leaving out those that don't apply. */
export function say(...sentences: readonly (string | null)[]): string {
  return sentences.filter((sentence) => sentence !== null && sentence !== '').join(' ');
}
