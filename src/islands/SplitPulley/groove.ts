/** The groove in section, to scale: where flanks and belt stand at each state. Lengths in metres, places in picture units. */
export interface GrooveInput {
  /** Pitch radius with the halves closed and a belt of the width made for. */
  readonly closed: number;
  readonly angle: number;
  readonly nominal: number;
  readonly belt: number;
  /** Outside radius of the halves, where it is known. */
  readonly rim: number | undefined;
  /** Gap and pitch radius, from open to closed. */
  readonly states: readonly { readonly gap: number; readonly radius: number }[];
}

export interface Groove {
  readonly y: (radius: number) => number;
  /** The two halves as they stand at the last state. */
  readonly halves: readonly [string, string];
  /** Both flanks at a gap. */
  readonly flanks: (gap: number) => string;
  /** The belt in section at a pitch radius. */
  readonly beltAt: (radius: number) => string;
  /** Half the width of the belt at its pitch line, in picture units. */
  readonly halfBelt: number;
}

const frame = { middle: 112, top: 34, bottom: 204, width: 206 } as const;
/** The height of a belt is not asked for. Sections of V belts are about 0.7 as high as wide, most of it below the pitch line. */
const [above, below] = [0.25, 0.45] as const;

export function layGroove(g: GrooveInput): Groove {
  const slope = Math.tan(g.angle / 2);
  const radii = g.states.map((s) => s.radius);
  const [lowest, highest] = [Math.min(...radii), Math.max(...radii)];
  const ownRim = highest + (above + 0.08) * g.nominal;
  const rim = Math.max(lowest, Math.min(g.rim ?? ownRim, highest + g.nominal));
  const top = Math.max(rim, highest + above * g.nominal);
  const foot = Math.max(0, lowest - (below + 0.3) * g.nominal);
  const wall = 0.3 * g.nominal;
  const apart = (radius: number, gap: number) => Math.max(gap, gap + g.nominal + 2 * (radius - g.closed) * slope);
  const widest = apart(rim, g.states[0]?.gap ?? 0) + 2 * wall;
  const scale = Math.min((frame.bottom - frame.top) / (top - foot), frame.width / widest);
  const y = (radius: number) => frame.bottom - (radius - foot) * scale;
  const x = (offset: number) => frame.middle + offset * scale;
  // Below this the cones have met and the halves face each other straight.
  const apex = Math.min(rim, Math.max(foot, g.closed - g.nominal / (2 * slope)));
  const gapLast = g.states.at(-1)?.gap ?? 0;
  const half = (side: 1 | -1) => {
    const outer = side * (apart(rim, gapLast) / 2 + wall);
    return (
      path([
        [(side * apart(foot, gapLast)) / 2, foot],
        [(side * apart(apex, gapLast)) / 2, apex],
        [(side * apart(rim, gapLast)) / 2, rim],
        [outer, rim],
        [outer, foot],
      ]) + 'Z'
    );
  };
  const path = (points: readonly (readonly [number, number])[]) =>
    `M${points.map(([offset, radius]) => `${f(x(offset))} ${f(y(radius))}`).join('L')}`;
  return {
    y,
    halves: [half(-1), half(1)],
    flanks: (gap) =>
      ([-1, 1] as const)
        .map((side) =>
          path([
            [(side * apart(foot, gap)) / 2, foot],
            [(side * apart(apex, gap)) / 2, apex],
            [(side * apart(rim, gap)) / 2, rim],
          ]),
        )
        .join(''),
    beltAt: (radius) => {
      const [up, down] = [above * g.nominal, below * g.nominal];
      const [wide, narrow] = [g.belt / 2 + up * slope, Math.max(0, g.belt / 2 - down * slope)];
      return (
        path([
          [-wide, radius + up],
          [wide, radius + up],
          [narrow, radius - down],
          [-narrow, radius - down],
        ]) + 'Z'
      );
    },
    halfBelt: (g.belt / 2) * scale,
  };
}

/** At most `most` of a list, first and last among them, evenly apart. */
export function some<T>(list: readonly T[], most: number): readonly T[] {
  if (list.length <= most) return list;
  const picked = Array.from({ length: most }, (_, i) => Math.round((i * (list.length - 1)) / (most - 1)));
  return list.filter((_, i) => picked.includes(i));
}

function f(n: number): string {
  return n.toFixed(2);
}
