const token =
  /\{\w+\}|\d+|the warmer of|the most of|, (?:if above 0|never below 0|at least 1|rounded up|rounded)|[^ ]/g;

/** What binds its two sides, the looser first; at 0 what may be said at an end, of all before it. */
const ranks = {
  ', if above 0': 0,
  ', never below 0': 0,
  ', at least 1': 0,
  ', rounded up': 0,
  ', rounded': 0,
  '+': 1,
  '−': 1,
  '×': 2,
  '÷': 2,
  '^': 2 + 1,
} as const satisfies Record<string, number>;

type Ranked = keyof typeof ranks;

/** What puts two sides together. */
export type Pairing = Ranked | '−' | 'the warmer of' | 'the most of';

function isRanked(op: string): op is Ranked {
  return op in ranks;
}

/**
 * Reads a formula as the working writes it: `{id}` for each quantity, + − × ÷ ^ and brackets, and in words
 * `(…, if above 0)`, `the warmer of …, …` and `the most of …, …`, and at its end `never below 0`, `at least 1`, `rounded` and `rounded up`. An
 * empty one is 0. What is read is put together by `leaf`, of a number or an `{id}`, and by `pair`, of two sides; for
 * what is said at an end the other side is the number in it. Throws where it can't be read: that is a fault in our own
 * code.
 */
export function readFormula<T>(
  formula: string,
  leaf: (text: string) => T,
  pair: (op: Pairing, left: T, right: T) => T,
): T {
  const tokens = formula.match(token) ?? ['0'];
  let at = 0;
  const primary = (): T => {
    const one = tokens[at++] ?? '';
    if (one === '−') return pair(one, leaf('0'), chain(2));
    if (one !== '(' && one !== 'the warmer of' && one !== 'the most of') return leaf(one);
    const inner = chain(0);
    at += 1;
    return one === '(' ? inner : pair(one, inner, chain(0));
  };
  const chain = (least: number): T => {
    let left = primary();
    for (;;) {
      const op = tokens[at] ?? '';
      if (!isRanked(op) || ranks[op] < least) return left;
      const rank = ranks[op];
      at += 1;
      left = pair(op, left, rank === 0 ? leaf(op.endsWith('1') ? '1' : '0') : chain(rank + 1));
    }
  };
  const whole = chain(0);
  if (at !== tokens.length) throw new Error(formula);
  return whole;
}
