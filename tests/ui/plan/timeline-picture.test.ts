import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planBatch } from '../../../src/formula/plan/plan-batch';
import type { Schedule } from '../../../src/formula/plan/schedule';
import { type DrawnFor, drawTimeline, type Place } from '../../../src/ui/plan/timeline-picture';
import { at, clocks, makings, makingWith, starts, usualClock } from '../../formula/plan/makings';

function scheduleFrom(start: number): Schedule {
  return planBatch(makingWith({ soak: null }), { by: 'start', at: start }, usualClock).schedule;
}

const hours = [6, 12, 18];
const drawnFor: DrawnFor = {
  clock: usualClock,
  present: at(1, 12),
  hoursOf: (midnight) => hours.map((hour) => midnight + at(0, hour)),
};

describe('the drawing of a plan', () => {
  test('is none where nothing is planned', () => {
    expect(drawTimeline([], drawnFor)).toBeNull();
  });

  test('goes from the midnight before the first start to the midnight after the last first glass', () => {
    const picture = drawTimeline([scheduleFrom(at(1, 18, 20))], drawnFor) ?? expect.fail('no picture');
    expect([picture.from, picture.to]).toEqual([at(1, 0), at(3, 0)]);
    expect(picture.days.map((one) => [one.at, one.left, one.width])).toEqual([
      [at(1, 0), 0, 50],
      [at(2, 0), 50, 50],
    ]);
    // 0:00 to 7:00, 22:00 to 7:00, 22:00 to 24:00 of 48 hours.
    const whole: readonly Place[] = picture.nights;
    expect(whole.map(({ width }) => (width * 48) / 100)).toEqual([7, 9, 2]);
  });

  test('puts each wait where it belongs, and lets the fridge run out of it', () => {
    const [row] = (drawTimeline([scheduleFrom(at(1, 17, 20))], drawnFor) ?? expect.fail('no picture')).rows;
    const span = (kind: string) => row?.spans.find((one) => one.kind === kind) ?? expect.fail(`no ${kind}`);
    const inHours = ({ left, width }: Place) => [(left * 48) / 100, ((left + width) * 48) / 100];
    expect(inHours(span('ferment'))).toEqual([18, 31]);
    expect(inHours(span('ripe'))).toEqual([26, 34]);
    expect(inHours(span('fridge'))).toEqual([31.25, 48]);
    expect(span('fridge').isOpen).toBe(true);
    expect(span('ferment').isOpen).toBe(false);
  });

  test('marks hours between the midnights, the present, and the last day of a fridge that runs out of it', () => {
    const picture = drawTimeline([scheduleFrom(at(1, 17, 20))], drawnFor) ?? expect.fail('no picture');
    expect(picture.hours.map(({ left }) => (left * 48) / 100)).toEqual([6, 12, 18, 30, 36, 42]);
    expect(picture.present).toBe(25);
    // It is noon: that name would stand under the one of the present.
    expect(picture.hours.map(({ isNamed }) => isNamed)).toEqual([true, false, true, true, true, true]);
    // Strained on day 2, and used up eight days later.
    expect(picture.rows[0]?.until).toBe(at(10, 7));
    for (const present of [at(0, 23, 59), at(3, 0)]) {
      expect(drawTimeline([scheduleFrom(at(1, 17, 20))], { ...drawnFor, present })?.present).toBeNull();
    }
  });

  test('names no more days than there is room for, and leaves far plans to the words', () => {
    const far = drawTimeline([scheduleFrom(at(1, 18)), scheduleFrom(at(27, 18)), scheduleFrom(at(4000, 18))], drawnFor);
    const picture = far ?? expect.fail('no picture');
    expect(picture.rows.length).toBe(2);
    expect(picture.leftOut).toEqual(['Almond']);
    expect(picture.days.filter(({ isNamed }) => isNamed).length).toBeLessThanOrEqual(10);
    expect(picture.nights).toEqual([]);
    expect(picture.hours).toEqual([]);
  });

  test('has everything within its frame and in its order', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(makings, starts), { minLength: 1, maxLength: 3 }), clocks, (all, clock) => {
        const schedules = all.map(([making, start]) => planBatch(making, { by: 'start', at: start }, clock).schedule);
        const picture = drawTimeline(schedules, { ...drawnFor, clock }) ?? expect.fail('no picture');
        const places = [...picture.nights, ...picture.days, ...picture.rows.flatMap(({ spans }) => spans)];
        for (const { left, width } of places) {
          expect(left).toBeGreaterThanOrEqual(0);
          expect(width).toBeGreaterThanOrEqual(0);
          expect(left + width).toBeLessThanOrEqual(100 + 1e-9);
        }
        picture.rows.forEach(({ marks }, place) => {
          const inside = schedules[place]?.steps.filter((step) => step.at <= picture.to);
          expect(marks.map(({ step }) => step)).toEqual(inside);
        });
      }),
      { numRuns: 60 },
    );
  });
});
