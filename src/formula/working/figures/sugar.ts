import type { Sugars } from '../../../reference/foods';
import type { Origin } from '../../../reference/origins';
import { molarMasses } from '../../../reference/physics';
import type { Composition } from '../../../reference/sources';
import { sweeteners } from '../../../reference/sweeteners';
import { reducedAt } from '../../composition/composition-in-effect';
import { nativeRange, nativeSugarRange } from '../../composition/native';
import { type Blend, fermentableOf, fermentableOfOne } from '../../models/blend';
import { nativeHexose, totalSugars } from '../../models/strain';
import { type Appetite, hexosePerDisaccharide } from '../../models/sugar';
import type { Access } from '../../rows/row';
import { entry, type Figure, type FigureMaker, ofTable, workedOut } from '../figure';
import { sourceAsUsed, sugarsOf } from './food';
import { inMeasures } from './unit';

/** Grams of hexose from a gram of a double sugar. */
export function hexosePerDouble(): Figure {
  return workedOut('χ', 'Hexose from a gram of double sugar', 'g/g', hexosePerDisaccharide, {
    words: 'Water splits a double sugar into two single ones and weighs with them.',
    formula: '2 × {hexose} ÷ {disaccharide}',
    parts: {
      hexose: hexoseMass(),
      disaccharide: ofTable('M_d', 'Molar mass of a double sugar', molarMasses.disaccharide),
    },
  });
}

/** Molar mass of glucose and fructose. */
export function hexoseMass(): Figure {
  return ofTable('M_h', 'Molar mass of hexose', molarMasses.hexose);
}

const singles = ['glucose', 'fructose', 'galactose'] as const;
const doubles = ['sucrose', 'maltose', 'lactose'] as const;

function isTaken(name: keyof Sugars, takes: Appetite): boolean {
  return name === 'lactose' || name === 'galactose' ? takes[name] : true;
}

/** Fermentable sugar, as hexose, of the kinds a table gives, in g of 100 g: those that are there and the grains take. */
function knownSugars(sugars: Sugars, takes: Appetite, origin: Origin) {
  const parts: Record<string, Figure> = {};
  const written = (names: readonly (keyof Sugars)[]): string => {
    const there = names.filter((name) => isTaken(name, takes) && (sugars[name] ?? 0) > 0);
    for (const name of there) {
      const label = `${name.replace(/^./, (first) => first.toUpperCase())} of the table`;
      parts[name] = entry(name.slice(0, 2), label, sugars[name] ?? 0, 'g in 100 g', origin);
    }
    return there.map((name) => `{${name}}`).join(' + ');
  };
  const [single, double] = [written(singles), written(doubles)];
  if (double !== '') parts.χ = hexosePerDouble();
  const doubled = double === '' ? '' : `(${double}) × {χ}`;
  return { formula: [single, doubled].filter((text) => text !== '').join(' + ') || '0', parts };
}

/** Fermentable sugar in a gram of one sweetener: its likely figure, or the most that is left open. */
function fermentableIn(blend: Blend[number], takes: Appetite, end: 'value' | 'high', mark: string): Figure {
  const { entry: sweetener } = blend;
  const value = fermentableOfOne(sweetener, takes)[end];
  const label = `Fermentable sugar in a gram: ${sweetener.name}`;
  const symbol = `f${mark}`;
  const { total } = sweetener;
  if (total === undefined) {
    const { formula, parts } = knownSugars(sweetener.sugars, takes, sweetener.sugars.origin);
    return workedOut(symbol, label, 'g/g', value, {
      words: 'Single sugars as they are, double ones as the hexose they make; those that these grains take.',
      formula: formula === '0' ? '0' : `(${formula}) ÷ 100`,
      parts,
    });
  }
  const least = entry('s₋', 'All sugars, at least', total.low, 'g in 100 g', total.origin);
  const most = entry('s₊', 'All sugars, at most', total.high, 'g in 100 g', total.origin);
  const χ = hexosePerDouble();
  return end === 'high'
    ? workedOut(symbol, label, 'g/g', value, {
        words: 'No table says which sugars: at most they are all double ones.',
        formula: '{most} × {χ} ÷ 100',
        parts: { most, χ },
      })
    : workedOut(symbol, label, 'g/g', value, {
        words: 'No table says which sugars: the middle of the least, all single, and the most, all double.',
        formula: '({least} + {most} × {χ}) ÷ 2 ÷ 100',
        parts: { least, most, χ },
      });
}

/** Figures of the parts of a blend by their shares, added up. */
function blended(
  blend: Blend,
  make: (part: Blend[number], mark: string) => Figure,
): { formula: string; parts: Record<string, Figure> } {
  const [only, ...others] = blend;
  if (only === undefined) return { formula: '0', parts: {} };
  if (others.length === 0) return { formula: '{one}', parts: { one: make(only, '₁') } };
  const parts: Record<string, Figure> = {};
  const terms = blend.map((part, at) => {
    parts[`share${at}`] = workedOut(`b${at + 1}`, `Share of ${part.entry.name}`, 'share', part.share, {
      words: 'As the blend was chosen.',
      formula: '',
    });
    parts[`part${at}`] = make(part, `${at + 1}`);
    return `{share${at}} × {part${at}}`;
  });
  return { formula: terms.join(' + '), parts };
}

function fermentableBlend(x: Access, end: 'value' | 'high'): Figure {
  const { sweetener, grain } = x.choices;
  const label = end === 'high' ? 'The most that may be in a gram of it' : 'Fermentable sugar in a gram of it';
  return workedOut(end === 'high' ? 'f₊' : 'f', label, 'g/g', fermentableOf(sweetener, grain.takes)[end], {
    words: 'By its composition, or by those of the parts of a blend.',
    ...blended(sweetener, (part, mark) => fermentableIn(part, grain.takes, end, mark)),
  });
}

/** Fermentable sugar of a food, g of hexose per g: the kinds its table gives, and what is left of the total. */
function hexoseOf(x: Access, food: Composition, total: Figure, end: 'value' | 'high', mark: string): Figure {
  const { takes } = x.choices.grain;
  const known = knownSugars(food, takes, food.origin);
  const range = totalSugars(food);
  const label = `Fermentable sugar in a gram of ${mark === 'ₒ' ? 'its own liquid' : 'the source'}`;
  const printed = [...singles, ...doubles].filter((name) => (food[name] ?? 0) > 0);
  const all = Object.fromEntries(
    printed.map((name) => [
      `all_${name}`,
      entry(name.slice(0, 2), `${name} of the table`, food[name] ?? 0, 'g in 100 g', food.origin),
    ]),
  );
  const taken = printed.map((name) => ` − {all_${name}} ÷ 100`).join('');
  const least = range.low === range.high ? '{total}' : '0';
  const most = range.low === range.high ? '{total}' : '2 × {total}';
  const χ = hexosePerDouble();
  const parts = { ...known.parts, ...all, total, χ };
  const open = (of: string): string => `(${of}${taken}, if above 0)`;
  const base = known.formula === '0' ? '' : `(${known.formula}) ÷ 100 + `;
  return workedOut(`f${mark}`, label, 'g/g', nativeHexose(food, takes)[end], {
    words:
      'Of the sugars its table gives, single ones as they are and double ones as the hexose they make; what is left of all its sugars lies between the two.',
    formula:
      end === 'high'
        ? `${base}${open(most)} × {χ}`
        : `${base}(${least === '0' ? '' : `${open(least)} + `}${open(most)} × {χ}) ÷ 2`,
    parts,
  });
}

function hexosePerSugar(x: Access, end: 'value' | 'high'): Figure {
  const ratio = x.of('waterRatio');
  const value = nativeRange(x, reducedAt(x, ratio))[end];
  const [symbol, label] = [end === 'high' ? 'φ₊' : 'φ₀', 'Hexose from a gram of the milk’s sugar'];
  const { strain } = reducedAt(x, ratio);
  if (!(strain.sugars + strain.own.sugars > 0)) {
    return workedOut(symbol, label, 'g/g', value, { words: 'It has no sugar.', formula: '0' });
  }
  const { table, sugars } = sourceAsUsed(x);
  // The single sugars of a table say nothing of a drink whose label says another total.
  const food = x.choices.source.label === null ? table : withoutKinds(table, sugars.value);
  const source = hexoseOf(x, food, sugars, end, '₀');
  const { ownWater } = x.choices.source;
  const kept = strain.sugars + strain.leached > 0 ? '{source} × (1 − {leaching})' : '{source}';
  if (ownWater === null) {
    const told = {
      words: 'The hexose of the source over its sugars.',
      formula: `${kept} ÷ {sourceSugars}`,
      parts: { source },
    };
    return workedOut(symbol, label, 'g/g', value, told);
  }
  const own = hexoseOf(x, ownWater.composition, sugarsOf(ownWater.composition), end, 'ₒ');
  return workedOut(symbol, label, 'g/g', value, {
    words: 'The hexose of the source and of its own liquid over the sugars of both.',
    formula: `(${kept} + {own} × {ownUsed}) ÷ {sourceSugars}`,
    parts: { source, own },
  });
}

function withoutKinds(table: Composition, sugars: number): Composition {
  const kinds = { sucrose: null, glucose: null, fructose: null, maltose: null, lactose: null, galactose: null };
  return { ...table, ...kinds, sugars: 100 * sugars };
}

/** The spoon or cup that a sweetener is weighed by. */
function spoonOf(blend: Blend) {
  const [only, ...others] = blend;
  const spoon = only?.entry.spoon ?? null;
  return others.length === 0 ? spoon : null;
}

function spoonWeight(blend: Blend): Figure {
  const spoon = spoonOf(blend);
  return spoon === null
    ? workedOut('m_l', 'Weight', 'g', 1, { words: 'A gram of the blend.', formula: '' })
    : entry('m_l', `Weight of a level measure (${spoon.measure})`, spoon.grams, 'g', spoon.origin);
}

function spoonVolume(blend: Blend): Figure {
  const spoon = spoonOf(blend);
  if (spoon !== null) return inMeasures('V_l', 'Volume of that measure', spoon.millilitres);
  const volume = blend.reduce((sum, { entry: { spoon: own }, share }) => {
    return sum + (own ? (share * own.millilitres) / own.grams : Number.NaN);
  }, 0);
  return workedOut('V_l', 'Volume of a gram of the blend', 'mL', volume, {
    words: 'Each part by the published weight of a level spoon or cup of it.',
    ...blended(blend, ({ entry: { name, spoon: own } }, mark) =>
      workedOut(`v${mark}`, `Volume of a gram: ${name}`, 'mL/g', own ? own.millilitres / own.grams : Number.NaN, {
        words: 'From the published weight of a level spoon or cup of it.',
        formula: '{volume} ÷ {weight}',
        parts: {
          ...(own
            ? {
                volume: inMeasures('V_l', 'Volume of that measure', own.millilitres),
                weight: entry('m_l', `Weight of a level measure (${own.measure})`, own.grams, 'g', own.origin),
              }
            : {}),
        },
      }),
    ),
  });
}

const cane: Blend = [{ entry: sweeteners.caneWhite, share: 1 }];

/** What source and sweetener hold for the grains. */
export const sugarFigures = {
  hexoseMass,
  milkSugars: (x) =>
    workedOut('S_m', 'Sugars of the milk, per g of source', 'g/g', x.stages()?.milkSugars ?? Number.NaN, {
      words: 'What the pulp does not keep and handling does not lose.',
      formula: '(1 − {heldBack}) × {sourceSugars} × (1 − {handlingLoss})',
    }),
  hexosePerSugar: (x) => hexosePerSugar(x, 'value'),
  fermentableBlend: (x) => fermentableBlend(x, 'value'),
  fermentableCane: (x) =>
    fermentableIn({ entry: sweeteners.caneWhite, share: 1 }, x.choices.grain.takes, 'value', '_c'),
  sweetenerOpen: (x) => {
    const { value, high } = fermentableOf(x.choices.sweetener, x.choices.grain.takes);
    const [symbol, label] = ['o', 'How much more the sweetener may hold, as a share'];
    if (!(value > 0)) return workedOut(symbol, label, 'share', 0, { words: 'There is none in it.', formula: '0' });
    return workedOut(symbol, label, 'share', high / value - 1, {
      words: 'The most over the likely figure; 0 where it is known.',
      formula: '{most} ÷ {likely} − 1',
      parts: { most: fermentableBlend(x, 'high'), likely: fermentableBlend(x, 'value') },
    });
  },
  nativeMost: (x) => {
    const { high } = nativeSugarRange(x);
    const [symbol, label] = ['s₀₊', 'Native sugar of the milk, at most'];
    const byTable = workedOut('s_T', 'By its table, at most', 'g/L', tableMost(x), {
      words: 'The same sum with all that the table leaves open.',
      formula: '1000 × {milkSugars} × {most} ÷ {milkPerGram}',
      parts: { most: hexosePerSugar(x, 'high') },
    });
    if (high === byTable.value) {
      return workedOut(symbol, label, 'g/L', high, {
        words: 'By its table.',
        formula: '{byTable}',
        parts: { byTable },
      });
    }
    const { label: carton } = x.choices.source;
    const byLabel = workedOut('s_l', 'By labels of its kind, at most', 'g/L', high, {
      words:
        carton === null
          ? ''
          : `The same balance with the most that such labels say, ${carton.sugarPerServing.high ?? carton.sugarPerServing.value} ${carton.sugarPerServing.unit}, or with your sugar in the smallest serving that labels count by, ${carton.serving.low ?? carton.serving.value} ${carton.serving.unit}.`,
      formula: '',
    });
    return workedOut(symbol, label, 'g/L', high, {
      words: 'Until you put in what your label says, the more of what the table and such labels say.',
      formula: 'the most of {byTable}, {byLabel}',
      parts: { byTable, byLabel },
    });
  },
  sweetenerWater: (x) => {
    const { sweetener } = x.choices;
    const value = sweetener.reduce((sum, { entry: { water }, share }) => sum + (share * water) / 100, 0);
    return workedOut('w_z', 'Water in the sweetener', 'g/g', value, {
      words: 'By its table, or by those of the parts of a blend.',
      ...blended(sweetener, ({ entry: { name, water, waterOrigin } }, mark) =>
        workedOut(`w${mark}`, `Water in ${name}`, 'g/g', water / 100, {
          words: 'As its table has it.',
          formula: '{water} ÷ 100',
          parts: { water: entry('w%', 'Water of the table', water, 'g in 100 g', waterOrigin) },
        }),
      ),
    });
  },
  spoonWeight: (x) => spoonWeight(x.choices.sweetener),
  spoonVolume: (x) => spoonVolume(x.choices.sweetener),
  caneSpoonWeight: () => spoonWeight(cane),
  caneSpoonVolume: () => spoonVolume(cane),
} satisfies Record<string, FigureMaker>;

function tableMost(x: Access): number {
  const stages = x.stages();
  const { high } = nativeRange(x, reducedAt(x, x.of('waterRatio')));
  return stages ? (1000 * stages.milkSugars * high) / stages.milkVolume : Number.NaN;
}
