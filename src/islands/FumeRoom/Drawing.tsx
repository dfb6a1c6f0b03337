/** Carbon monoxide in the room through the run, for half, all and twice of the exhaust, against the levels of the laws. */
import { formatNumber } from '../../core/quantity/index.ts';
import { valueOf } from '../../core/contract/result.ts';
import { concentrationAt, density, type Room } from '../../core/topics/fume-room/index.ts';
import { Axis, linear, niceSteps, Picture, type DrawingProps, type Scale } from '../kit/index.ts';

const [left, right, top, bottom] = [44, 352, 24, 226];
const lines = [
  { value: 20, text: '20 EU, 8 h' },
  { value: 50, text: '50 OSHA, 8 h' },
  { value: 200, text: '200 at no time' },
  { value: 1200, text: '1200 danger to life at once' },
];

export function Drawing({ id, answer, inputs }: DrawingProps) {
  const room: Room = {
    volume: valueOf(answer, 'volume', 'quantity').value,
    changes: valueOf(answer, 'changes', 'quantity').value,
  };
  const stopped = inputs['what'] === 'stopped';
  const run = stopped ? waitOf(answer) : Number(inputs['run'] ?? 600);
  const found = answer.values.find((v) => v.key === 'source');
  const source = found?.kind === 'quantity' ? found : undefined;
  const start = stopped ? Number(inputs['now'] ?? 0) : 0;
  const at = (mass: number, t: number) => concentrationAt(room, mass / density, t, start) * 1e6;
  const middle = (t: number) => at(source?.value ?? 0, t);
  const highest = Math.max(2000, at(source?.high ?? source?.value ?? 0, run), start * 1e6);
  // Levels lie far apart, so the upright scale goes by powers of ten.
  const y: Scale = (ppm) => linear(1, Math.log10(highest), bottom, top)(Math.log10(Math.max(10, ppm)));
  const x = linear(0, run / 60, left, right);
  const times = Array.from({ length: 61 }, (_, k) => run * (k / 60) ** 2);
  const path = (f: (t: number) => number) => times.map((t) => `${x(t / 60).toFixed(1)} ${y(f(t)).toFixed(1)}`);
  const band =
    source?.low !== undefined && source.high !== undefined && source.high > source.low
      ? `M${path((t) => at(source.high ?? 0, t)).join('L')}L${path((t) => at(source.low ?? 0, t))
          .reverse()
          .join('L')}Z`
      : '';
  const end = middle(run);
  const minutes = `${formatNumber(run / 60, run < 600 ? 1 : 0)} min`;
  const steps = [10, 100, 1000, 10000, 100000, 1000000].filter((p) => p <= highest);
  const shown = lines.filter((l) => l.value <= highest);
  return (
    <Picture
      id={id}
      title="Carbon monoxide in the room"
      description={
        `${stopped ? 'With nothing giving off any more, the reckoning goes' : 'The reckoning goes'} from ` +
        `${formatNumber(start * 1e6, 0)} to ${formatNumber(end, 0)} ppm in ${minutes}. ` +
        '200 ppm is NIOSH’s ceiling at any time, 1200 ppm danger to life at once. It is no permit.'
      }
      height={274}
      caption={
        'ppm, each line ten times the one below. ' +
        `${band === '' ? '' : 'The band takes half and twice of the exhaust. '}A mixed room flatters the ` +
        'air beside the engine.'
      }
    >
      {band !== '' && <path class="pic-air" d={band} />}
      {shown.map((l) => (
        <path
          key={l.value}
          class={l.value >= 200 ? 'pic-true' : 'pic-lead'}
          d={`M${left} ${y(l.value).toFixed(1)}H${right}`}
        />
      ))}
      <path class="pic-air-line" d={`M${path(middle).join('L')}`} />
      {/* Over the curve, which would strike through them where it is nearly level. */}
      {shown.map((l) => (
        <text class="pic-tick pic-halo" key={l.value} x={right} y={y(l.value) - 4} text-anchor="end">
          {l.text}
        </text>
      ))}
      <path class="pic-axis" d={`M${left} ${top}V${bottom}`} />
      {steps.map((p) => (
        <text class="pic-tick" key={p} x={left - 6} y={y(p) + 4} text-anchor="end">
          {p >= 1e5 ? `${p / 1000}k` : String(p)}
        </text>
      ))}
      <text class="pic-text" x={left} y={14}>
        ppm
      </text>
      <Axis x={x} steps={niceSteps(0, run / 60, 6)} y={bottom} left={left} right={right} />
      <text class="pic-text" x={(left + right) / 2} y={bottom + 38} text-anchor="middle">
        {stopped ? 'minutes of fresh air' : 'minutes it runs'}
      </text>
    </Picture>
  );
}

/** Twice the time to thin out, so that the end of it is seen; an hour where it never does. */
function waitOf(answer: DrawingProps['answer']): number {
  const wait = answer.values.find((v) => v.key === 'wait');
  return wait?.kind === 'quantity' && wait.value > 0 ? Math.min(86400, wait.value * 1.2) : 3600;
}
