/** The little arithmetic drawings share. Numbers that are not finite fall back to the start of the range. */
export type Scale = (value: number) => number;

/** Maps [from, to] onto [a, b], staying inside it. */
export function linear(from: number, to: number, a: number, b: number): Scale {
  const width = to - from;
  return (value) => {
    const part = width === 0 ? 0.5 : (value - from) / width;
    return a + (b - a) * (Number.isFinite(part) ? Math.min(1, Math.max(0, part)) : 0);
  };
}

/** Round steps (1, 2 or 5 times a power of ten) covering [from, to] with at most `most` of them. */
export function niceSteps(from: number, to: number, most: number): number[] {
  const span = Math.abs(to - from);
  if (!Number.isFinite(span) || span === 0) return [from];
  const rough = span / Math.max(1, most);
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = ([1, 2, 5, 10].find((m) => m * power >= rough * 0.999999) ?? 10) * power;
  const first = Math.ceil(Math.min(from, to) / step - 1e-9);
  const last = Math.floor(Math.max(from, to) / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, i) => (first + i) * step);
}

/**
 * Moves label positions apart so that no two are closer than `gap`, all within [low, high],
 * as near as may be to where they belong. Answers in the order given.
 */
export function spreadOut(wanted: readonly number[], gap: number, low: number, high: number): number[] {
  const order = wanted.map((_, i) => i).sort((a, b) => (wanted[a] ?? 0) - (wanted[b] ?? 0));
  const placed = order.map((i) => Math.min(high, Math.max(low, wanted[i] ?? low)));
  for (let k = 1; k < placed.length; k += 1) placed[k] = Math.max(placed[k] ?? 0, (placed[k - 1] ?? 0) + gap);
  const over = (placed.at(-1) ?? high) - high;
  if (over > 0) {
    placed[placed.length - 1] = high;
    for (let k = placed.length - 2; k >= 0; k -= 1) placed[k] = Math.min(placed[k] ?? 0, (placed[k + 1] ?? 0) - gap);
  }
  const out: number[] = [];
  order.forEach((i, k) => (out[i] = placed[k] ?? 0));
  return out;
}
