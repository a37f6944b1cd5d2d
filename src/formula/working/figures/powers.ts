const marks = ['', '', '²', '³', '⁴', '⁵'];

/** The unit of a polynomial’s coefficient: that of what it gives, by so many degrees. */
export function perPower(unit: string, joined: '/' | '·', degree: string, power: number): string {
  return power === 0 ? unit : `${unit}${joined}${degree}${marks[power] ?? ''}`;
}

/** The powers of a quantity as a formula writes them, the lowest first: nothing, `{t}`, `{t}²` … */
export function powersOf(name: string, count: number): readonly string[] {
  return Array.from({ length: count }, (_, at) => (at === 0 ? '' : `{${name}}${marks[at] ?? ''}`));
}
