/** The two parts cut along the shaft, the pulls in the outer one against its yield, and the force against the tools that can give it. */
import { tools } from '../../core/topics/press-fit/index.ts';
import { formatQuantity, pick, toUnit, type UnitKey } from '../../core/quantity/index.ts';
import { valueOf, type QuantityValue } from '../../core/contract/result.ts';
import { type MaterialKey, materialOf } from '../../core/materials/index.ts';
import {
  Axis,
  barHeight,
  barTop,
  linear,
  niceSteps,
  Picture,
  quantityReading,
  RangeRow,
  readingText,
  type DrawingProps,
} from '../kit/index.ts';
import { Section, sectionBottom } from './Section.tsx';

const [left, right] = [6, 354];
const toolNames = ['vise', 'arbor press', 'hydraulic press'];

/** From one bar to the next; a bar ends 18 under its name. */
const rowHigh = 32;

export function Drawing({ id, answer, inputs, reader }: DrawingProps) {
  const get = (key: string) => valueOf(answer, key, 'quantity');
  const n = (key: string) => Number(inputs[key]);
  const size = (key: string) => formatQuantity(n(key), ['mm', 'in'], reader.system);
  const [pressure, force, pull, share] = [get('pressure'), get('pushIn'), get('hubHoop'), get('yieldShare')];
  const strength =
    typeof inputs['hubStrength'] === 'number'
      ? inputs['hubStrength']
      : materialOf(inputs['hub'] as MaterialKey).strength;
  const [mega, kilo]: [UnitKey, UnitKey] = [pick(['MPa', 'psi'], reader.system), pick(['kN', 'lbf'], reader.system)];
  const counted = share.value * strength;
  const text = (si: number, unit: UnitKey) => readingText(quantityReading(si, unit, unit === 'kN' ? 2 : 0));
  const range = (v: QuantityValue, unit: UnitKey) => {
    const [low, high] = [text(v.low ?? v.value, unit), text(v.high ?? v.value, unit)];
    return low === high ? high : `${low.split('\u00a0')[0] ?? ''} to ${high}`;
  };
  const limitName = inputs['hub'] === 'grey-iron' ? 'breaks at' : 'yields at';

  const top = sectionBottom(n('hubOutside'), n('length')) + 30;
  const mostStress = 1.12 * Math.max(strength, counted, pull.value, pressure.high ?? 0, 1);
  const x = linear(0, mostStress, left, right);
  const limitText = text(strength, mega);
  const half = (limitName.length + limitText.length + 1) * 3.7;
  // Of what slides together nothing is said about stress.
  const stressed = answer.values.find((v) => v.key === 'stress');
  const stress = stressed?.kind === 'verdict' ? stressed.level : 'plain';
  const rows = [
    {
      name: 'pressure',
      figures: range(pressure, mega),
      low: pressure.low ?? 0,
      high: pressure.high ?? 0,
      level: 'plain',
    },
    { name: 'pull round the bore', figures: text(pull.value, mega), low: 0, high: pull.value, level: 'plain' },
    { name: 'both together, as yield counts them', figures: text(counted, mega), low: 0, high: counted, level: stress },
  ] as const;
  const bottom = top + rows.length * rowHigh - 10;

  const forceTop = bottom + 54;
  const mostForce = Math.max((force.high ?? 0) * 1.2, 6000);
  const fx = linear(0, mostForce, left, right);
  const limits = [0, ...tools.map((t) => t.upTo), mostForce];
  const description =
    `Outer part ${size('hubOutside')} outside, joint ${size('diameter')}, ` +
    `${n('shaftBore') > 0 ? `hole ${size('shaftBore')}` : 'solid inner part'}, length ` +
    `${size('length')}. Pressure ${range(pressure, mega)}; ` +
    `the outer part counts ${text(counted, mega)} against ${limitText}. ` +
    `Force to push it in ${range(force, kilo)}.`;

  return (
    <Picture
      id={id}
      title="The joint to scale, its stress and the force to push it in"
      description={description}
      height={forceTop + 54}
    >
      <Section
        outside={n('hubOutside')}
        joint={n('diameter')}
        hole={n('shaftBore')}
        length={n('length')}
        pressed={(pressure.high ?? 0) > 0}
        text={{ outside: size('hubOutside'), joint: size('diameter'), hole: size('shaftBore'), length: size('length') }}
      />
      <text
        class="pic-text"
        x={Math.min(right - half, Math.max(left + half, x(strength)))}
        y={top - 18}
        text-anchor="middle"
      >
        {limitName} <tspan class="pic-figure">{limitText}</tspan>
      </text>
      {rows.map((r, i) => (
        <RangeRow
          key={r.name}
          name={r.name}
          figures={r.figures}
          y={top + i * rowHigh}
          x={x}
          low={r.low}
          high={r.high}
          left={left}
          right={right}
          level={r.level}
        >
          <rect
            class="pic-forbidden"
            x={x(strength).toFixed(1)}
            y={top + i * rowHigh + barTop}
            width={(right - x(strength)).toFixed(1)}
            height={barHeight}
          />
        </RangeRow>
      ))}
      <path
        class="pic-limit"
        d={`${rows.map((_, i) => `M${x(strength).toFixed(1)} ${top + i * rowHigh + barTop - 2}v${barHeight + 3}`).join('')}`}
      />
      <Axis
        x={(s) => x(s / toUnit(1, mega))}
        steps={niceSteps(0, toUnit(mostStress, mega), 5)}
        y={bottom}
        left={left}
        right={right}
      />
      <RangeRow
        name="force to push it in"
        figures={range(force, kilo)}
        y={forceTop - 12}
        x={fx}
        low={force.low ?? 0}
        mid={force.value}
        high={force.high ?? 0}
        left={left}
        right={right}
        level={valueOf(answer, 'tool', 'verdict').level}
      />
      {limits.slice(0, -1).map((from, i) => {
        if (from >= mostForce) return null;
        const [a, b] = [fx(from), fx(limits[i + 1] ?? mostForce)];
        const name = toolNames[i] ?? 'too much';
        return (
          <g key={name}>
            <rect
              class={i === tools.length ? 'pic-forbidden' : i % 2 === 0 ? 'pic-clear' : 'pic-clear-edge'}
              x={a.toFixed(1)}
              y={forceTop + 10}
              width={(b - a).toFixed(1)}
              height={20}
            />
            {name.length * 7 + 6 < b - a && (
              <text class="pic-text" x={(a + b) / 2} y={forceTop + 24.5} text-anchor="middle">
                {name}
              </text>
            )}
          </g>
        );
      })}
      <Axis
        x={(s) => fx(s / toUnit(1, kilo))}
        steps={niceSteps(0, toUnit(mostForce, kilo), 5)}
        y={forceTop + 32}
        left={left}
        right={right}
      />
    </Picture>
  );
}
