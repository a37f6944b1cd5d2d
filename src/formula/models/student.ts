/**
 * The share of Student’s t distribution with a whole number of degrees of freedom that lies between −t and t, for
 * t = √ν · tan θ. Exact: the finite sums of Abramowitz and Stegun, 26.7.3 and 26.7.4, from memory; tests integrate it.
 */
function shareWithin(angle: number, degrees: number): number {
  const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
  const isOdd = degrees % 2 === 1;
  let term = isOdd ? cosine : 1;
  let sum = degrees === 1 ? 0 : term;
  for (let power = isOdd ? 2 : 1; power + 2 <= degrees - 1 + (isOdd ? 1 : 0); power += 2) {
    term *= (power / (power + 1)) * cosine ** 2;
    sum += term;
  }
  return isOdd ? (2 / Math.PI) * (angle + sine * sum) : sine * sum;
}

const halvings = 100;

/**
 * How many standard deviations from the middle Student’s t distribution has this share below, from ½ up to 1 (not in
 * it), with a whole number of degrees of freedom from 1 up.
 */
export function studentQuantile(below: number, degrees: number): number {
  let [low, high] = [0, Math.PI / 2];
  for (let halving = 0; halving < halvings; halving += 1) {
    const middle = (low + high) / 2;
    if (shareWithin(middle, degrees) < 2 * below - 1) low = middle;
    else high = middle;
  }
  return Math.sqrt(degrees) * Math.tan(low);
}
