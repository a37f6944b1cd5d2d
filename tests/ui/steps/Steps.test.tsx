// @vitest-environment happy-dom
import { cleanup, fireEvent, screen, within } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { openSheet, textOf } from '../open-sheet';

beforeEach(() => localStorage.clear());
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

function steps(): HTMLElement {
  return screen.getByRole('region', { name: /^Steps for / });
}

describe('the steps', () => {
  test('hold the amounts of the batch, as typed for it', async () => {
    await openSheet((store) => store.typeCell('b1', 'sourceMass', '200 g'));
    expect(textOf(steps())).toContain('Weigh out the almonds: 200 g (about 1 ⅓ cups, 5 % short');
    expect(within(steps()).getAllByRole('listitem').length).toBeGreaterThan(8);
  });

  test('lead with the unit the cook leads with', async () => {
    await openSheet((store) => {
      store.typeCell('b1', 'blendWater', '500 mL');
      store.changeSettings({ leads: 'us' });
    });
    expect(textOf(steps())).toMatch(/2 cups[^.]*\(500 mL\)/);
  });

  test('leave out what a source has not, and name the row to mend where an amount is missing', async () => {
    await openSheet((store) => {
      store.typeCell('b1', 'sourceMass', '17o g');
      store.choose('b1', 'source', 'hemp');
    });
    const hemp = screen.getByRole('region', { name: 'Steps for Hemp hearts' });
    expect(textOf(hemp)).not.toContain('Soak it');
    expect(textOf(hemp)).not.toContain('almonds');
  });

  test('keep the figures they had where a cell is refused, and say which one is to be mended', async () => {
    const { store } = await openSheet((sheet) => sheet.typeCell('b1', 'sourceMass', '200 g'));
    store.typeCell('b1', 'sourceMass', '17o g');
    expect(await within(steps()).findByText(/as they were: mend “/)).toBeDefined();
    expect(within(steps()).getByText('200 g').tagName).toBe('B');
  });

  test.each(['water', 'milk'] as const)('show six cautions at most, unasked, for %s grains', async (grains) => {
    await openSheet((store) => store.choose('b1', 'grains', grains));
    const shown = document.querySelectorAll('.caution').length;
    expect(shown).toBeGreaterThan(0);
    expect(shown).toBeLessThanOrEqual(6);
  });

  test('show amounts bold in the unit that leads, and nothing else', async () => {
    await openSheet((store) => store.typeCell('b1', 'sourceMass', '200 g'));
    const bold = [...steps().querySelectorAll('.told b')].map(textOf);
    expect(bold).toContain('200 g');
    for (const amount of bold) expect(amount).toMatch(/^[\d.]+( |$)/);
  });

  test('have one line of warning at most, and the rest behind “more”', async () => {
    const { user } = await openSheet();
    const [choose] = within(steps()).getAllByRole('listitem');
    if (choose === undefined) throw new Error('there is no step');
    expect(choose.querySelectorAll('.caution')).toHaveLength(1);
    expect(textOf(choose)).not.toContain('Listeria');
    await user.click(within(choose).getByRole('button', { name: 'More about: Choose and weigh' }));
    expect(textOf(choose)).toContain('Plant milks feed Listeria');
    for (const item of within(steps()).getAllByRole('listitem'))
      expect(item.querySelectorAll('.under > .caution').length).toBeLessThanOrEqual(1);
  });
});

describe('a tick', () => {
  const tick = (title: string) => screen.getByRole<HTMLInputElement>('checkbox', { name: `Done: ${title}` });

  test('is there after the page is opened anew, for its batch alone', async () => {
    const { user } = await openSheet();
    await user.click(tick('Blend it'));
    cleanup();
    const { store } = await openSheet((sheet) => sheet.copyBatch('b1'));
    expect(tick('Blend it').checked).toBe(true);
    expect(tick('Strain and press').checked).toBe(false);
    const [, copy] = store.document.value.batches;
    expect(JSON.parse(localStorage.getItem('jarwright.ticks') ?? '{}')).not.toHaveProperty(copy?.id ?? '');
  });

  test('goes with its batch: another that is given the same id has none', async () => {
    const { store, user } = await openSheet((sheet) => sheet.addBatch());
    const [, second] = store.document.value.batches;
    if (second === undefined) throw new Error('no batch was added');
    localStorage.setItem('jarwright.ticks', JSON.stringify({ [second.id]: ['blend'] }));
    cleanup();
    await openSheet();
    await user.click(tick('Blend it'));
    await user.click(screen.getByRole('button', { name: 'Untick all' }));
    await vi.waitFor(() => expect(localStorage.getItem('jarwright.ticks')).not.toContain(second.id));
    expect(tick('Blend it').checked).toBe(false);
  });

  test.each(['nothing', '[1', '{"b1":7}', '{"b1":["boil",null]}', '[]', 'null'])('is not made of %s', async (kept) => {
    localStorage.setItem('jarwright.ticks', kept);
    await openSheet();
    for (const box of within(steps()).getAllByRole<HTMLInputElement>('checkbox')) expect(box.checked).toBe(false);
  });

  test('can be made where nothing can be kept', async () => {
    const { user } = await openSheet();
    vi.spyOn(Storage.prototype, 'setItem').mockImplementation(() => {
      throw new Error('full');
    });
    await user.click(tick('Blend it'));
    expect(tick('Blend it').checked).toBe(true);
    vi.restoreAllMocks();
  });
});

describe('“it was …”', () => {
  async function measure(thing: string, text: string) {
    const sheet = await openSheet();
    await sheet.user.click(within(steps()).getByRole('button', { name: `${thing} …` }));
    const field = within(steps()).getByRole('textbox', { name: /^Measured/ });
    expect(document.activeElement).toBe(field);
    await sheet.user.type(field, `${text}{Enter}`);
    return sheet;
  }

  test('measures the milk where it is strained, and says which amounts move with it', async () => {
    const { batch, amountOf } = await measure('milk was', '600');
    expect(batch().measured.milkVolume?.amount).toBe(600);
    const said = textOf(steps());
    expect(said).toContain('milk was 600 mL, expected 752 mL. So now:');
    expect(said).toContain(`${Math.round(Number(amountOf('grainMass')))} g (was 41 g)`);
    expect(document.activeElement?.textContent).toBe('change');
  });

  test('is read in the unit that stands beside it', async () => {
    const { user, batch } = await openSheet((store) => store.changeSettings({ leads: 'us' }));
    await user.click(within(steps()).getByRole('button', { name: 'pulp was …' }));
    const field = within(steps()).getByRole('textbox', { name: /^Measured/ });
    expect(textOf(field.parentElement ?? field)).toMatch(/ oz$/);
    await user.type(field, '4{Enter}');
    expect(batch().measured.pulpMass?.amount).toBeCloseTo(113.4, 1);
  });

  test('keeps what can’t be read beside its message, and is forgotten again', async () => {
    const { user, batch } = await measure('it was', '2oo g');
    const field = within(steps()).getByRole('textbox', { name: /^Measured/ });
    expect(field).toHaveProperty('value', '2oo g');
    expect(textOf(within(steps()).getByRole('alert')).length).toBeGreaterThan(10);
    await user.click(within(steps()).getByRole('button', { name: 'Forget it' }));
    expect(batch().measured.soakedMass).toBeUndefined();
    expect(document.activeElement?.textContent).toBe('it was …');
  });

  test('is shut by Escape with nothing measured', async () => {
    const { user, batch } = await openSheet();
    await user.click(within(steps()).getByRole('button', { name: 'milk was …' }));
    await user.keyboard('5{Escape}');
    expect(batch().measured).toEqual({});
    expect(within(steps()).queryByRole('textbox', { name: /^Measured/ })).toBeNull();
  });
});

describe('the screen', () => {
  function lockable() {
    const lock = { released: false, release: vi.fn(async () => undefined) };
    const request = vi.fn(async () => lock);
    vi.stubGlobal('navigator', Object.assign(Object.create(navigator), { wakeLock: { request } }));
    return { lock, request };
  }

  test('stays awake from the first tick on, and sleeps when told to', async () => {
    const { lock, request } = lockable();
    const { user } = await openSheet();
    expect(request).not.toHaveBeenCalled();
    await user.click(screen.getByRole('checkbox', { name: 'Done: Blend it' }));
    await vi.waitFor(() => expect(request).toHaveBeenCalledWith('screen'));
    await user.click(screen.getByRole('button', { name: 'Keep the screen awake' }));
    await vi.waitFor(() => expect(lock.release).toHaveBeenCalled());
  });

  test('sleeps when another part is looked at', async () => {
    const { lock, request } = lockable();
    const { user } = await openSheet();
    fireEvent.click(screen.getByRole('button', { name: /^Start a timer of 10\sh/ }));
    await vi.waitFor(() => expect(request).toHaveBeenCalled());
    await user.click(screen.getByRole('tab', { name: 'Kitchen' }));
    await vi.waitFor(() => expect(lock.release).toHaveBeenCalled());
  });
});

describe('the heat step', () => {
  async function open() {
    const sheet = await openSheet();
    await sheet.user.click(screen.getByText('Add a heat step'));
    return sheet;
  }
  const temperature = () => screen.getByRole('textbox', { name: 'Temperature of the heat step' });
  const time = () => screen.getByRole('textbox', { name: 'Time of the heat step' });
  const add = () => screen.getByRole('button', { name: 'Add' });

  test('is added with what was typed, and left out again', async () => {
    const { store, user, batch } = await open();
    await user.type(temperature(), '85');
    await user.type(time(), '5');
    await user.click(add());
    expect(batch().heat).toEqual({ what: 'milk', temperature: 85, minutes: 5 });
    expect(textOf(steps())).toContain('85 °C');
    expect(document.activeElement?.textContent).toBe('Leave out the heat step');
    await user.click(within(steps()).getByRole('button', { name: 'Leave out the heat step' }));
    expect(batch().heat).toBeNull();
    expect(document.activeElement?.textContent).toBe('Add a heat step');
    expect(store.undoName.value).toBe('Leave out the heat step');
  });

  test('reads °F, and blanches the source', async () => {
    const { user, batch } = await open();
    await user.selectOptions(within(steps()).getByRole('combobox'), 'the nut or seed, before blending');
    await user.type(temperature(), '212 F');
    await user.type(time(), '1 h');
    await user.click(add());
    expect(batch().heat).toEqual({ what: 'source', temperature: 100, minutes: 60 });
  });

  test.each([
    ['hot', '5', 'hot'],
    ['185', '5', 'between 0 °C and 100 °C'],
    ['85', '0', 'more than 0 minutes'],
    ['', '', ''],
  ])('of %j for %j is explained, and what was typed stays', async (degrees, minutes, says) => {
    const { store, user } = await open();
    if (degrees !== '') await user.type(temperature(), degrees);
    if (minutes !== '') await user.type(time(), minutes);
    await user.click(add());
    const said = textOf(within(steps()).getByRole('alert'));
    expect(said.length).toBeGreaterThan(10);
    expect(said).toContain(says);
    expect(temperature()).toHaveProperty('value', degrees);
    expect(store.undoName.value).toBeNull();
  });
});
