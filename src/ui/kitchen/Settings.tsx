import type { Store } from '../../batch/store/store';
import { type ScoopSet, usualScoopSet } from '../../measure/scoops';
import { type CupStandardId, cupStandards } from '../../measure/units';

interface Props {
  readonly store: Store;
}

/** How this kitchen measures: the cup on its shelf, the scoops in its drawer, the decimal sign. */
export function Settings({ store }: Props) {
  const settings = store.settings.value;
  return (
    <details class="settings">
      <summary class="button">Spoons and cups</summary>
      <fieldset>
        <legend>A cup holds</legend>
        {standards.map(({ id, name }) => (
          <label key={id}>
            <input
              type="radio"
              name="cups"
              checked={settings.cups === id}
              onChange={() => store.changeSettings({ cups: id })}
            />
            {name}
          </label>
        ))}
      </fieldset>
      <fieldset>
        <legend>Scoops you own</legend>
        <Scoops set={settings.scoops} onChange={(scoops) => store.changeSettings({ scoops })} />
      </fieldset>
      <fieldset>
        <legend>My scale reads to</legend>
        {scales.map((scale) => (
          <label key={scale}>
            <input
              type="radio"
              name="scale"
              checked={settings.scale === scale}
              onChange={() => store.changeSettings({ scale })}
            />
            {scale} g
          </label>
        ))}
      </fieldset>
      <label>
        <input
          type="checkbox"
          checked={settings.decimalComma}
          onChange={(event) => store.changeSettings({ decimalComma: event.currentTarget.checked })}
        />
        Write 1,5 for one and a half
      </label>
    </details>
  );
}

const scales = [0.1, 1, 5] as const;

const standards = Object.entries(cupStandards).map(([id, { name }]) => ({ id: standardId(id), name }));

function standardId(id: string): CupStandardId {
  return id === 'us-label' || id === 'metric' || id === 'metric-20' ? id : 'us';
}

function Scoops({ set, onChange }: { set: ScoopSet; onChange: (set: ScoopSet) => void }) {
  const toggled = <T,>(list: readonly T[], all: readonly T[], one: T): readonly T[] =>
    all.filter((each) => (each === one ? !list.includes(one) : list.includes(each)));
  return (
    <>
      {usualScoopSet.cups.map((cup) => (
        <label key={`cup ${cup}`}>
          <input
            type="checkbox"
            checked={set.cups.includes(cup)}
            onChange={() => onChange({ ...set, cups: toggled(set.cups, usualScoopSet.cups, cup) })}
          />
          {cup} cup
        </label>
      ))}
      <label>
        <input
          type="checkbox"
          checked={set.tablespoon}
          onChange={() => onChange({ ...set, tablespoon: !set.tablespoon })}
        />
        tablespoon
      </label>
      {usualScoopSet.teaspoons.map((spoon) => (
        <label key={`tsp ${spoon}`}>
          <input
            type="checkbox"
            checked={set.teaspoons.includes(spoon)}
            onChange={() => onChange({ ...set, teaspoons: toggled(set.teaspoons, usualScoopSet.teaspoons, spoon) })}
          />
          {spoon} tsp
        </label>
      ))}
    </>
  );
}
