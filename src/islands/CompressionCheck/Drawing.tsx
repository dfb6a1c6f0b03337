/** The gauge as it stands, on a face made for this height. */
import { compressionBands, doubtfulTenth, gapButts, tightTenth } from '../../core/topics/compression-check/index.ts';
import { formatQuantity, pick, toUnit, unitLabel } from '../../core/quantity/index.ts';
import { valueOf } from '../../core/contract/result.ts';
import { linear, Picture, TextLines, type DrawingProps } from '../kit/index.ts';
import { Dial, type Band, type DialMark } from './Dial.tsx';
import { Strip, type StripBand } from './Strip.tsx';

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
  const strips = [leakStrip(answer), ringStrip(answer, given, reader)].filter((strip) => strip !== undefined);
  return (
    <Picture
      id={id}
      title="The reading on a gauge made for this height"
      description={[description, ...strips.map((strip) => strip.said)].join(' ')}
      height={296 + 62 * strips.length}
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
      {strips.map(({ said, ...strip }, k) => (
        <Strip key={said} {...strip} y={310 + 62 * k} />
      ))}
    </Picture>
  );
}

const across = [10, 350] as const;

/** How fast the crankcase loses a tenth: from a second to an hour, each step of the strip ten times the one before. */
function leakStrip(answer: DrawingProps['answer']) {
  const tenth = answer.values.find((v) => v.key === 'tenth');
  if (tenth?.kind !== 'quantity') return undefined;
  const [least, most] = [1, 3600];
  const log = linear(Math.log(least), Math.log(most), ...across);
  const x = (seconds: number) => log(Math.log(Math.min(most, Math.max(least, seconds))));
  const shown =
    tenth.value < 120 ? `${tenth.value.toFixed(tenth.value < 10 ? 1 : 0)} s` : `${(tenth.value / 60).toFixed(0)} min`;
  const bands: StripBand[] = [
    { from: least, to: doubtfulTenth, level: 'caution' },
    { from: doubtfulTenth, to: tightTenth, level: 'note' },
    { from: tightTenth, to: most, level: 'good' },
  ];
  return {
    name: 'crankcase loses a tenth in',
    figure: shown,
    x,
    bands,
    value: tenth.value,
    marks: [
      [doubtfulTenth, '1 min'],
      [tightTenth, '10 min'],
    ] as const,
    said: `The crankcase loses a tenth in ${shown}: tight from 10 minutes, leaking under one.`,
  };
}

/** The ring gap between the gap that butts and the widest that wear explains. */
function ringStrip(
  answer: DrawingProps['answer'],
  given: (key: string) => number | undefined,
  reader: DrawingProps['reader'],
) {
  const [gap, bore] = [given('gap'), given('bore')];
  if (gap === undefined || bore === undefined || !answer.values.some((v) => v.key === 'gapLeast')) return undefined;
  const of = (key: string) => valueOf(answer, key, 'quantity').value;
  const [least, most, widest] = [of('gapLeast'), of('gapMost'), of('gapWidest')];
  const end = 1.15 * Math.max(gap, widest);
  const text = (si: number) => formatQuantity(si, ['mm', 'in'], reader.system, [2, 3]);
  const bands: StripBand[] = [
    { from: 0, to: gapButts * bore, level: 'caution' },
    { from: gapButts * bore, to: least, level: 'note' },
    { from: least, to: most, level: 'good' },
    { from: most, to: widest, level: 'note' },
    { from: widest, to: end, level: 'caution' },
  ];
  return {
    name: 'ring gap',
    figure: text(gap),
    x: linear(0, end, ...across),
    bands,
    value: gap,
    marks: [
      [(least + most) / 2, `${text(least)} to ${text(most)}`],
      [widest, text(widest)],
    ] as const,
    said: `Ring gap ${text(gap)}: usual from ${text(least)} to ${text(most)}, at most ${text(widest)}.`,
  };
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
