// @vitest-environment happy-dom
import { act, cleanup, fireEvent, screen, within } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import '../../../src/ui/steps/Timers';
import { openSheet, openWith, textOf } from '../open-sheet';

beforeEach(() => localStorage.clear());
afterEach(() => {
  cleanup();
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

const strip = () => screen.getByRole('region', { name: 'Timers' });
const start = (name: RegExp) => fireEvent.click(screen.getByRole('button', { name }));
const kept = (): unknown => JSON.parse(localStorage.getItem('jarwright.timers') ?? 'null');

/** Lets the clock go on, as it stands in every timer of the page. */
async function pass(hours: number) {
  await act(async () => {
    await vi.advanceTimersByTimeAsync(hours * 3_600_000);
  });
}

describe('timers', () => {
  test('run side by side, are seen from every part, and stop one by one', async () => {
    const { user } = await openSheet();
    start(/^Start a timer of 10\sh: Soak/);
    start(/^Start a timer of 2\smin: Blend/);
    await user.click(screen.getByRole('tab', { name: 'Kitchen' }));
    expect(within(strip()).getAllByRole('timer')).toHaveLength(2);
    await user.click(within(strip()).getByRole('button', { name: 'Stop the timer: Soak' }));
    expect(textOf(strip())).toMatch(/^Blend 2:00|^Blend 1:59/);
    expect(document.activeElement).toBe(within(strip()).getByRole('button', { name: /^Blend/ }));
    await user.click(within(strip()).getByRole('button', { name: /^Blend/ }));
    const tab = screen.getByRole('tab', { name: 'Steps' });
    expect(tab.getAttribute('aria-selected')).toBe('true');
    await user.click(within(strip()).getByRole('button', { name: 'Stop the timer: Blend' }));
    expect(document.activeElement).toBe(tab);
  });

  test('are there when the page is opened anew, and end when they would have', async () => {
    await openSheet();
    start(/^Start a timer of 10\sh: Soak/);
    cleanup();
    const ended = kept();
    expect(ended).toEqual([{ batch: 'b1', step: 'soak', ends: expect.any(Number) }]);
    await openWith('kitchen')();
    expect(textOf(await screen.findByRole('timer'))).toMatch(/^(10 h 00|9 h 59) min$/);
  });

  test('name their batch where there are several', async () => {
    await openSheet((store) => store.copyBatch('b1'));
    start(/^Start a timer of 10\sh: Soak/);
    expect(textOf(strip())).toContain('Soak Saturday almond');
  });

  test('go with their batch', async () => {
    localStorage.setItem('jarwright.timers', JSON.stringify([{ batch: 'b9', step: 'soak', ends: Date.now() + 1e6 }]));
    await openSheet();
    await vi.waitFor(() => expect(kept()).toEqual([]));
  });

  test.each(['nothing', '{}', '[3,null,{"batch":"b1","step":"soak"}]', '[{"batch":"b1","step":"boil","ends":9}]'])(
    'are not made of %s',
    async (text) => {
      localStorage.setItem('jarwright.timers', text);
      await openSheet();
      expect(screen.queryByRole('region', { name: 'Timers' })).toBeNull();
    },
  );

  test('start again for the same step in place of the first', async () => {
    const { user } = await openSheet();
    start(/^Start a timer of 10\sh: Soak/);
    await user.click(screen.getByRole('button', { name: /stop$/ }));
    start(/^Start a timer of 10\sh: Soak/);
    expect(kept()).toHaveLength(1);
  });
});

describe('a timer whose time is up', () => {
  /** A browser's sound, as far as the page uses it; counts how often it rings. */
  function listen() {
    const rung = vi.fn();
    class Sound {
      readonly state = 'running';
      readonly currentTime = 0;
      readonly destination = null;
      async resume() {}
    }
    class Node {
      readonly gain = { setValueCurveAtTime: () => undefined };
      connect(next: unknown) {
        return next;
      }
      disconnect() {}
      start = rung;
      stop() {}
    }
    vi.stubGlobal('AudioContext', Sound);
    vi.stubGlobal('OscillatorNode', Node);
    vi.stubGlobal('GainNode', Node);
    return rung;
  }

  test('rings by sound, title and sentence until it is stopped', async () => {
    const rung = listen();
    const usual = document.title;
    const { container } = await openSheet();
    vi.useFakeTimers({ now: Date.now() });
    start(/^Start a timer of 2\smin: Blend/);
    await pass(0.01);
    expect(rung).not.toHaveBeenCalled();
    await pass(0.025);
    expect(document.title).toMatch(/^Time is up: Blend ·/);
    expect(container.querySelector('.notice')?.textContent).toBe('Time is up: Blend.');
    expect(textOf(strip())).toContain('time is up');
    expect(rung).toHaveBeenCalled();
    fireEvent.click(within(strip()).getByRole('button', { name: 'Stop the timer: Blend' }));
    await pass(0);
    expect(document.title).toBe(usual);
    const before = rung.mock.calls.length;
    await pass(0.1);
    expect(rung).toHaveBeenCalledTimes(before);
  });

  test('does not ring for ever', async () => {
    const rung = listen();
    await openSheet();
    vi.useFakeTimers({ now: Date.now() });
    start(/^Start a timer of 2\smin: Blend/);
    await pass(0.04);
    await pass(0.2);
    const before = rung.mock.calls.length;
    expect(before).toBeGreaterThan(3);
    await pass(2);
    expect(rung).toHaveBeenCalledTimes(before);
  });

  test('says so when the page is opened after it', async () => {
    listen();
    localStorage.setItem('jarwright.timers', JSON.stringify([{ batch: 'b1', step: 'soak', ends: Date.now() - 1e6 }]));
    await openSheet();
    expect(textOf(strip())).toMatch(/Soak time is up, \d\d:\d\d/);
  });
});
