import { useEffect, useRef, useState } from 'preact/hooks';
import type { KeptClass, Kitchen } from '../../batch/document/document';
import { longestName } from '../../batch/document/document';
import { keysOf } from '../../batch/document/table-keys';
import { writeTemperature } from '../../batch/edits/class-batches';
import { changeKitchen, classSteps, removeKitchen } from '../../batch/edits/class-edits';
import type { WorkedKitchen } from '../../batch/store/class-sheet';
import type { Store } from '../../batch/store/store';
import { describeLeft, tellKitchen } from '../../formula/lesson/lesson-words';
import { readField } from '../../interchange/class-words';
import { grains } from '../../reference/grains';
import { jars } from '../../reference/jars';
import { KeptTyped, Refusal, Typed } from '../page/Typed';

interface Props {
  readonly kept: KeptClass;
  readonly place: number;
  readonly kitchen: Kitchen;
  readonly worked: WorkedKitchen | null;
  /** Whether it was just added, so that its name is typed next. */
  readonly isNew: boolean;
  readonly store: Store;
}

/** One kitchen: what it has, to be changed in place, and what it weighs. */
export function KitchenRow({ kept, place, kitchen, worked, isNew, store }: Props) {
  const { name, vessel, leads, grains: culture } = kitchen;
  const settings = { ...store.settings.value, leads };
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (!isNew) return;
    field.current?.focus();
    field.current?.select();
  }, [isNew]);
  const [typed, setTyped] = useState<string | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const change = (changes: Partial<Kitchen>, step: string) =>
    store.takeEdit(changeKitchen(store.document.peek(), kept.key, place, changes), step);
  const remove = () =>
    store.takeEdit(removeKitchen(store.document.peek(), kept.key, place), classSteps.removeKitchen(kitchen));
  const keepRoom = () => {
    if (typed === null) return;
    const read = readField('temperature', typed, settings);
    const why = read !== null && 'problem' in read ? read.problem : null;
    setRefused(why);
    if (why !== null) return;
    setTyped(null);
    const temperature = read !== null && 'field' in read && read.field === 'temperature' ? read.value : null;
    change({ temperature }, classSteps.changeKitchen(kitchen, 'temperature'));
  };
  const write = (celsius: number): string => writeTemperature(celsius, leads, settings.decimalComma);
  const room = worked?.formulation.rows.roomTemperature.value;
  const told = worked === null ? null : tellKitchen(worked.formulation, settings);
  return (
    <li class="class-kitchen">
      <KeptTyped
        class="class-name"
        field={field}
        aria-label={`Name: ${name}`}
        kept={name}
        maxLength={longestName}
        onKeep={(text) => change({ name: text }, classSteps.renameKitchen(text))}
      />
      <select
        aria-label={`Jar of ${name}`}
        value={vessel}
        onChange={({ currentTarget: { value } }) => {
          const id = keysOf(jars).find((one) => one === value);
          if (id !== undefined) change({ vessel: id }, classSteps.changeKitchen(kitchen, 'vessel'));
        }}
      >
        {keysOf(jars).map((id) => (
          <option key={id} value={id}>
            {jars[id].name}
          </option>
        ))}
      </select>
      <Typed
        aria-label={`Room of ${name}`}
        value={typed ?? (kitchen.temperature === null ? '' : write(kitchen.temperature))}
        placeholder={typeof room === 'number' ? write(room) : 'as the recipe'}
        isRefused={refused !== null}
        onText={setTyped}
        onBlur={keepRoom}
        onKeyDown={({ key }) => key === 'Enter' && keepRoom()}
      />
      <select
        aria-label={`Units of ${name}`}
        value={leads}
        onChange={({ currentTarget: { value } }) =>
          change({ leads: value === 'us' ? 'us' : 'metric' }, classSteps.changeKitchen(kitchen, 'leads'))
        }
      >
        <option value="metric">Metric</option>
        <option value="us">US</option>
      </select>
      <select
        aria-label={`Culture of ${name}`}
        value={culture}
        onChange={({ currentTarget: { value } }) => {
          const id = keysOf(grains).find((one) => one === value);
          if (id !== undefined) change({ grains: id }, classSteps.changeKitchen(kitchen, 'grains'));
        }}
      >
        {keysOf(grains).map((id) => (
          <option key={id} value={id}>
            {grains[id].name}
          </option>
        ))}
      </select>
      <button type="button" class="quiet class-remove" aria-label={`Remove ${name}`} onClick={remove}>
        Remove
      </button>
      <Refusal why={refused} />
      {told !== null && (
        <p class="class-amounts">
          {told.takes.map((one) => (
            <span key={one}>{one}</span>
          ))}
          {told.ready !== '' && <span class={told.isTimed ? undefined : 'class-untimed'}>{told.ready}</span>}
        </p>
      )}
      {worked !== null &&
        describeLeft(worked.left, settings).map((text) => (
          <p key={text} class="hint">
            {text}
          </p>
        ))}
    </li>
  );
}
