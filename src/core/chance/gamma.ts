/** Gamma functions, for lives that follow a Weibull law. */

const lanczos = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];

/**
 * Gamma function.
 * Method: Lanczos' approximation, g = 7, nine terms.
 * @param x argument [1], > 0; at or below 0 the answer is NaN
 * @returns Gamma(x) [1], to about 13 figures
 * Example: gamma(5) -> 24.0000000.
 * Source: numerical-gamma.
 */
export function gamma(x: number): number {
  if (!(x > 0)) return NaN;
  if (x < 0.5) return Math.PI / (Math.sin(Math.PI * x) * gamma(1 - x));
  const t = x + 6.5;
  const series = lanczos.reduce((sum, c, k) => (k === 0 ? c : sum + c / (x - 1 + k)), 0);
  return Math.sqrt(2 * Math.PI) * t ** (x - 0.5) * Math.exp(-t) * series;
}

/**
 * Share of the gamma integral below x (regularised lower incomplete gamma function).
 * Method: power series below a + 1, continued fraction above.
 * @param a shape [1], > 0
 * @param x upper end of the integral [1], >= 0
 * @returns P(a, x) [1], 0 to 1
 * Example: gammaShare(1, 2) -> 0.864664716763.
 * Source: numerical-gamma.
 */
export function gammaShare(a: number, x: number): number {
  if (x <= 0) return 0;
  if (!Number.isFinite(x)) return 1;
  const front = Math.exp(-x + a * Math.log(x)) / gamma(a);
  return x < a + 1 ? front * seriesPart(a, x) : 1 - front * fractionPart(a, x);
}

/**
 * Upper part of the gamma integral, scaled so that it neither runs out nor overflows far out:
 * Gamma(a, x) e^x x^-a.
 * Method: continued fraction, good for x above a + 1.
 * @param a shape [1], > 0
 * @param x lower end of the integral [1], >= a + 1; below that the fraction converges slowly and the answer is NaN
 * @returns [1]; 0 where x is Infinity
 * Example: scaledUpperGamma(1, 50) -> 0.0200000000.
 * Source: numerical-gamma.
 */
export function scaledUpperGamma(a: number, x: number): number {
  if (x === Infinity) return 0;
  return x < a + 1 ? NaN : fractionPart(a, x);
}

function seriesPart(a: number, x: number): number {
  let term = 1 / a;
  let sum = term;
  for (let k = 1; k < 500 && Math.abs(term) > Math.abs(sum) * 1e-16; k++) {
    term *= x / (a + k);
    sum += term;
  }
  return sum;
}

function fractionPart(a: number, x: number): number {
  const tiny = 1e-300;
  let b = x + 1 - a;
  let c = 1 / tiny;
  let d = 1 / b;
  let h = d;
  for (let k = 1; k < 500; k++) {
    const an = -k * (k - a);
    b += 2;
    d = 1 / keepOff(an * d + b, tiny);
    c = keepOff(b + an / c, tiny);
    const delta = d * c;
    h *= delta;
    if (Math.abs(delta - 1) < 1e-16) break;
  }
  return h;
}

function keepOff(value: number, tiny: number): number {
  return Math.abs(value) < tiny ? tiny : value;
}
