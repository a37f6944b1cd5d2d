// @vitest-environment happy-dom
import { cleanup, fireEvent, screen, within } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { setWhen } from '../../../src/batch/store/plan-edits';
import type { Store } from '../../../src/batch/store/store';
import { openWith, textOf } from '../open-sheet';

const openSheet = openWith('plan');

// Plans are told apart by whether they are past.
beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date'], now: new Date('2026-11-25T10:00:00Z') });
});

afterEach(() => {
  cleanup();
  vi.useRealTimers();
});

const plan = () => screen.findByRole('region', { name: 'Plan' });
const planned = (by: 'start' | 'drink', at: string) => (store: Store) =>
  store.takeEdit(setWhen(store.document.peek(), 'b1', { by, at }), 'Plan');
/** Each hour by day and by night at which a kitchen asks. */
const hours = ['01:00', '06:50', '09:20', '18:00', '21:55', '23:00'];
const stepsShown = async () =>
  within(await screen.findByRole('region', { name: 'Plan of Saturday almond' }))
    .getAllByRole('listitem')
    .map(textOf);

describe('the plan', () => {
  test('of nothing planned offers to plan, and draws nothing', async () => {
    const { container } = await openSheet();
    expect(
      within(await plan()).getByRole<HTMLSelectElement>('combobox', { name: 'Plan for Saturday almond' }).value,
    ).toBe('');
    expect(container.querySelector('.timeline-picture')).toBeNull();
    expect(screen.queryByRole('region', { name: 'Plan of Saturday almond' })).toBeNull();
  });

  test('is begun now by one press, as one step', async () => {
    const { user, batch, store } = await openSheet();
    await user.click(within(await plan()).getByRole('button', { name: 'Start now: Saturday almond' }));
    expect(batch().when?.by).toBe('start');
    expect(store.undoName.value).toBe('Plan Saturday almond');
    expect((await stepsShown())[0]).toContain('Put it to soak');
    store.undo();
    expect(batch().when).toBeUndefined();
  });

  test('says each step with its time, how long after the start and how long by hand', async () => {
    await openSheet(planned('start', '2026-11-28T08:00'));
    const steps = await stepsShown();
    expect(steps[0]).toContain('the start, 10 min by hand');
    expect(steps[1]).toMatch(/10.h 10.min after the start, \d+.min by hand/);
    expect(steps.at(-1)).toContain('Last day to drink it');
  });

  test('goes from a start to its first glass and back without moving', async () => {
    const { user, batch } = await openSheet(planned('start', '2026-11-28T08:00'));
    const choice = within(await plan()).getByRole('combobox', { name: 'Plan for Saturday almond' });
    const before = await stepsShown();
    await user.selectOptions(choice, 'To drink at');
    expect(batch().when?.by).toBe('drink');
    const there = (await stepsShown()).find((text) => text.includes('Drink the first glass'));
    const first = before.find((text) => text.includes('Drink the first glass')) ?? '';
    expect(there?.slice(0, 14)).toBe(first.slice(0, 14));
    await user.selectOptions(choice, 'Not planned');
    expect(batch().when).toBeUndefined();
  });

  test.each(hours)('to drink at offers a time that can be had, asked at %s', async (hour) => {
    vi.setSystemTime(new Date(`2026-11-25T${hour}:00`));
    const { user, batch } = await openSheet();
    await user.selectOptions(
      within(await plan()).getByRole('combobox', { name: 'Plan for Saturday almond' }),
      'To drink at',
    );
    expect(textOf(await plan())).not.toContain('Not begun yet?');
    const [first] = await stepsShown();
    expect(first).toContain('Put it to soak');
    const started = screen.getAllByText(/the start, 10.min by hand/)[0]?.parentElement?.querySelector('time');
    expect(started?.dateTime ?? '').toMatch(/^2026-/);
    expect((started?.dateTime ?? '') >= `2026-11-25T${hour}`).toBe(true);
    expect(batch().when?.by).toBe('drink');
  });

  test.each(hours)('whose start was missed is moved by its button to a time that can be had, at %s', async (hour) => {
    vi.setSystemTime(new Date(`2026-11-25T${hour}:00`));
    const { user, batch } = await openSheet(planned('drink', '2026-11-25T23:45'));
    const region = await screen.findByRole('region', { name: 'Plan of Saturday almond' });
    expect(textOf(region)).toContain('Too late for');
    const button = within(region).getByRole('button', { name: /^Drink at/ });
    const time = (button.textContent ?? '').replace('Drink at ', '');
    await user.click(button);
    expect(textOf(region)).not.toContain('Not begun yet?');
    expect(textOf(region)).toContain(textOf(button).replace('Drink at ', 'first glass ').slice(0, 12));
    expect(textOf(region)).toContain(time.replaceAll(/\s+/g, ' '));
    expect(batch().when?.from).toBeDefined();
  });

  test('whose start was missed can still be in time with work in the quiet hours', async () => {
    // Strained before the night it is begun at one time; strained in the night, an hour later is early enough.
    const asked = planned('drink', '2026-11-27T09:00');
    const edit = (store: Store) => {
      store.typeCell('b1', 'soakTime', '8 h');
      store.typeCell('b1', 'bottleTime', '0');
      asked(store);
    };
    vi.setSystemTime(new Date('2026-11-25T07:00:00'));
    await openSheet(edit);
    const before = await screen.findByRole('region', { name: 'Plan of Saturday almond' });
    const usual = within(before).getAllByRole('listitem')[0]?.querySelector('time')?.dateTime ?? '';
    cleanup();
    vi.setSystemTime(new Date(`${usual}:00`));
    vi.setSystemTime(Date.now() + 60_000);
    const { user, batch } = await openSheet(edit);
    const region = await screen.findByRole('region', { name: 'Plan of Saturday almond' });
    expect(textOf(region)).toContain('it is still ready for');
    await user.click(within(region).getByRole('button', { name: /^Start at/ }));
    expect(textOf(region)).not.toContain('Not begun yet?');
    expect(batch().when).toMatchObject({ by: 'drink', at: '2026-11-27T09:00' });
  });

  test('keeps half a date in its field and says what to do', async () => {
    const { batch } = await openSheet(planned('start', '2026-11-28T08:00'));
    const field = within(await plan()).getByLabelText('Start Saturday almond at');
    fireEvent.change(field, { target: { value: '0202-11-28T08:00' } });
    expect(textOf(within(await plan()).getByRole('alert'))).toContain('whole date and time');
    expect(textOf(within(await plan()).getByRole('alert'))).toMatch(/still for Sat,? 28 Nov, 08:00( am)?\./);
    expect(batch().when?.at).toBe('2026-11-28T08:00');
    fireEvent.change(field, { target: { value: '2027-01-02T09:30' } });
    expect(batch().when?.at).toBe('2027-01-02T09:30');
    expect(within(await plan()).queryByRole('alert')).toBeNull();
  });

  test('marks work in the quiet hours and offers starts that keep out of them', async () => {
    const { user, batch } = await openSheet(planned('start', '2026-11-28T23:00'));
    expect((await stepsShown())[0]).toContain('In the quiet hours.');
    await user.click(within(await plan()).getByRole('button', { name: /^Start at .* later/ }));
    expect(batch().when?.at).toBe('2026-11-29T07:00');
    expect((await stepsShown()).join()).not.toContain('In the quiet hours.');
  });

  test('follows the quiet hours, which are no step', async () => {
    const { store } = await openSheet(planned('start', '2026-11-28T23:00'));
    fireEvent.change(within(await plan()).getByLabelText('Quiet hours from'), { target: { value: '23:30' } });
    expect(store.settings.value.quiet).toEqual({ from: '23:30', to: '07:00' });
    expect(store.undoName.value).toBe('Plan');
    expect((await stepsShown())[0]).not.toContain('In the quiet hours.');
  });

  test('says why nothing is planned after the start of a batch that is too cold', async () => {
    await openSheet((store) => {
      store.typeCell('b1', 'roomTemperature', '8 °C');
      planned('start', '2026-11-28T08:00')(store);
    });
    const region = await screen.findByRole('region', { name: 'Plan of Saturday almond' });
    expect(textOf(region)).toContain('Planned no further: At 8');
    expect((await stepsShown()).length).toBe(2);
  });

  test('moves one of two batches that are in each other’s way', async () => {
    const { user, store } = await openSheet((all) => {
      planned('start', '2026-11-28T08:00')(all);
      all.copyBatch('b1');
    });
    const region = await plan();
    expect(textOf(region)).toContain('These get in each other’s way');
    await user.click(within(region).getAllByRole('button', { name: /^Start “/ })[0] ?? expect.fail('no remedy'));
    expect(textOf(await plan())).not.toContain('These get in each other’s way');
    expect(new Set(store.document.value.batches.map(({ when }) => when?.at)).size).toBe(2);
  });

  test('tells the day to taste and the last day as days, without an hour', async () => {
    await openSheet(planned('start', '2026-11-28T08:00'));
    const [best, last] = (await stepsShown()).slice(-2);
    expect(best).toMatch(/^Sat,? 5 Dec Taste it by this day/);
    expect(last).toMatch(/^Mon,? 7 Dec Last day to drink it/);
  });

  test('is told in a line: start, strain, first glass', async () => {
    await openSheet(planned('drink', '2026-11-28T18:00'));
    const region = await screen.findByRole('region', { name: 'Plan of Saturday almond' });
    expect(textOf(region)).toMatch(/Start Fri,? 27 Nov.* → strain Sat,? 28 Nov.* → first glass Sat,? 28 Nov/);
  });

  test('of a batch that is past its last day is left out, and said so', async () => {
    const { container } = await openSheet((all) => {
      planned('start', '2026-11-10T08:00')(all);
      all.copyBatch('b1');
    });
    const region = await plan();
    expect(within(region).getByText('2 batches are past their last day, and not in the plan')).toBeTruthy();
    expect(textOf(region)).toContain('“Saturday almond”, last day Thu');
    expect(textOf(region)).not.toContain('These get in each other’s way');
    expect(screen.queryByRole('region', { name: 'Plan of Saturday almond' })).toBeNull();
    expect(container.querySelector('.timeline-picture')).toBeNull();
  });

  test('offers no start that is past', async () => {
    await openSheet(planned('start', '2026-11-25T23:30'));
    vi.setSystemTime(new Date('2026-11-25T23:30:00'));
    cleanup();
    await openSheet(planned('start', '2026-11-25T23:30'));
    const region = await plan();
    expect(within(region).getAllByRole('button', { name: /^Start at .* later/ })).toHaveLength(1);
    expect(within(region).queryByRole('button', { name: /^Start at .* earlier/ })).toBeNull();
  });

  test('says that the same time twice means no quiet hours', async () => {
    await openSheet();
    const region = await plan();
    fireEvent.change(within(region).getByLabelText('Quiet hours from'), { target: { value: '07:00' } });
    expect(textOf(await plan())).toContain('None: both times are the same.');
  });

  test('folds batches that are not planned away where there are many, and keeps the planned ones open', async () => {
    await openSheet((all) => {
      for (let count = 0; count < 7; count += 1) all.copyBatch('b1');
      planned('start', '2026-11-28T08:00')(all);
    });
    const region = await plan();
    const folded = within(region).getByText('Plan another of 7 batches').closest('details') ?? expect.fail('no fold');
    expect(within(folded).getAllByRole('combobox')).toHaveLength(7);
    expect(folded.contains(within(region).getByRole('combobox', { name: 'Plan for Saturday almond' }))).toBe(false);
    // One that is planned there keeps its place while it is at hand.
    const [first] = within(folded).getAllByRole('combobox');
    fireEvent.change(first ?? expect.fail('no field'), { target: { value: 'start' } });
    await within(folded).findByLabelText(/^Start .* at$/);
    expect(within(folded).getAllByRole('combobox')[0]).toBe(first);
  });

  test('tells a clash of each two batches once, grains and jars first, and offers each remedy once', async () => {
    await openSheet((all) => {
      planned('start', '2026-11-28T08:00')(all);
      for (let count = 0; count < 3; count += 1) all.copyBatch('b1');
    });
    const region = await plan();
    const box = region.querySelector<HTMLElement>('.timeline-clashes') ?? expect.fail('no clashes');
    const lines = within(box).getAllByRole('listitem').map(textOf);
    // Four batches are six pairs.
    expect(lines).toHaveLength(8);
    expect(lines[0]).toContain('of water kefir grains');
    expect(lines[1]).toContain('jars');
    for (const line of lines.slice(2)) expect(line).toMatch(/need hands at the same time: 3 times, first Sat 28 Nov/);
    expect(textOf(box)).not.toContain('more like these');
    expect(within(box).getAllByRole('button', { name: /^Start “/ })).toHaveLength(3);
  });

  test('tells no more clashes than can be read, and says how many are left', async () => {
    await openSheet((all) => {
      planned('start', '2026-11-28T08:00')(all);
      for (let count = 0; count < 4; count += 1) all.copyBatch('b1');
    });
    const region = await plan();
    const box = region.querySelector<HTMLElement>('.timeline-clashes') ?? expect.fail('no clashes');
    expect(within(box).getAllByRole('listitem')).toHaveLength(8);
    expect(textOf(box)).toContain('And 4 more like these');
    expect(textOf(box)).toMatch(/and 2 more need/);
  });

  test('keeps the time to drink at where a batch is moved, or says what comes instead', async () => {
    const { user, batch } = await openSheet((all) => {
      planned('drink', '2026-11-28T18:00')(all);
      all.copyBatch('b1');
    });
    const region = await plan();
    const offer = within(region).getByRole('button', { name: /^Start “.*, still ready for Sat (18:00|06:00 pm)$/ });
    await user.click(offer);
    expect(textOf(await plan())).not.toContain('These get in each other’s way');
    expect(batch().when?.by).toBe('drink');
  });

  test('says that the glass comes later where a batch can only be moved to a later start', async () => {
    // To be ready at six on Friday it would have to be begun by now.
    await openSheet((all) => {
      planned('drink', '2026-11-27T05:00')(all);
      all.copyBatch('b1');
    });
    const region = await plan();
    within(region).getByRole('button', { name: /^Start “.*, first glass .* instead of Fri 05:00( am)?$/ });
  });

  test('whose work and first glass are past says that it is over, and makes no calendar file', async () => {
    await openSheet(planned('start', '2026-11-22T08:00'));
    const region = await screen.findByRole('region', { name: 'Plan of Saturday almond' });
    expect(textOf(region)).toContain('This plan is over');
    expect(within(region).queryByRole('button', { name: 'Calendar file' })).toBeNull();
  });

  test('draws a legend, hours, the present and how long it keeps', async () => {
    const { container } = await openSheet(planned('start', '2026-11-25T08:00'));
    await plan();
    const picture = container.querySelector<HTMLElement>('.timeline-picture') ?? expect.fail('no picture');
    expect(textOf(picture)).toMatch(/(06|6 am)(12|12 pm)(18|6 pm).*now/);
    expect(textOf(picture)).toMatch(/until Fri,? 4 Dec →/);
    expect(textOf(picture)).toMatch(/taste or test *first glass/);
  });

  test('of several batches is one calendar file too', async () => {
    await openSheet((all) => {
      planned('start', '2026-11-28T08:00')(all);
      all.copyBatch('b1');
    });
    const region = await plan();
    expect(within(region).getAllByRole('button', { name: 'Calendar file' })).toHaveLength(2);
    expect(within(region).getByRole('button', { name: 'One calendar file of all' })).toBeTruthy();
  });
});
