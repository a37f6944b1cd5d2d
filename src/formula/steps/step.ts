import type { Origin } from '../../reference/origins';
import type { MeasuredRowId, NumericRowId } from '../recipe/order';
import type { TextPart } from './marked';

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
  /** All of these sentences, taken apart into words and amounts. */
  readonly parts: readonly TextPart[];
  /** How long there is to wait at this step before the next thing to do, h; null where there is nothing to wait for. */
  readonly wait: number | null;
  /** What a scale or a jug can say at this step. */
  readonly measured: readonly MeasuredRowId[];
  readonly notes: readonly StepNote[];
}

/** A step as it is written, its amounts marked, without what follows from it and what the tables have to say to it. */
export type StepDraft = Pick<Step, 'id' | 'title' | 'text' | 'perJar'>;

/** Writes a row's value as this cook reads it. Never asked for a row that has no value. */
export type WriteAmount = (row: NumericRowId) => string;
