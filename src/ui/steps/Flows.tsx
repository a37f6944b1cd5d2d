import { useState } from 'preact/hooks';
import type { Formulation } from '../../formula/engine/formulate';
import { type Flow, flowsOf } from '../../formula/steps/flows';
import { leading } from '../../formula/words/leading';
import { type Kitchen, writeValue } from '../../formula/words/write-row';
import { Whose } from '../page/Whose';
import './flows.css';

interface Props {
  readonly formulation: Formulation;
  readonly kitchen: Kitchen;
  readonly name: string;
}

/** Where the mass goes, once it is opened: what goes in over what comes out, to scale, and the same as a list. */
export function Flows({ formulation, kitchen, name }: Props) {
  const [open, setOpen] = useState(false);
  return (
    <section class="flows" aria-label={`Where the mass goes in ${name}`}>
      <details class="fold-panel" onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>
          <h2>
            Where the mass goes
            <Whose />
          </h2>
        </summary>
        {open && sides(formulation, kitchen)}
      </details>
    </section>
  );
}

function sides(formulation: Formulation, kitchen: Kitchen) {
  const flows = flowsOf(formulation);
  if (flows === null) return <p>Nothing to draw yet: mend the marked cells first.</p>;
  return (
    <>
      <Side title="Goes in" flows={flows.into} kitchen={kitchen} />
      <Side title="Comes out" flows={flows.out} kitchen={kitchen} />
    </>
  );
}

function Side({ title, flows, kitchen }: { title: string; flows: readonly Flow[]; kitchen: Kitchen }) {
  return (
    <>
      <h3>{title}</h3>
      <div class="stream" aria-hidden="true">
        {flows.map(({ id, share }) => (
          <span key={id} class={`part ${id}`} style={{ flexGrow: share }} />
        ))}
      </div>
      <ul>
        {flows.map(({ id, label, mass, share }) => (
          <li key={id}>
            <span class={`swatch ${id}`} aria-hidden="true" />
            {label}: <b>{leading(writeValue(mass, 'mass', null, kitchen), kitchen.leads).first}</b>,{' '}
            {new Intl.NumberFormat('en', { style: 'percent', maximumFractionDigits: 1 }).format(share)}
          </li>
        ))}
      </ul>
    </>
  );
}
