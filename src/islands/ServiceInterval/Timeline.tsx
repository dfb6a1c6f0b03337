/** One line for each service, its mark where the day lies; overdue ones stand left of today. */
import { formatNumber } from '../../core/quantity/index.ts';
import type { DueLine } from '../../core/topics/service-interval/index.ts';
import { Axis, fitText, linear, niceSteps } from '../kit/index.ts';

export const shownRows = 8;
export const rowHigh = 36;
const [left, right, first] = [8, 352, 44];

export function Timeline({ list }: { readonly list: readonly DueLine[] }) {
  const rows = list.slice(0, shownRows);
  const [from, to] = [Math.min(0, ...rows.map((d) => d.days)), Math.max(7, ...rows.map((d) => d.days))];
  // Marks keep clear of the edges, so that none is cut in half.
  const x = linear(from, to, left + 7, right - 7);
  const start = x(0);
  // Words keep clear of the line where it stands at the left edge.
  const words = start < left + 24 ? start + 12 : left;
  const bottom = first + rows.length * rowHigh - 6;
  return (
    <g>
      <text class="pic-text" x={Math.min(Math.max(start, left + 18), right - 18)} y={16} text-anchor="middle">
        start
      </text>
      <path class="pic-limit" d={`M${start.toFixed(1)} 22V${bottom}`} />
      {rows.map((d, i) => {
        const y = first + i * rowHigh;
        const at = x(d.days);
        const figures = `${d.date}`;
        return (
          <g key={i}>
            <text class="pic-text pic-halo" x={words} y={y}>
              {fitText(`${d.machine}: ${d.task}`, right - words - figures.length * 7.6 - 12)}
            </text>
            <text class="pic-figure pic-halo" x={right} y={y} text-anchor="end">
              {figures}
            </text>
            <path
              class={d.days < 0 ? 'pic-bar pic-bar-caution' : 'pic-bar'}
              d={
                `M${Math.min(start, at).toFixed(1)} ` +
                `${y + 10}h${Math.max(1, Math.abs(at - start)).toFixed(1)}v4h${(-Math.max(1, Math.abs(at - start))).toFixed(1)}z`
              }
            />
            <path
              class={d.days < 0 ? 'pic-bar-caution' : 'pic-accent-fill'}
              d={
                d.by === 'hours'
                  ? `M${at.toFixed(1)} ${y + 5}l7 7l-7 7l-7 -7z`
                  : `M${(at - 6).toFixed(1)} ${y + 6}h12v12h-12z`
              }
            />
          </g>
        );
      })}
      <Axis
        x={x}
        steps={niceSteps(from, to, 6).filter(Number.isInteger)}
        y={bottom}
        left={left}
        right={right}
        write={(n) => (n === 0 ? '0' : `${formatNumber(n)} d`)}
      />
      {list.length > shownRows && (
        <text class="pic-text pic-quiet" x={left} y={bottom + 36}>
          and {list.length - shownRows} more, in the table
        </text>
      )}
    </g>
  );
}
