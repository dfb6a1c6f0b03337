/** Arrows and size lines, drawn with paths: markers and styles would need ids and attributes the page forbids. */
interface ArrowProps {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
  readonly class?: string;
}

const head = 7;

/** A line from 1 to 2 with a head at 2. */
export function Arrow({ x1, y1, x2, y2, class: name = 'pic-arrow' }: ArrowProps) {
  return <path class={name} d={`M${at(x1)} ${at(y1)}L${at(x2)} ${at(y2)}${headAt(x1, y1, x2, y2)}`} />;
}

/** A size line with a head at each end; short ones get their heads from outside. */
export function SizeLine({ x1, y1, x2, y2, class: name = 'pic-size' }: ArrowProps) {
  const length = Math.hypot(x2 - x1, y2 - y1);
  if (length > 3 * head)
    return (
      <path
        class={name}
        d={`M${at(x1)} ${at(y1)}L${at(x2)} ${at(y2)}${headAt(x1, y1, x2, y2)}${headAt(x2, y2, x1, y1)}`}
      />
    );
  const [ux, uy] = length > 0 ? [(x2 - x1) / length, (y2 - y1) / length] : [1, 0];
  const [ax, ay, bx, by] = [x1 - ux * 2 * head, y1 - uy * 2 * head, x2 + ux * 2 * head, y2 + uy * 2 * head];
  return (
    <path
      class={name}
      d={`M${at(ax)} ${at(ay)}L${at(x1)} ${at(y1)}${headAt(ax, ay, x1, y1)}M${at(bx)} ${at(by)}L${at(x2)} ${at(y2)}${headAt(bx, by, x2, y2)}`}
    />
  );
}

function headAt(x1: number, y1: number, x2: number, y2: number): string {
  const angle = Math.atan2(y2 - y1, x2 - x1);
  const wing = (turn: number) => `${at(x2 - head * Math.cos(angle + turn))} ${at(y2 - head * Math.sin(angle + turn))}`;
  return `M${wing(0.4)}L${at(x2)} ${at(y2)}L${wing(-0.4)}`;
}

function at(n: number): string {
  return n.toFixed(1);
}
