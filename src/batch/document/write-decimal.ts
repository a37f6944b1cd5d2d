/** A number of 0 or more in plain digits, without a power of ten; what is below a billionth is 0. */
export function writeDecimal(value: number): string {
  const short = String(value);
  if (!short.includes('e')) return short;
  return value < 1 ? trimmed(value.toFixed(9)) : BigInt(value).toString();
}

function trimmed(digits: string): string {
  return digits.replace(/\.?0+$/, '');
}
