import { convertNumber } from '../../measure/units';
import { handwork } from '../../reference/handwork';
import { isFromItsMaker } from '../advice/caution-conditions';
import type { Formulation } from '../engine/formulate';
import { plainText } from '../steps/marked';
import type { WriteAmount } from '../steps/step';
import { StepWriter, say } from '../steps/step-writer';
import { writeElapsed } from '../time/elapsed-words';
import type { TimelineEvent } from '../time/event';
import { turnTimeOf } from '../time/turn-time';
import { cultureNoun } from '../words/culture-words';
import type { Kitchen } from '../words/write-row';
import type { BatchPlan } from './plan-batch';
import type { PlannedStep, PlannedWait, Schedule, StepKind, WaitKind } from './schedule';
import { mayTake, standsAbout } from './work-out-making';

/**
 * Everything planned of a batch as events with their words, in order. Rows are written by `write`, times as `kitchen`
 * reads them. Hours in the words are elapsed hours; what day and time an event is at follows from its instant.
 */
export function eventsOf(
  { schedule, wanted }: Pick<BatchPlan, 'schedule' | 'wanted'>,
  formulation: Formulation,
  write: WriteAmount,
  kitchen: Kitchen,
): readonly TimelineEvent[] {
  const words = new EventWords(schedule, new StepWriter(formulation, write, kitchen), kitchen.decimalComma);
  return schedule.steps.map((step) => {
    const { id, at, minutes, hands } = step;
    const text = plainText(words[step.kind](step));
    const of = { batch: schedule.batch, batchName: schedule.name, plannedFor: wanted.at };
    return { id, ...of, title: words.title(step), text, at, minutes, hands };
  });
}

/** What a step is called. */
export function titleOf({ kind }: PlannedStep, isLiquid: boolean, hasGrains: boolean): string {
  if (kind === 'strain' && !hasGrains) return 'Stir it and put it in the cold';
  return kind === 'make' && isLiquid ? 'Pour the milk and set up the jar' : titles[kind];
}

const titles: Readonly<Record<StepKind, string>> = {
  soak: 'Put it to soak',
  make: 'Make the milk and set up the jar',
  taste: 'Taste it for the first time',
  check: 'Taste it and test its pH',
  strain: 'Strain the grains out',
  bottle: 'Bottle it',
  chill: 'Put the bottles into the fridge',
  drink: 'Drink the first glass',
  best: 'Taste it by this day',
  last: 'Last day to drink it',
};

/** Nothing but the night makes a wait other than likely. */
const awake = ', to keep out of the quiet hours';

/** The words of each kind of step of one batch. */
class EventWords implements Readonly<Record<StepKind, (step: PlannedStep) => string>> {
  constructor(
    private readonly schedule: Schedule,
    private readonly writer: StepWriter,
    private readonly decimalComma: boolean,
  ) {}

  title(step: PlannedStep): string {
    const { source, grain } = this.writer.formulation.choices;
    return titleOf(step, source.form === 'liquid', grain.starter === undefined);
  }

  soak(): string {
    const { soak, plural } = this.writer.formulation.choices.source;
    return say(
      `Cover ${this.writer.amount('sourceMass')} of ${plural} with water: ${this.writer.amount('soakWater')}.`,
      soak?.place === 'refrigerator'
        ? `Into the fridge${this.forAbout('soak')}.`
        : this.flexed('soak', 'Let it soak for'),
    );
  }

  make(): string {
    const { source, sweetener, grain } = this.writer.formulation.choices;
    const sweet = sweetener.map(({ entry }) => entry.name).join(' and ');
    const milk =
      source.form === 'liquid'
        ? `Pour the ${source.plural}: ${this.writer.amount('sourceMass')}.`
        : `Blend the ${source.plural} with water, ${this.writer.amount('blendWater')}, and strain: ${this.writer.amount('milkVolume')} of milk.`;
    const isSweet = this.writer.value('sweetenerMass') !== 0;
    return say(
      this.inTurns(),
      this.flexed('soak', 'Soaked'),
      milk,
      isSweet ? `${sweet}: ${this.writer.amount('sweetenerMass')}.` : null,
      `${grain.name}: ${this.writer.amount('grainMass')}. Fill the jars and cover them so that gas escapes.`,
    );
  }

  taste(): string {
    const isHome = !isFromItsMaker(this.writer.formulation);
    return say(
      'From here on it may be ready: taste it, and see whether it is sour enough for you.',
      isHome ? `Measure its pH too: at ${this.writer.onItsWay()} and falling, let it go on.` : null,
      this.likely('ferment', 'Likely ready', `after ${this.culture} went in`),
    );
  }

  check({ id }: PlannedStep): string {
    if (!isFromItsMaker(this.writer.formulation)) {
      const may = `At ${this.writer.acidityLine()} or less, by strip or meter, it may stand on until you strain it.`;
      return say(may, this.notThere());
    }
    const line = this.writer.acidityLine();
    const { checks } = this;
    const isLast = checks.at(-1)?.id === id;
    return say(
      'Only if it was not ready before: taste it and test its pH.',
      isLast ? `This is the stop: if it is not at ${line} or less, throw it out.` : null,
    );
  }

  strain(): string {
    const drink =
      this.writer.value('drinkVolume') === null ? null : `Expect ${this.writer.amount('drinkVolume')} of kefir.`;
    const isHome = !isFromItsMaker(this.writer.formulation);
    const hasSecond = this.schedule.waits.some(({ kind }) => kind === 'second');
    return say(
      this.writer.onlyAcid(),
      isHome ? this.again() : null,
      isHome ? this.notThere() : null,
      this.likely('ferment', 'Likely ready', `after ${this.culture} went in`),
      this.hasGrains
        ? 'Taste it; if it is as you like it, strain the grains out and feed them.'
        : 'Taste it; if it is as you like it, stir it: there is nothing to strain out.',
      drink,
      hasSecond ? null : 'The kefir goes into the fridge.',
    );
  }

  bottle(): string {
    return say(
      this.writer.onlyAcid(),
      'Fill the bottles, leave room in them, and close them.',
      `Let them stand${this.forAbout('second')}; a sealed bottle builds up pressure.`,
    );
  }

  chill(): string {
    return say(
      this.flexed('second', 'Stood'),
      'Cold stops most of the fizz. Open the first bottle slowly, over the sink, when it is cold.',
    );
  }

  drink(): string {
    return 'It is cold through: time for the first glass.';
  }

  best(): string {
    const from = this.hasGrains ? 'straining' : 'the day it was ready';
    return `In the fridge it is at its best up to here, counted from ${from}. Kitchens differ: taste before you pour.`;
  }

  last(): string {
    return 'Drink what is left, or throw it out; at any sign of mould, at once.';
  }

  private get hasGrains(): boolean {
    return this.writer.formulation.choices.grain.starter === undefined;
  }

  private get culture(): string {
    return `the ${cultureNoun(this.writer.formulation.choices.grain)}`;
  }

  private get checks(): readonly PlannedStep[] {
    return this.schedule.steps.filter(({ kind }) => kind === 'check');
  }

  private elapsed(minutes: number): string {
    return writeElapsed(minutes, this.decimalComma);
  }

  /** How long it may still stand where it is not sour when it is to be strained; null where that time is over. */
  private again(): string | null {
    const wait = this.wait('ferment');
    const most = convertNumber(turnTimeOf(this.writer.formulation).plain, 'h', 'min');
    if (wait === undefined || wait.to - wait.from >= most) return null;
    const left = this.elapsed(most - (wait.to - wait.from));
    return mayTake(this.writer.formulation) > most
      ? `This one may be slow: if it is not there yet, let it stand and test it again, the last time ${left} later.`
      : 'If it is not there yet, let it stand and test it again.';
  }

  /** What to do where making takes longer than milk may stand about; null where it does not. */
  private inTurns(): string | null {
    const room = this.writer.value('roomTemperature');
    const isHot = room !== null && room > handwork.hotRoom.value;
    const most = (isHot ? handwork.outOfColdHot : handwork.outOfCold).value;
    if (standsAbout(this.writer.formulation) <= convertNumber(most, 'h', 'min')) return null;
    const hours = this.writer.quantity(most, 'time');
    return `This takes over ${hours}: make it in turns, or chill each load. Until ${this.culture} ${this.hasGrains ? 'are' : 'is'} in, milk stays out of the cold for ${hours} at most.`;
  }

  private notThere(): string {
    const { plain, falling } = turnTimeOf(this.writer.formulation);
    const [hours, longest] = [plain, falling].map((time) => this.writer.quantity(time, 'time'));
    const unless =
      falling > plain ? `, unless it is at ${this.writer.onItsWay()} and falling, then within ${longest}` : '';
    return `Not there within ${hours} of ${this.culture} going in${unless}: throw it out; taste is no test.`;
  }

  private wait(kind: WaitKind): PlannedWait | undefined {
    return this.schedule.waits.find((wait) => wait.kind === kind);
  }

  private forAbout(kind: WaitKind): string {
    const wait = this.wait(kind);
    return wait === undefined ? '' : ` for ${this.elapsed(wait.to - wait.from)}${this.instead(wait)}`;
  }

  /** How long a wait is where that is not its likely time; null where it is. */
  private flexed(kind: WaitKind, begin: string): string | null {
    const wait = this.wait(kind);
    const instead = wait === undefined ? '' : this.instead(wait);
    return wait === undefined || instead === '' ? null : `${begin} ${this.elapsed(wait.to - wait.from)}${instead}.`;
  }

  /** The sheet says another time where a wait is not as long as is likely, so the plan says why. */
  private instead({ from, to, range }: PlannedWait): string {
    return to - from === range.likely ? '' : ` instead of ${this.elapsed(range.likely)}${awake}`;
  }

  /** The likely length of a wait with its range, and that it is planned shorter or longer where it is. */
  private likely(kind: WaitKind, begin: string, end: string): string | null {
    const wait = this.wait(kind);
    if (wait === undefined) return null;
    const { low, likely, high } = wait.range;
    const hours = (minutes: number): string => this.elapsed(minutes);
    const planned = wait.to - wait.from;
    const spread = low === high ? '' : ` (${hours(low)} to ${hours(high)})`;
    const differs = planned === likely ? '' : `; planned after ${hours(planned)}${awake}`;
    return `${begin} ${hours(likely)}${spread} ${end}${differs}.`;
  }
}
