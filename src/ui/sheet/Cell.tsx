import type { ComponentChildren } from 'preact';
import type { Formulation, RowResult } from '../../formula/formulate';
import { describeAbsence } from '../../formula/labels';
import type { NumericRowId } from '../../formula/order';
import { type Kitchen, type WrittenRow, writeRow } from '../../formula/write-row';
import { leading } from '../jar/leading';

interface Props {
  readonly id: NumericRowId;
  readonly formulation: Formulation;
  readonly kitchen: Kitchen;
  /** What was typed, as typed; null where nothing was. */
  readonly typed: string | null;
  /** What is to be said about it. */
  readonly children: ComponentChildren;
}

/** What a cell of numbers shows: the amount in both units, how it came to be there, and what is to be said about it. */
export function CellBody({ id, formulation, kitchen, typed, children }: Props) {
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
        <Amount written={written} result={result} kitchen={kitchen} typed={typed} />
      )}
      {formulation.sizedFrom === id && <span class="sized">the batch is sized from this</span>}
      {children}
    </div>
  );
}

function Refused({ typed }: { typed: string | null }) {
  return typed === null ? <span class="lead">–</span> : <span class="typed-wrong">{typed}</span>;
}

interface AmountProps {
  readonly written: WrittenRow;
  readonly result: RowResult;
  readonly kitchen: Kitchen;
  readonly typed: string | null;
}

function Amount({ written, result, kitchen, typed }: AmountProps) {
  const { each, range, spread } = written;
  const value = leading(written, kitchen.leads);
  // What is never one number leads with its range.
  const { first, second } = range === null ? value : { first: range, second: `likely ${value.first}` };
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
      {spread !== null && <span class="second">may be {spread}</span>}
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
