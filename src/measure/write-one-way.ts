/**
 * Plain digits with a decimal point, as a text that can only be read as that number: a mark before just three decimals
 * could be taken for one between thousands, so a zero follows them. Other zeros at the end go.
 */
export function writeOneWay(digits: string, decimalComma: boolean): string {
  if (!/^-?\d+\.\d+$/.test(digits)) return digits;
  const plain = digits.replace(/\.?0+$/, '').replace(/\.\d{3}$/, '$&0');
  return decimalComma ? plain.replace('.', ',') : plain;
}
