import { useState } from 'preact/hooks';
import type { Store } from '../../batch/store/store';
import type { SweetenerPart } from '../../formula/recipe/recipe';
import { leading } from '../../formula/words/leading';
import { writeValue } from '../../formula/words/write-row';
import { swapAmount } from '../../interchange/swap-amount';
import { readShare } from '../../interchange/typed-texts';
import { type SweetenerId, sweeteners } from '../../reference/sweeteners';
import './swap-answer.css';
import { Refusal, Typed } from '../page/Typed';

interface Props {
  readonly store: Pick<Store, 'settings' | 'document'>;
}

/** How much of one sweetener stands for an amount of another, in weight and spoons, without a batch. */
export function SwapAnswer({ store }: Props) {
  const settings = store.settings.value;
  const { ownFoods = [] } = store.document.value;
  const [text, setText] = useState('2 tbsp');
  const [from, setFrom] = useState<SweetenerId>('caneWhite');
  const [to, setTo] = useState<SweetenerId>('honey');
  const [second, setSecond] = useState<SweetenerId | null>(null);
  const [typedShare, setShare] = useState('50');
  const share = readShare(typedShare, settings.decimalComma);
  const habits = { cups: settings.cups, decimalComma: settings.decimalComma, ownFoods };
  const parts = second === null ? [{ id: to, share: 1 }] : share === null ? null : blendOf(to, second, share);
  const found = parts === null ? noShare : swapAmount(text, from, parts, habits);
  return (
    <section class="swap-answer" aria-label="One sweetener for another">
      <div class="swap-asked">
        <label>
          Amount
          <Typed value={text} onText={setText} />
        </label>
        <Menu label="of" value={from} onPick={setFrom} />
        <Menu label="in" value={to} onPick={setTo} />
        <Menu label="blended with" value={second} onPick={setSecond} onNone={() => setSecond(null)} />
        {second !== null && (
          <label>
            % of the weight
            <Typed
              inputMode="decimal"
              aria-label={`Share of ${sweeteners[second].name}, % of the weight`}
              value={typedShare}
              onText={setShare}
            />
          </label>
        )}
      </div>
      {found.ok ? (
        <div role="status">
          <p>
            {text.trim()} of {lower(from)} is
          </p>
          <ul>
            {found.answer.parts.map(({ id, grams, weight }) => {
              const written = writeValue(grams.likely, 'mass', weight, settings);
              const { first, second: other } = leading(written, settings.leads);
              const [low, high] = [grams.low, grams.high].map((end) => writeValue(end, 'mass', null, settings).metric);
              return (
                <li key={id}>
                  <b>{first}</b>
                  {other !== null && ` (${other})`} of {lower(id)}
                  {low !== high && `, by other hands and labels ${low} to ${high}`}
                </li>
              );
            })}
          </ul>
          <p class="second">
            {found.answer.parts.length > 1
              ? 'The same fermentable sugar. The shares go by weight.'
              : 'The same fermentable sugar.'}
          </p>
          {found.answer.cautions.map((caution) => (
            <p key={caution} class="care">
              {caution}
            </p>
          ))}
        </div>
      ) : (
        <Refusal why={found.why} />
      )}
    </section>
  );
}

const noShare = { ok: false, why: 'A share is a number of per cent from 0 to 100, such as 50.' } as const;

function blendOf(
  first: SweetenerId,
  second: SweetenerId,
  share: { of: number; rest: number },
): readonly SweetenerPart[] {
  if (first === second) return [{ id: first, share: 1 }];
  return [
    { id: first, share: share.rest },
    { id: second, share: share.of },
  ];
}

function lower(id: SweetenerId): string {
  const { name } = sweeteners[id];
  return `${name.charAt(0).toLowerCase()}${name.slice(1)}`;
}

interface MenuProps {
  readonly label: string;
  readonly value: SweetenerId | null;
  readonly onPick: (id: SweetenerId) => void;
  readonly onNone?: () => void;
}

function Menu({ label, value, onPick, onNone }: MenuProps) {
  return (
    <label>
      {label}
      <select
        value={value ?? ''}
        onChange={(event) => {
          const picked = event.currentTarget.value;
          if (isSweetener(picked)) onPick(picked);
          else onNone?.();
        }}
      >
        {onNone !== undefined && <option value="">nothing else</option>}
        {ids.map((id) => (
          <option key={id} value={id}>
            {sweeteners[id].name}
          </option>
        ))}
      </select>
    </label>
  );
}

function isSweetener(id: string): id is SweetenerId {
  return Object.hasOwn(sweeteners, id);
}

const ids = Object.keys(sweeteners)
  .filter(isSweetener)
  .filter((id) => id !== 'none');
