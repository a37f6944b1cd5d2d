import type { Origin } from '../../reference/origins';
import type { NumericRowId } from '../order';

/** The steps of a batch in the order of the work; a batch has those that its source and recipe need. */
export const stepOrder = [
  'choose',
  'soak',
  'drain',
  'heatSource',
  'blend',
  'strain',
  'heatMilk',
  'sweeten',
  'cool',
  'culture',
  'cover',
  'wait',
  'lift',
  'bottle',
  'second',
  'chill',
  'keep',
] as const;
export type StepId = (typeof stepOrder)[number];

export interface StepNote {
  readonly text: string;
  readonly caution: boolean;
  readonly origin: Origin;
}

export interface Step {
  readonly id: StepId;
  /** Two or three words. */
  readonly title: string;
  /** Plain sentences with the amounts in them. */
  readonly text: string;
  /** What each jar gets, where there are several. */
  readonly perJar?: string;
  readonly notes: readonly StepNote[];
}

/** A step without what the tables have to say to it. */
export type StepDraft = Omit<Step, 'notes'>;

/** Writes a row's value as this cook reads it. Never asked for a row that has no value. */
export type WriteAmount = (row: NumericRowId) => string;
