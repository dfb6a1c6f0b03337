/** How likely each suspect is, as bars under the names; below, the checks as steps along the minutes they take. */
import { valueOf } from '../../core/contract/result.ts';
import { fitText, linear, Picture, type DrawingProps } from '../kit/index.ts';
import { barHigh, lineHigh, Steps, underBase, type Step } from './Steps.tsx';

const [left, right, first] = [6, 354, 38];
const most = 8;

export function Drawing({ id, answer }: DrawingProps) {
  const suspects = valueOf(answer, 'beliefs', 'table').rows.map(([name, chance]) => ({
    name: String(name),
    chance: Number(chance),
  }));
  const steps = valueOf(answer, 'order', 'table').rows.map(([, name, minutes, , reached]): Step => ({
    name: String(name),
    minutes: Number(minutes),
    reached: Number(reached),
  }));
  const [bars, climbed] = [suspects.slice(0, most), steps.slice(0, most)];
  const percent = (n: number) => `${Math.round(n * 100)} %`;
  const x = linear(0, Math.max(0.01, ...bars.map((b) => b.chance)), left, right);
  const barsEnd = first + bars.length * lineHigh + (suspects.length > most ? 18 : 0);
  const stepsTop = barsEnd + 8;
  const description = `Suspects: ${suspects.map((s) => `${s.name} ${percent(s.chance)}`).join(', ')}.${steps.length > 0 ? ` Order of checks: ${steps.map((s) => `${s.name} (${s.minutes} min)`).join(', ')}.` : ' No check comes next.'}`;
  return (
    <Picture
      id={id}
      title="Suspects, and the order of the checks"
      description={description}
      height={steps.length > 0 ? stepsTop + 22 + climbed.length * lineHigh : barsEnd}
    >
      <text class="pic-text pic-strong" x={left} y={16}>
        How likely
      </text>
      {bars.map((b, i) => {
        const y = first + i * lineHigh;
        return (
          <g key={i}>
            <text class="pic-text" x={left} y={y}>
              {fitText(b.name, right - left - 52)}
            </text>
            <text class="pic-figure" x={right} y={y} text-anchor="end">
              {percent(b.chance)}
            </text>
            <rect
              class="pic-bar"
              x={left}
              y={y + underBase}
              width={Math.max(1.5, x(b.chance) - left)}
              height={barHigh}
            />
          </g>
        );
      })}
      {suspects.length > most && (
        <text class="pic-text pic-quiet" x={left} y={barsEnd - 14}>
          and {suspects.length - most} more, in the table
        </text>
      )}
      {steps.length > 0 && (
        <Steps steps={climbed} left={left} right={right} top={stepsTop} more={steps.length - climbed.length} />
      )}
    </Picture>
  );
}
