import { commonPractice, fromMemory, judgement, type Origin, published } from './origins';
import type { SweetenerId } from './sweeteners';

/** What is to be said of a sweetener that no figure says. */
export interface SweetenerNote {
  readonly flavour: string;
  readonly caution?: { readonly text: string; readonly origin: Origin };
  /** Where the reason for refusing it is from. */
  readonly refusedOrigin?: Origin;
}

const bulked = {
  text: 'Packets are often bulked with real sugar such as glucose; read the label.',
  origin: commonPractice(),
};

function refused(flavour: string, caution?: SweetenerNote['caution']): SweetenerNote {
  const refusedOrigin = fromMemory();
  return caution === undefined ? { flavour, refusedOrigin } : { flavour, caution, refusedOrigin };
}

/** Flavour and warning of each sweetener, in plain words. */
export const sweetenerNotes: Readonly<Record<SweetenerId, SweetenerNote>> = {
  caneWhite: { flavour: 'Clean, no taste of its own.' },
  caneRaw: { flavour: 'Faint molasses.' },
  brown: { flavour: 'Caramel and molasses.' },
  mapleSyrup: { flavour: 'Maple, woody.' },
  mapleSugar: { flavour: 'Maple, toasted.' },
  honey: {
    flavour: 'Floral; strong in a long ferment.',
    caution: {
      text: 'Never for a child under 12 months. Raw honey brings its own microbes.',
      origin: published('infant-honey', 'both pages', 'That raw honey brings microbes is from memory.'),
    },
  },
  molasses: { flavour: 'Dark, bitter-sweet; a little goes far.' },
  agave: {
    flavour: 'Mild, very sweet.',
    caution: {
      text: 'Mostly fructose: it ferments more slowly and the grains grow less.',
      origin: published(
        'water-kefir-sugars-2021',
        'abstract',
        'Glucose went faster than fructose, and fructose in place of sucrose lowered the growth of the grains.',
      ),
    },
  },
  coconutSugar: { flavour: 'Caramel.' },
  dateSyrup: { flavour: 'Dates and toffee.' },
  dates: {
    flavour: 'Toffee.',
    caution: {
      text: 'Blend them in before straining; some of their sugar stays in the pulp.',
      origin: commonPractice('That sugar stays in the pulp follows from the water the pulp holds.'),
    },
  },
  cornSyrup: {
    flavour: 'Neutral.',
    caution: {
      text: 'How much of it ferments is very uncertain.',
      origin: judgement('Two releases of one record differ by 50 g in 100 g.'),
    },
  },
  dextrose: {
    flavour: 'Clean, less sweet than sugar.',
    caution: {
      text: 'If the packet says anhydrous, a tenth less does.',
      origin: fromMemory('Computed: 0.9091 of the mass.'),
    },
  },
  sorghumSyrup: { flavour: 'Malty, earthy.' },
  caneSyrup: { flavour: 'Light caramel.' },
  stevia: refused('Very sweet, liquorice.', bulked),
  erythritol: refused('Cool, sweet.'),
  xylitol: refused('Cool, sweet.'),
  monkFruit: refused('Very sweet, fruity.', bulked),
  sucralose: refused('Very sweet.', bulked),
  allulose: refused('Mild, sweet.'),
  none: { flavour: 'The milk alone.' },
};
