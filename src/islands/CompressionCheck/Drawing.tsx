/** The gauge as it stands, on a face made for this height. */
import { compressionBands } from '../../core/topics/compression-check/index.ts';
import { formatQuantity, pick, toUnit, unitLabel } from '../../core/quantity/index.ts';
import { valueOf } from '../../core/contract/result.ts';
import { Picture, TextLines, type DrawingProps } from '../kit/index.ts';
import { Dial, type Band, type DialMark } from './Dial.tsx';

const gauge = ['bar', 'psi'] as const;

export function Drawing({ id, answer, inputs, reader }: DrawingProps) {
  const unit = pick(gauge, reader.system);
  const given = (key: string) => (typeof inputs[key] === 'number' ? inputs[key] : undefined);
  const text = (si: number) => formatQuantity(si, gauge, reader.system, [1, 0]);
  const expected = valueOf(answer, 'expected', 'quantity').value;
  const [reading, healthy] = [given('reading') ?? 0, given('healthy') ?? 0];
  const marks: (DialMark & { readonly label: string; readonly si: number })[] = [
    { key: 'reading', si: reading, label: 'reading', look: 'needle' as const },
    { key: 'expected', si: expected, label: 'healthy here', look: 'expected' as const },
    ...[
      { key: 'first', label: 'first pull', look: 'first' as const },
      { key: 'oiled', label: 'with oil', look: 'oiled' as const },
    ].flatMap((m) => {
      const si = given(m.key);
      return si === undefined ? [] : [{ ...m, si }];
    }),
  ].map((m) => ({ ...m, value: toUnit(m.si, unit) }));
  const most = Math.max(...marks.map((m) => m.value)) * 1.2;
  const at = (share: number) => toUnit(expected * share, unit);
  const { healthy: full, serviceable, worn } = compressionBands;
  const bands: Band[] = [
    { level: 'low', from: 0, to: at(worn) },
    { level: 'worn', from: at(worn), to: at(serviceable) },
    { level: 'serviceable', from: at(serviceable), to: at(full) },
    { level: 'healthy', from: at(full), to: most },
  ];
  const figure = (share: number) => formatQuantity(expected * share, gauge, reader.system, [1, 0]);
  const description = `The gauge reads ${text(reading)}. A healthy engine reads ${text(expected)} here and ${text(healthy)} at sea level. Healthy from ${figure(full)}, serviceable from ${figure(serviceable)}, worn from ${figure(worn)}, low below that.${marks
    .slice(2)
    .map((m) => ` ${m.label[0]?.toUpperCase()}${m.label.slice(1)} ${text(m.si)}.`)
    .join('')}`;
  return (
    <Picture
      id={id}
      title="The reading on a gauge made for this height"
      description={description}
      height={296}
      caption="The wider the band, the healthier the engine. Bands are shares of the healthy reading here, not of the one at sea level."
    >
      <Dial x={108} y={118} radius={92} most={most} bands={bands} marks={marks} unit={unitLabel(unit)} />
      <g>
        {marks.map((m, i) => (
          <g key={m.key}>
            <Key look={m.look} x={230} y={32 + i * 40} />
            <TextLines x={252} y={30 + i * 40} lines={[m.label, ['', text(m.si)]]} step={16} />
          </g>
        ))}
      </g>
      <TextLines
        x={8}
        y={236}
        lines={[
          ['healthy from', figure(full)],
          ['serviceable from', figure(serviceable)],
          ['worn from', `${figure(worn)}, low below`],
        ]}
        step={19}
      />
    </Picture>
  );
}

/** The mark beside its name, as it stands on the face. */
function Key({ look, x, y }: { readonly look: DialMark['look']; readonly x: number; readonly y: number }) {
  switch (look) {
    case 'needle':
      return <path class="pic-needle" d={`M${x} ${y}h16`} />;
    case 'expected':
      return <path class="pic-dial-expected" d={`M${x + 14} ${y}l-12 -5v10z`} />;
    case 'first':
      return <path class="pic-dial-first" d={`M${x + 2} ${y}h12`} />;
    case 'oiled':
      return <path class="pic-dial-oiled" d={`M${x + 14} ${y}l-11 -5M${x + 14} ${y}l-11 5`} />;
  }
}
