// @vitest-environment happy-dom
import { cleanup, render, screen } from '@testing-library/preact';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { TimelineEvent } from '../../../src/formula/time/event';
import { CalendarButton } from '../../../src/ui/plan/CalendarButton';

const event: TimelineEvent = {
  id: 'strain',
  batch: 'b1',
  batchName: 'Saturday',
  plannedFor: 28_999_000,
  title: 'Strain the grains out',
  text: '',
  at: 29_000_000,
  minutes: 15,
  hands: true,
};

interface Download {
  readonly name: string;
  readonly text: string;
}

let downloads: Promise<Download>[] = [];
const { createObjectURL } = URL;
const { click } = HTMLAnchorElement.prototype;

// What the browser would do with the link: keep what it points to under its name.
beforeEach(() => {
  downloads = [];
  const blobs = new Map<string, Blob>();
  URL.createObjectURL = (blob: Blob) => {
    const address = `blob:${blobs.size}`;
    blobs.set(address, blob);
    return address;
  };
  HTMLAnchorElement.prototype.click = function keep() {
    const blob = blobs.get(this.getAttribute('href') ?? '');
    const { download: name } = this;
    if (blob !== undefined) downloads.push(blob.text().then((text) => ({ name, text })));
  };
});

afterEach(() => {
  cleanup();
  URL.createObjectURL = createObjectURL;
  HTMLAnchorElement.prototype.click = click;
});

async function press(events: readonly TimelineEvent[], name: string) {
  render(<CalendarButton events={() => events} name={name} label="Calendar file" />);
  await userEvent.setup().click(screen.getByRole('button', { name: 'Calendar file' }));
  await expect.poll(() => screen.getByRole('status').textContent).not.toBe('');
  return { said: screen.getByRole('status').textContent, files: await Promise.all(downloads) };
}

describe('the calendar button', () => {
  test('hands over the file under its name, and says what it holds', async () => {
    const { said, files } = await press([event, { ...event, id: 'last', minutes: 0 }], 'Saturday almond');
    expect(files.map(({ name }) => name)).toEqual(['Saturday almond.ics']);
    expect(files[0]?.text).toMatch(/^BEGIN:VCALENDAR\r\n.*\r\nEND:VCALENDAR\r\n$/s);
    expect(files[0]?.text.match(/BEGIN:VEVENT/g)).toHaveLength(2);
    expect(said).toMatch(/“Saturday almond\.ics” is made: 2 steps, with an alarm 5 minutes before each/);
  });

  test.each([
    ['../a/b:c*?"<>|', 'a b c.ics'],
    ['\u202Egnp.exe', 'gnp exe.ics'],
    ['...', 'plan.ics'],
    ['Café ½ ממ', 'Café ½ ממ.ics'],
    ['x'.repeat(300), `${'x'.repeat(80)}.ics`],
  ])('makes of %j a name that any system takes', async (name, file) => {
    const { files } = await press([event], name);
    expect(files.map((download) => download.name)).toEqual([file]);
  });

  test('makes no file of no step, and says why', async () => {
    const { said, files } = await press([], 'Saturday');
    expect(files).toEqual([]);
    expect(said).toMatch(/Plan a batch first/);
  });
});

test('says that the plan has moved since the file was made, and no longer once it is made again', async () => {
  const user = userEvent.setup();
  const moved = { ...event, at: event.at + 60 };
  const { rerender } = render(<CalendarButton events={() => [event]} name="Saturday" label="Calendar file" />);
  const press = () => user.click(screen.getByRole('button', { name: 'Calendar file' }));
  await press();
  await expect.poll(() => downloads.length).toBe(1);
  rerender(<CalendarButton events={() => [moved]} name="Saturday" label="Calendar file" />);
  await expect.poll(() => screen.getByRole('status').textContent).toContain('has changed since');
  await press();
  await expect.poll(() => screen.getByRole('status').textContent).not.toContain('has changed since');
});
