import type { Formulation, RowResult } from '../formula/formulate';
import { describeAbsence } from '../formula/labels';
import type { NumericRowId } from '../formula/order';
import { severities } from '../formula/problem';
import { type Kitchen, type Written, writeRow } from '../formula/write-row';
import { leading } from './leading';
import { sentences } from './sentences';

interface Props {
  readonly id: NumericRowId;
  readonly formulation: Formulation;
  readonly kitchen: Kitchen;
  /** What was typed, as typed; null where nothing was. */
  readonly typed: string | null;
  /** The plain sentence for a typed text that can't be read. */
  readonly unreadable: string | null;
}

/** What a cell of numbers shows: the amount in both units, how it came to be there, and what is to be said about it. */
export function CellBody({ id, formulation, kitchen, typed, unreadable }: Props) {
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
      <Problems result={result} kitchen={kitchen} unreadable={unreadable} />
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
  readonly result: RowResult;
  readonly kitchen: Kitchen;
  readonly unreadable: string | null;
}

export function Problems({ result, kitchen, unreadable }: ProblemsProps) {
  const say = sentences.value;
  if (say === null) return null;
  return (
    <>
      {result.problems.map((problem) => (
        <p class={`problem ${severities[problem.code]}`} key={problem.code}>
          <span>
            {problem.code === 'unreadable' && unreadable !== null ? unreadable : say.describeProblem(problem, kitchen)}
          </span>
        </p>
      ))}
    </>
  );
}
