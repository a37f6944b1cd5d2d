import type { Formulation, RowResult } from '../formula/formulate';
import { describeAbsence } from '../formula/labels';
import type { NumericRowId, RowId } from '../formula/order';
import { severities } from '../formula/problem';
import type { WayOut } from '../formula/ways-out';
import { type Kitchen, type Written, writeRow } from '../formula/write-row';
import { afterPaint } from './after-paint';
import { leading } from './leading';

interface Props {
  readonly id: NumericRowId;
  readonly formulation: Formulation;
  readonly kitchen: Kitchen;
  /** What was typed, as typed; null where nothing was. */
  readonly typed: string | null;
  /** The plain sentence for a typed text that can't be read. */
  readonly unreadable: string | null;
  /** What had to be taken for granted in reading it. */
  readonly remark: string | null;
  /** What to know before typing here; null where any amount goes. */
  readonly hint: string | null;
  /** How far it is from the batch it is compared with; null where there is nothing to say. */
  readonly compared: string | null;
  /** Whether the cell is the current one, so that its buttons can be tabbed to. */
  readonly here: boolean;
  readonly onWayOut: (way: WayOut) => void;
}

/** What a cell of numbers shows: the amount in both units, how it came to be there, and what is to be said about it. */
export function CellBody(props: Props) {
  const { id, formulation, kitchen, typed, unreadable, remark, hint, compared, here, onWayOut } = props;
  const result = formulation.rows[id];
  const written = writeRow(formulation, id, kitchen);
  return (
    <div class={`cell-body ${result.status}`}>
      {result.status === 'absent' && result.absence !== null ? (
        <span class="absent">
          – <span class="second">{describeAbsence(result.absence)}</span>
        </span>
      ) : written === null ? (
        <Refused typed={typed} />
      ) : (
        <Amount written={written} result={result} kitchen={kitchen} typed={typed} each={written.each} />
      )}
      {formulation.sizedFrom === id && <span class="sized">the batch is sized from this</span>}
      {remark !== null && <span class="second">{remark}</span>}
      {hint !== null && <span class="second">{hint}</span>}
      {compared !== null && <span class="compared">{compared}</span>}
      <Problems
        formulation={formulation}
        result={result}
        kitchen={kitchen}
        unreadable={unreadable}
        here={here}
        onWayOut={onWayOut}
      />
      <Care id={id} formulation={formulation} />
    </div>
  );
}

function Refused({ typed }: { typed: string | null }) {
  return typed === null ? <span class="lead">–</span> : <span class="typed-wrong">{typed}</span>;
}

interface AmountProps {
  readonly written: Written;
  readonly result: RowResult;
  readonly kitchen: Kitchen;
  readonly typed: string | null;
  readonly each: Written | null;
}

function Amount({ written, result, kitchen, typed, each }: AmountProps) {
  const { first, second } = leading(written, kitchen.leads);
  const given = result.status === 'given';
  return (
    <>
      <span class="lead">
        <span>{first}</span>
        {given && <Pencil />}
        {given && <span class="unseen"> typed{typed === null ? '' : ` as ${typed}`}</span>}
        {result.status === 'measured' && <span class="tag">measured</span>}
      </span>
      {second !== null && <span class="second">{second}</span>}
      {written.error !== null && <span class="second">spoons come nearest at {percent(written.error)}</span>}
      {each !== null && <span class="second">each jar {leading(each, kitchen.leads).first}</span>}
    </>
  );
}

function percent(share: number): string {
  return new Intl.NumberFormat('en', { style: 'percent', maximumFractionDigits: 1, signDisplay: 'always' }).format(
    share,
  );
}

function Pencil() {
  return (
    <svg class="pencil" viewBox="0 0 16 16" aria-hidden="true">
      <path d="m2 14 1-4L11 2l3 3-8 8-4 1Zm8-11 3 3" />
    </svg>
  );
}

interface ProblemsProps {
  readonly formulation: Formulation;
  readonly result: RowResult;
  readonly kitchen: Kitchen;
  readonly unreadable: string | null;
  readonly here: boolean;
  readonly onWayOut: (way: WayOut) => void;
}

/** What is to be said about a cell, and the ways out as buttons. */
export function Problems({ formulation, result, kitchen, unreadable, here, onWayOut }: ProblemsProps) {
  const say = afterPaint.value;
  if (say === null) return null;
  return (
    <>
      {result.problems.map((problem) => (
        <div class={`problem ${severities[problem.code]}`} key={problem.code}>
          <div>
            <p>
              {problem.code === 'unreadable' && unreadable !== null
                ? unreadable
                : say.describeProblem(problem, kitchen)}
            </p>
            <WaysOut ways={say.waysOut(problem, formulation)} here={here} onWayOut={onWayOut} />
          </div>
        </div>
      ))}
    </>
  );
}

interface WaysOutProps {
  readonly ways: readonly WayOut[];
  readonly here: boolean;
  readonly onWayOut: (way: WayOut) => void;
}

function WaysOut({ ways, here, onWayOut }: WaysOutProps) {
  if (ways.length === 0) return null;
  return (
    <div class="ways-out">
      {ways.map((way) => (
        <button type="button" class="way-out" key={way.label} tabIndex={here ? 0 : -1} onClick={() => onWayOut(way)}>
          {way.label}
        </button>
      ))}
    </div>
  );
}

/** That there are cautions for this number; they stand in full in its working. */
export function Care({ id, formulation }: { id: RowId; formulation: Formulation }) {
  const cautions = afterPaint.value?.cautionsAt(id, formulation).length ?? 0;
  if (cautions === 0) return null;
  return <span class="care">take care: {cautions === 1 ? 'one caution' : `${cautions} cautions`} in its working</span>;
}
