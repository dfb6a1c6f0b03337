/** Drum and shoes at rest, to scale, as paths about a centre. */
export interface DrumInput {
  /** Inside radius of the drum [m]. */
  readonly drum: number;
  /** Gap between shoe and drum at rest [m]. */
  readonly gap: number;
  /** Center of mass of a shoe from the shaft at rest [m]. */
  readonly mass: number;
  readonly shoes: number;
}

export interface DrumParts {
  readonly drum: number;
  readonly shoes: readonly string[];
  /** The first shoe as it lies when its weak spring lets go. */
  readonly flung: string;
  /** Where the mass of each shoe sits. */
  readonly masses: readonly { readonly x: number; readonly y: number }[];
  readonly hub: number;
}

export function layDrum(
  { drum, gap, mass, shoes }: DrumInput,
  radius: number,
  at: { readonly x: number; readonly y: number },
): DrumParts {
  const scale = radius / drum;
  const outer = (drum - gap) * scale;
  // A shoe as deep inside its center of mass as outside it, but never through the shaft.
  const inner = Math.max(radius * 0.18, 2 * mass * scale - outer);
  const share = (2 * Math.PI) / Math.max(2, shoes);
  const span = share * 0.82;
  const middles = Array.from({ length: shoes }, (_, i) => -Math.PI / 2 + (i * 2 * Math.PI) / shoes);
  const spot = (r: number, a: number) => ({ x: at.x + r * Math.cos(a), y: at.y + r * Math.sin(a) });
  const arc = (middle: number, from: number, to: number) => {
    const [a, b] = [middle - span / 2, middle + span / 2];
    const large = span > Math.PI ? 1 : 0;
    const [p, q, s, t] = [spot(to, a), spot(to, b), spot(from, b), spot(from, a)];
    return `M${f(p)}A${to.toFixed(1)} ${to.toFixed(1)} 0 ${large} 1 ${f(q)}L${f(s)}A${from.toFixed(1)} ${from.toFixed(1)} 0 ${large} 0 ${f(t)}Z`;
  };
  return {
    drum: radius,
    shoes: middles.map((m) => arc(m, inner, outer)),
    flung: arc(middles[0] ?? 0, inner + gap * scale, radius),
    masses: middles.map((m) => spot(mass * scale, m)),
    hub: Math.max(3, Math.min(radius * 0.14, inner - 2)),
  };
}

function f({ x, y }: { readonly x: number; readonly y: number }): string {
  return `${x.toFixed(2)} ${y.toFixed(2)}`;
}
