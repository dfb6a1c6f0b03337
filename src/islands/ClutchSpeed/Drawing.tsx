/** Every speed on one ladder; with the parts known, drum and shoes at rest to scale above it. */
import { idleMarginWanted } from '../../core/topics/clutch-speed/index.ts';
import { formatIn, formatQuantity, toUnit } from '../../core/quantity/index.ts';
import { valueOf } from '../../core/contract/result.ts';
import { Picture, SizeLine, TextLines, type DrawingProps } from '../kit/index.ts';
import { layDrum } from './drum.ts';
import { SpeedLadder, type Mark } from './SpeedLadder.tsx';

const centre = { x: 84, y: 88 };
const radius = 76;

/** With the parts known, drum and ladder; else the ladder alone. */
export function Drawing(props: DrawingProps) {
  return props.inputs['known'] === 'parts' ? <DrumAndLadder {...props} /> : <LadderAlone {...props} />;
}

function LadderAlone({ id, answer, inputs }: DrawingProps) {
  const get = (key: string) => valueOf(answer, key, 'quantity').value;
  const idle = Number(inputs['idle']);
  const mark = (label: string, si: number, look: Mark['look']): Mark => ({
    label,
    speed: toUnit(si, 'rpm'),
    text: formatIn(si, 'rpm', 0),
    look,
  });
  const [weak, engages] = [get('weakEngagement'), get('engagement')];
  return (
    <Picture
      id={id}
      title="Idle and engagement, from standstill up"
      description={
        `Idle ${formatIn(idle, 'rpm', 0)}. With one weak spring a shoe reaches the drum at ` +
        `${formatIn(weak, 'rpm', 0)}, with whole springs at ${formatIn(engages, 'rpm', 0)}.`
      }
      height={262}
      caption="Gray: the blade must stand still. Band above it: engagement is too near to idle."
    >
      <SpeedLadder
        marks={[mark('idle', idle, 'stand'), mark('one weak spring', weak, 'weak'), mark('engages', engages, 'engage')]}
        idle={toUnit(idle, 'rpm')}
        near={toUnit(idle * idleMarginWanted, 'rpm')}
        top={34}
      />
    </Picture>
  );
}

function DrumAndLadder({ id, answer, inputs, reader }: DrawingProps) {
  const get = (key: string) => valueOf(answer, key, 'quantity').value;
  const input = (key: string) => Number(inputs[key]);
  const rpm = (si: number) => formatIn(si, 'rpm', 0);
  const length = (si: number) => formatQuantity(si, ['mm', 'in'], reader.system, [1, 2]);
  const [idle, running, shoes] = [input('idle'), input('running'), input('shoes')];
  const parts = layDrum({ drum: input('drum') / 2, gap: input('gap'), mass: input('radius'), shoes }, radius, centre);
  const mark = (label: string, si: number, look: Mark['look']): Mark => ({
    label,
    speed: toUnit(si, 'rpm'),
    text: rpm(si),
    look,
  });
  const marks = [
    mark('idle', idle, 'stand'),
    mark('one weak spring', get('weakEngagement'), 'weak'),
    mark('engages', get('engagement'), 'engage'),
    mark('holds', get('grip'), 'hold'),
    mark('running', running, 'run'),
  ];
  const description =
    `${shoes} ${shoes === 1 ? 'shoe' : 'shoes'} in a ${length(input('drum'))} drum. Idle ${rpm(idle)}. ` +
    `With one weak spring a shoe reaches the drum at ${rpm(get('weakEngagement'))}, with whole springs ` +
    `at ${rpm(get('engagement'))}; the clutch holds full torque from ${rpm(get('grip'))} and runs at ` +
    `${rpm(running)}.`;
  return (
    <Picture
      id={id}
      title="Clutch at rest, and its speeds from standstill up"
      description={description}
      height={444}
      caption="Drum, gap and center of mass to scale; the shape of the shoes is not asked for. Broken outline: the shoe with the weak spring, out on the drum. On the ladder, gray: the blade must stand still; band above it: engagement is too near to idle."
    >
      <circle class="pic-drum" cx={centre.x} cy={centre.y} r={parts.drum + 4} />
      <circle class="pic-steel pic-part-edge" cx={centre.x} cy={centre.y} r={parts.drum} />
      {parts.shoes.map((d) => (
        <path class="pic-part" key={d} d={d} />
      ))}
      <path class="pic-flung" d={parts.flung} />
      <circle class="pic-part" cx={centre.x} cy={centre.y} r={parts.hub} />
      {parts.masses.map((m) => (
        <circle class="pic-dot" key={`${m.x} ${m.y}`} cx={m.x} cy={m.y} r={3} />
      ))}
      <path class="pic-lead" d={`M${parts.masses[0]?.x ?? 0} ${parts.masses[0]?.y ?? 0}L178 62`} />
      <SizeLine
        x1={centre.x - parts.drum}
        y1={centre.y + parts.drum + 14}
        x2={centre.x + parts.drum}
        y2={centre.y + parts.drum + 14}
      />
      <TextLines x={182} y={30} lines={[['drum', length(input('drum'))]]} />
      <TextLines x={182} y={66} lines={['center of mass', ['at', length(input('radius'))]]} />
      <TextLines
        x={182}
        y={116}
        lines={[
          ['gap at rest', length(input('gap'))],
          [shoes === 1 ? 'shoe' : 'shoes', String(shoes)],
        ]}
      />
      <SpeedLadder
        marks={marks}
        idle={toUnit(idle, 'rpm')}
        near={toUnit(idle * idleMarginWanted, 'rpm')}
        running={toUnit(running, 'rpm')}
        top={222}
      />
    </Picture>
  );
}
