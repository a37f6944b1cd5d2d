import { nearly } from '../../measure/nearly';
import { kitchen } from '../../reference/kitchen';
import { isMeasuredRow, type NumericRowId } from '../recipe/order';
import type { Problem } from '../recipe/problem';
import type { Absence, NumericRow } from '../rows/row';
import type { Evaluation } from './evaluate';
import type { RowResult } from './formulation';
import { correctsSource, measuredValue, upstream } from './measured';
import { notesFor } from './row-notes';
import { isRow } from './ways-of';
import { weighingProblems } from './weighings';

/** A row of numbers as it stands in a batch. Each part is found when it is first read: most of them never are. */
export class NumericResult implements RowResult {
  readonly kind: NumericRow['kind'];
  private readonly x: Evaluation;
  private isFound = false;
  private problemsOnce: readonly Problem[] | undefined;
  private number = Number.NaN;
  private reading: number | Problem | null = null;
  private measured: number | Problem | null = null;
  /** Why there is no such quantity, whatever was typed or measured for it. */
  private missing: Absence | null = null;
  private has = false;

  constructor(
    readonly id: NumericRowId,
    private readonly row: NumericRow,
    private readonly before: Evaluation,
    private readonly actual: Evaluation,
  ) {
    this.kind = row.kind;
    this.x = before !== actual && upstream.includes(id) ? before : actual;
  }

  get value(): number | null {
    this.find();
    return this.has && this.absence === null ? this.number : null;
  }

  get typed(): number | null {
    this.find();
    return typeof this.reading === 'number' ? this.reading : null;
  }

  get planned(): number | null {
    this.find();
    if (typeof this.measured !== 'number') return null;
    const expected = this.before.of(this.id);
    return Number.isFinite(expected) ? expected : null;
  }

  get absence(): Absence | null {
    this.find();
    return this.reading === null && this.measured === null ? this.missing : null;
  }

  get status(): RowResult['status'] {
    if (this.absence !== null) return 'absent';
    if (!this.has) return 'refused';
    if (this.measured !== null) return 'measured';
    const { typed } = this;
    if (typed === null) return 'workedOut';
    return this.x.plan.accepted.has(this.id) || nearly(typed, this.number) ? 'given' : 'workedOut';
  }

  get range(): RowResult['range'] {
    const { bounds } = this.row;
    this.find();
    if (bounds === undefined || !this.has || this.measured !== null) return null;
    const [low, high] = [this.x.of(bounds.low), this.x.of(bounds.high)];
    return Number.isFinite(low) && Number.isFinite(high) && low < high ? { low, high } : null;
  }

  get problems(): readonly Problem[] {
    this.problemsOnce ??= dedupe(this.findProblems());
    return this.problemsOnce;
  }

  get from(): Evaluation | null {
    this.find();
    return this.missing === null && this.has ? this.x : null;
  }

  private find(): void {
    if (this.isFound) return;
    const { id, x } = this;
    this.isFound = true;
    this.reading = x.reading(id);
    // Where nothing was measured, what stands is what was planned.
    const isMeasured = this.before !== this.actual && isMeasuredRow(id);
    this.measured = isMeasured ? measuredValue(id, x.recipe, this.before) : null;
    this.number = x.of(id);
    const counts = x.standing.values.has(id) || x.plan.accepted.has(id);
    this.missing = counts ? null : (this.row.absent?.(x) ?? null);
    this.has = Number.isFinite(this.number) && !isProblem(this.reading) && !isProblem(this.measured);
  }

  private findProblems(): readonly Problem[] {
    const { id, x, before, actual, typed } = this;
    const { number: value, reading, measured, has } = this;
    const problems: Problem[] = [];
    if (isProblem(reading)) problems.push(reading);
    if (isProblem(measured)) problems.push(measured);
    if (!Number.isFinite(value) && !isProblem(reading)) problems.push(x.rootOf(id));
    const standing = x.problemAt(id) ?? actual.problemAt(id);
    if (standing && has) problems.push(standing);
    if (typeof measured === 'number' && isMeasuredRow(id)) {
      const stop = correctsSource.includes(id)
        ? (actual.problemAt('sourceMass') ?? actual.problemAt('waterRatio'))
        : undefined;
      if (stop) problems.push({ code: 'notCounted', at: id, for: stop.code === 'waits' ? stop.for : stop.at });
      problems.push(...weighingProblems(id, measured, before, actual));
    }
    const disagreement = typed === null || !has ? null : disagree(id, typed, value, before, x);
    if (disagreement) problems.push(disagreement);
    const brim = actual.problemAt('headspaceVolume');
    const fills = id === 'vesselCount' ? typed !== null : id === x.plan.sizedFrom;
    if (has && fills && brim?.code === 'overBrim') problems.push({ ...brim, code: 'runsOver', at: id });
    if (has && this.absence === null) problems.push(...notesFor(id, x));
    return problems;
  }
}

function isProblem(found: number | Problem | null): found is Problem {
  return typeof found === 'object' && found !== null;
}

function dedupe(problems: readonly Problem[]): readonly Problem[] {
  if (problems.length < 2) return problems;
  const written = problems.map((problem) => JSON.stringify(problem));
  return problems.filter((_, at) => written.indexOf(written[at] ?? '') === at);
}

/** Whether a typed value that was not taken as it stands differs from what comes out, and what it differs from. */
function disagree(
  id: NumericRowId,
  typed: number,
  computed: number,
  planned: Evaluation,
  actual: Evaluation,
): Problem | null {
  if (nearly(typed, computed)) return null;
  const { plan } = planned;
  const sized = plan.sizedFrom === 'jar' || !isRow(plan.sizedFrom) ? [] : [plan.sizedFrom];
  const isLeast = plan.depthIsLeast && (id === 'headspaceDepth' || id === 'headspaceVolume');
  const against = plan.against.get(id) ?? (isLeast ? sized : undefined);
  if (nearly(typed, computed, kitchen.agreement.value))
    return against === undefined || actual !== planned
      ? null
      : { code: 'nearlyAgrees', at: id, typed, computed, with: against };
  if (plan.accepted.has(id) && actual !== planned)
    return { code: 'measuredOff', at: id, planned: typed, measured: computed };
  if (isLeast) {
    if (computed >= typed) return { code: 'headspaceKept', at: id, asked: typed, actual: computed };
    return { code: 'conflict', at: id, typed, computed, with: sized };
  }
  if (against === undefined) return null;
  if (against.length > 0) return { code: 'conflict', at: id, typed, computed, with: against };
  const { entry } = planned.choices.sweetener[0] ?? {};
  return { code: 'nothingToFerment', at: id, sweetener: entry?.name ?? '', reason: entry?.refused ?? '' };
}
