import type { Value } from '../../contract/result.ts';
import type { MaterialKey } from '../../materials/index.ts';
import { tools } from './grip.ts';

/** The tool for the most force the tightest pair can ask for. */
export function forceVerdicts(force: number): Value[] {
  const base = {
    kind: 'verdict',
    key: 'tool',
    label: 'Tool',
    main: true,
    source: 'common-practice',
    data: { force },
  } as const;
  if (force <= 0) return [{ ...base, code: 'tool-none', level: 'note' }];
  const tool = tools.find((t) => force <= t.upTo);
  return [tool ? { ...base, code: tool.code, level: 'good' } : { ...base, code: 'tool-too-much', level: 'stop' }];
}

/** Iron does not yield, it cracks: it is judged more strictly. Above half of yield the fit leaves little for the work. */
export function stressVerdict(share: number, hub: MaterialKey, source: string | undefined): Value {
  const base = { kind: 'verdict', key: 'stress', label: 'Outer part', main: true, source, data: { share } } as const;
  const most = hub === 'grey-iron' ? 0.5 : 0.8;
  if (share > 1) return { ...base, code: hub === 'grey-iron' ? 'stress-cracks' : 'stress-yields', level: 'stop' };
  return share > most
    ? { ...base, code: 'stress-high', level: 'caution' }
    : { ...base, code: 'stress-fine', level: 'good' };
}
