/** What a formula comes to, and for one that is solved the two sides that are to be the same. */
export type Reckoned = { readonly value: number } | { readonly left: number; readonly right: number };

const token =
  /\s*(\{[^{}]+\}|[\d.]+|the least of|the most of|the warmer of|the ratio at which|if above 0|never below 0|at least 1|rounded up|rounded|[()×÷+−^²³⁴⁵√∛πe,=])/y;

function tokensOf(formula: string): readonly string[] {
  const tokens: string[] = [];
  token.lastIndex = 0;
  while (token.lastIndex < formula.trimEnd().length) {
    const from = token.lastIndex;
    const found = token.exec(formula);
    if (found === null) throw new Error(`“${formula.slice(from)}” is neither a number nor known arithmetic`);
    tokens.push(found[1] ?? '');
  }
  return tokens;
}

const raised: Readonly<Record<string, number>> = { '²': 2, '³': 3, '⁴': 4, '⁵': 5 };

/**
 * Reckons a formula of a working out, with a value for each name in it. Throws where it holds anything that is not a
 * number, a name with a value or arithmetic.
 */
export function reckon(formula: string, numberOf: (name: string) => number): Reckoned {
  const tokens = tokensOf(formula);
  let at = 0;
  const next = (): string => tokens[at] ?? '';
  const take = (wanted: string): void => {
    if (next() !== wanted) throw new Error(`“${formula}” has “${next()}” in place of “${wanted}”`);
    at += 1;
  };
  const list = (): number[] => {
    const values = [sum()];
    while (next() === ',' && !/above|below|least 1|rounded/.test(tokens[at + 1] ?? '')) {
      at += 1;
      values.push(sum());
    }
    return values;
  };
  const primary = (): number => {
    const one = next();
    at += 1;
    if (one === '(') {
      let value = sum();
      if (next() === ',') {
        at += 1;
        take('if above 0');
        value = Math.max(value, 0);
      }
      take(')');
      return value;
    }
    if (one === '√') return Math.sqrt(primary());
    if (one === '∛') return Math.cbrt(primary());
    if (one === 'π') return Math.PI;
    if (one === 'e') return Math.E;
    if (one === 'the least of') return Math.min(...list());
    if (one === 'the most of' || one === 'the warmer of') return Math.max(...list());
    if (one.startsWith('{')) return numberOf(one.slice(1, -1));
    if (/^[\d.]+$/.test(one)) return Number(one);
    throw new Error(`“${formula}” has “${one}” where a number is due`);
  };
  const power = (): number => {
    let value = primary();
    for (;;) {
      const mark = raised[next()];
      if (mark !== undefined) {
        at += 1;
        value **= mark;
      } else if (next() === '^') {
        at += 1;
        value **= primary();
      } else return value;
    }
  };
  const product = (): number => {
    let value = power();
    while (next() === '×' || next() === '÷') value = tokens[at++] === '×' ? value * power() : value / power();
    return value;
  };
  const sum = (): number => {
    let value = next() === '−' ? 0 : product();
    while (next() === '+' || next() === '−') value += tokens[at++] === '+' ? product() : -product();
    return value;
  };
  if (next() === 'the ratio at which') {
    at += 1;
    const left = sum();
    take('=');
    const right = sum();
    if (at < tokens.length) throw new Error(`“${formula}” goes on with “${next()}”`);
    return { left, right };
  }
  let value = sum();
  while (next() === ',') {
    at += 1;
    const said = next();
    at += 1;
    if (said === 'never below 0') value = Math.max(value, 0);
    else if (said === 'at least 1') value = Math.max(value, 1);
    else if (said === 'rounded up') value = Math.ceil(value - 1e-9);
    else if (said === 'rounded') value = Math.round(value);
    else throw new Error(`“${formula}” ends with “${said}”`);
  }
  if (at < tokens.length) throw new Error(`“${formula}” goes on with “${next()}”`);
  return { value };
}
