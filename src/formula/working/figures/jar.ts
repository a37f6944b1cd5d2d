import { depthBelowRim, frustumVolume } from '../../models/vessel';
import { jarProfile } from '../../rows/jar-profile';
import type { Access, TermId } from '../../rows/row';
import { type Figure, type FigureMaker, workedOut } from '../figure';

interface Reach {
  readonly neck: Figure;
  readonly shoulder: Figure;
  readonly body: Figure;
}

/** How a depth below the rim, cm, is shared by neck, shoulder and body. */
function depthByPart(x: Access, depth: number) {
  const { neckHeight, shoulderHeight } = jarProfile(x);
  const neck = Math.min(Math.max(depth, 0), neckHeight);
  const shoulder = Math.min(Math.max(depth - neckHeight, 0), shoulderHeight);
  return { neck, shoulder, body: Math.max(depth - neckHeight - shoulderHeight, 0) };
}

const notReached = (words: string) => ({ words, formula: '0' });

/** The room above a surface so deep below the rim, by the parts of the jar. */
function roomTo(x: Access, depthId: TermId | 'headspaceUsual'): Reach {
  const jar = jarProfile(x);
  const depth = depthByPart(x, depthId === 'headspaceUsual' ? x.c(depthId) : x.of(depthId));
  const area = (diameter: number): number => Math.PI * (diameter / 2) ** 2;
  const inNeck = workedOut('h₁', 'Depth within the neck', 'cm', depth.neck, {
    words: 'The headspace, as far as the neck goes.',
    formula: `the least of {${depthId}}, {neckHeight}`,
  });
  const inShoulder = workedOut('h₂', 'Depth within the shoulder', 'cm', depth.shoulder, {
    words: 'What is left of the headspace below the neck, as far as the shoulder goes.',
    formula: `the least of {${depthId}} − {neckHeight}, {shoulderHeight}`,
  });
  const reached =
    depth.shoulder === 0
      ? jar.neckDiameter
      : jar.neckDiameter + ((jar.bodyDiameter - jar.neckDiameter) * depth.shoulder) / jar.shoulderHeight;
  const widest = workedOut('d₂', 'How wide the jar is where that ends', 'cm', reached, {
    words: 'The shoulder widens evenly from neck to body.',
    formula: '{neckDiameter} + ({bodyDiameter} − {neckDiameter}) × {inShoulder} ÷ {shoulderHeight}',
    parts: { inShoulder },
  });
  const inBody = workedOut('h₃', 'Depth within the body', 'cm', depth.body, {
    words: 'What is left of the headspace below the shoulder.',
    formula: `{${depthId}} − {neckHeight} − {shoulderHeight}`,
  });
  return {
    neck: workedOut('V₁', 'Room in the neck', 'mL', depth.neck * area(jar.neckDiameter), {
      words: 'A cylinder.',
      formula: 'π ÷ 4 × {neckDiameter}² × {inNeck}',
      parts: { inNeck },
    }),
    shoulder: workedOut(
      'V₂',
      'Room in the shoulder',
      'mL',
      frustumVolume(jar.neckDiameter, reached, depth.shoulder),
      depth.shoulder === 0
        ? notReached('The surface lies within the neck.')
        : {
            words: 'A cone without its tip.',
            formula: 'π ÷ 12 × {inShoulder} × ({neckDiameter}² + {neckDiameter} × {widest} + {widest}²)',
            parts: { inShoulder, widest },
          },
    ),
    body: workedOut(
      'V₃',
      'Room in the body',
      'mL',
      depth.body * area(jar.bodyDiameter),
      depth.body === 0
        ? notReached('The surface lies above the body.')
        : { words: 'A cylinder.', formula: 'π ÷ 4 × {bodyDiameter}² × {inBody}', parts: { inBody } },
    ),
  };
}

/** How deep a room of that name reaches below the rim, by the parts of the jar; `parts` tell it where it is no row. */
function depthTo(x: Access, id: string, room: number, parts: Readonly<Record<string, Figure>> = {}): Reach {
  const jar = jarProfile(x);
  const depth = depthByPart(x, depthBelowRim(jar, room));
  const neckArea = Math.PI * (jar.neckDiameter / 2) ** 2;
  const below = Math.max(room - jar.neckHeight * neckArea, 0);
  const slope = (jar.bodyDiameter - jar.neckDiameter) / 2 / jar.shoulderHeight;
  const straight = Math.abs(slope) < 1e-9; // tolerance: a shoulder that does not widen
  const roomBelow = workedOut('V₂', 'Room below the neck', 'mL', below, {
    words: 'What the neck does not hold of it.',
    formula: `{${id}} − π ÷ 4 × {neckDiameter}² × {neckHeight}`,
    parts,
  });
  const widening = workedOut('w', 'How much the radius grows for a cm of depth', 'cm/cm', slope, {
    words: 'The shoulder widens evenly from neck to body.',
    formula: '({bodyDiameter} − {neckDiameter}) ÷ 2 ÷ {shoulderHeight}',
  });
  const wholeShoulder = frustumVolume(jar.neckDiameter, jar.bodyDiameter, jar.shoulderHeight);
  const shoulderRoom = workedOut('V_s', 'Room of the whole shoulder', 'mL', wholeShoulder, {
    words: 'A cone without its tip.',
    formula: 'π ÷ 12 × {shoulderHeight} × ({neckDiameter}² + {neckDiameter} × {bodyDiameter} + {bodyDiameter}²)',
  });
  const within = (part: 'neck' | 'shoulder') => depth[part === 'neck' ? 'shoulder' : 'body'] === 0;
  return {
    neck: workedOut(
      'h₁',
      'Depth within the neck',
      'cm',
      depth.neck,
      within('neck') && below === 0
        ? { words: 'The neck holds it all.', formula: `{${id}} ÷ (π ÷ 4 × {neckDiameter}²)`, parts }
        : { words: 'All of the neck.', formula: '{neckHeight}' },
    ),
    shoulder: workedOut(
      'h₂',
      'Depth within the shoulder',
      'cm',
      depth.shoulder,
      depth.shoulder === 0
        ? notReached('The neck holds it all.')
        : !within('shoulder')
          ? { words: 'All of the shoulder.', formula: '{shoulderHeight}' }
          : straight
            ? {
                words: 'The shoulder is as narrow as the neck.',
                formula: '{roomBelow} ÷ (π ÷ 4 × {neckDiameter}²)',
                parts: { roomBelow },
              }
            : {
                words: 'How far down a cone without its tip holds that.',
                formula:
                  '(∛(({neckDiameter} ÷ 2)³ + 3 × {widening} × {roomBelow} ÷ π) − {neckDiameter} ÷ 2) ÷ {widening}',
                parts: { roomBelow, widening },
              },
    ),
    body: workedOut(
      'h₃',
      'Depth within the body',
      'cm',
      depth.body,
      depth.body === 0
        ? notReached('Neck and shoulder hold it all.')
        : {
            words: 'What neck and shoulder do not hold, over the disc of the body.',
            formula: '({roomBelow} − {shoulderRoom}) ÷ (π ÷ 4 × {bodyDiameter}²)',
            parts: { roomBelow, shoulderRoom },
          },
    ),
  };
}

/** The depth of the room that a batch has. */
const depthLeft = (x: Access): Reach => depthTo(x, 'headspaceVolume', x.of('headspaceVolume'));

/** The room above a depth, as one figure. */
function roomOf({ neck, shoulder, body }: Reach, symbol: string, label: string): Figure {
  return workedOut(symbol, label, 'mL', neck.value + shoulder.value + body.value, {
    words: 'The room in the neck, shoulder and body of the jar above that depth.',
    formula: '{neck} + {shoulder} + {body}',
    parts: { neck, shoulder, body },
  });
}

/** The usual share of the jar, as a depth below its rim. */
function shareDepth(x: Access): Figure {
  const shareRoom = workedOut(
    'V₀',
    'Usual room, as a share of the jar',
    'mL',
    (x.c('headspaceShare') / 100) * x.of('brimful'),
    {
      words: 'The usual share of its brimful capacity.',
      formula: '{headspaceShare} ÷ 100 × {brimful}',
    },
  );
  const { neck, shoulder, body } = depthTo(x, 'shareRoom', shareRoom.value, { shareRoom });
  return workedOut('h_η', 'How deep the usual room reaches', 'cm', neck.value + shoulder.value + body.value, {
    words: 'How deep the usual share of the jar reaches below its rim.',
    formula: '{neck} + {shoulder} + {body}',
    parts: { neck, shoulder, body },
  });
}

/** The jar by its parts, and what was typed for it. */
export const jarFigures = {
  neckRoom: (x) => roomTo(x, 'headspaceDepth').neck,
  shoulderRoom: (x) => roomTo(x, 'headspaceDepth').shoulder,
  bodyRoom: (x) => roomTo(x, 'headspaceDepth').body,
  neckDepth: (x) => depthLeft(x).neck,
  shoulderDepth: (x) => depthLeft(x).shoulder,
  bodyDepth: (x) => depthLeft(x).body,
  roomAsked: (x) => roomOf(roomTo(x, 'headspaceAsked'), 'V*', 'Room above the headspace to keep'),
  roomAboveUsual: (x) => roomOf(roomTo(x, 'headspaceUsual'), 'Vₘ', 'Room above the usual headspace'),
  shareDepth,
  headspaceTyped: (x) =>
    workedOut('h_t', 'Headspace you typed', 'cm', x.of('headspaceAsked'), {
      words: 'As you typed it; a room is typed as the depth that it reaches in this jar.',
      formula: '',
    }),
  fillTyped: (x) =>
    workedOut('F_t', 'Fill you typed', 'mL', x.typed('fillVolume'), { words: 'As you typed it.', formula: '' }),
} satisfies Record<string, FigureMaker>;
