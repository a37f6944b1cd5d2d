/** Minutes since 1970-01-01T00:00Z, whole: elapsed time, so a night in which clocks change is as long as it is. */
export type Instant = number;

export interface TimelineEvent {
  /** Stable within a batch: soak, make, taste, strain, bottle, chill, drink, best, last, check-1… */
  readonly id: string;
  /** Batch id. */
  readonly batch: string;
  readonly batchName: string;
  /** The time its batch was planned for, to start or to drink: another time is another plan. */
  readonly plannedFor: Instant;
  /** Short: “Strain the grains out”. */
  readonly title: string;
  /** What to do, a sentence or three, amounts included where useful. */
  readonly text: string;
  readonly at: Instant;
  /** How long hands are needed, in minutes; 0 for a mark such as the last drinkable day. */
  readonly minutes: number;
  readonly hands: boolean;
}
