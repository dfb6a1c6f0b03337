/** Where things go in the belt picture: one scale for pulleys and distance, chosen so that both fit. */
interface Drive {
  /** Pitch diameters and distance, all in one unit. */
  readonly engine: number;
  readonly blade: number;
  readonly centre: number;
}

interface Round {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

interface Strand {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

export interface Layout {
  /** Units of the picture for one unit of the drive. */
  readonly scale: number;
  /** The engine's pulley. */
  readonly left: Round;
  readonly right: Round;
  readonly top: Strand;
  readonly bottom: Strand;
  /** Unit steps away from the belt, at a right angle to each strand. */
  readonly up: readonly [number, number];
  readonly down: readonly [number, number];
  /** Arcs on which the belt lies. */
  readonly wraps: string;
  /** True when a pulley too small to see was drawn larger. */
  readonly enlarged: boolean;
}

const [from, to] = [10, 350];
const tallest = 148;
const least = 5;

/** `top` is the room kept above the larger pulley. */
export function layOut({ engine, blade, centre }: Drive, top: number): Layout {
  const scale = Math.min((to - from) / (centre + (engine + blade) / 2), tallest / Math.max(engine, blade));
  const [r1, r2] = [(engine / 2) * scale, (blade / 2) * scale];
  const y = top + Math.max(r1, r2, least);
  const width = centre * scale + r1 + r2;
  const start = (from + to - width) / 2;
  const left = { x: start + r1, y, r: Math.max(least, r1) };
  const right = { x: start + r1 + centre * scale, y, r: Math.max(least, r2) };
  const distance = right.x - left.x;
  const sine = Math.max(-1, Math.min(1, (right.r - left.r) / distance));
  const cosine = Math.sqrt(1 - sine * sine);
  const touch = (c: Round, side: -1 | 1) => ({ x: c.x - c.r * sine, y: c.y + side * c.r * cosine });
  const [a, b, c, d] = [touch(left, -1), touch(right, -1), touch(left, 1), touch(right, 1)];
  const arc = (r: number, large: boolean) => `A${f(r)} ${f(r)} 0 ${large ? 1 : 0} `;
  return {
    scale,
    left,
    right,
    top: { x1: a.x, y1: a.y, x2: b.x, y2: b.y },
    bottom: { x1: c.x, y1: c.y, x2: d.x, y2: d.y },
    up: [-sine, -cosine],
    down: [-sine, cosine],
    wraps: `M${f(b.x)} ${f(b.y)}${arc(right.r, sine > 0)}1 ${f(d.x)} ${f(d.y)}M${f(c.x)} ${f(c.y)}${arc(left.r, sine < 0)}1 ${f(a.x)} ${f(a.y)}`,
    enlarged: Math.min(r1, r2) < least,
  };
}

/** Both straight strands; the arcs are in `wraps`. */
export function beltPath({ top, bottom }: Layout): string {
  return `M${f(top.x1)} ${f(top.y1)}L${f(top.x2)} ${f(top.y2)}M${f(bottom.x1)} ${f(bottom.y1)}L${f(bottom.x2)} ${f(bottom.y2)}`;
}

function f(n: number): string {
  return n.toFixed(2);
}
