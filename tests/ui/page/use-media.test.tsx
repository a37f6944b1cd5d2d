// @vitest-environment happy-dom
import { cleanup, render, screen } from '@testing-library/preact';
import type { DetachedWindowAPI } from 'happy-dom';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { media, useMedia } from '../../../src/ui/page/use-media';
import { textOf } from '../open-sheet';

declare global {
  interface Window {
    readonly happyDOM: DetachedWindowAPI;
  }
}

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
  setWidth(1024);
});

function setWidth(width: number): void {
  window.happyDOM.setViewport({ width, height: 800 });
}

function Widths() {
  return (
    <p role="note">
      {useMedia(media.wide) ? 'wide' : 'narrow'} {useMedia(media.phone) ? 'phone' : 'table'}
    </p>
  );
}

function shown(): string {
  return textOf(screen.getByRole('note'));
}

describe('useMedia', () => {
  test.each([
    [1280, 'wide table'],
    [800, 'narrow table'],
    [390, 'narrow phone'],
  ])('at %d px is %s', (width, says) => {
    setWidth(width);
    render(<Widths />);
    expect(shown()).toBe(says);
  });

  test('follows the width as it changes', async () => {
    // Between the two lines first: this document tells of a query that ceases to hold only once it has begun to.
    setWidth(800);
    render(<Widths />);
    setWidth(1280);
    await expect.poll(shown).toBe('wide table');
    setWidth(390);
    await expect.poll(shown).toBe('narrow phone');
    setWidth(1280);
    await expect.poll(shown).toBe('wide table');
  });

  test('is as on a wide screen where there are no media queries', () => {
    vi.stubGlobal('matchMedia', undefined);
    setWidth(390);
    render(<Widths />);
    expect(shown()).toBe('wide table');
  });
});
