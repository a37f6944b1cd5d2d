import type { Formulation } from '../../formula/formulate';
import type { RowId } from '../../formula/order';
import { type Kitchen, writeRow } from '../../formula/write-row';
import { leading } from '../jar/leading';

interface Props {
  readonly formulation: Formulation;
  readonly kitchen: Kitchen;
}

/** The batch in a glance: what goes into the jar, and what comes out. */
export function InShort({ formulation, kitchen }: Props) {
  const { choices, rows } = formulation;
  const sweetener = choices.sweetener.map(({ entry }) => entry.name.toLowerCase()).join(' and ');
  const lines: readonly { readonly id: RowId; readonly what: string }[] = [
    { id: 'sourceMass', what: choices.source.plural },
    { id: 'blendWater', what: 'water' },
    { id: 'sweetenerMass', what: sweetener },
    { id: 'grainMass', what: choices.grain.name.toLowerCase() },
    { id: 'drinkVolume', what: 'kefir to drink' },
    { id: 'readyTime', what: 'until ready to taste' },
  ];
  return (
    <ul class="in-short" aria-label="In short">
      {lines
        .filter(({ id }) => rows[id].status !== 'absent')
        .map(({ id, what }) => {
          const written = writeRow(formulation, id, kitchen);
          return (
            <li key={id} class={id === 'drinkVolume' ? 'gives' : ''}>
              <b>{written === null ? '–' : (written.range ?? leading(written, kitchen.leads).first)}</b>
              {/* Grams are the authority, so they stand beside the spoons here too. */}
              {kitchen.leads === 'us' && rows[id].kind === 'mass' && written !== null && ` (${written.metric})`} {what}
            </li>
          );
        })}
    </ul>
  );
}
