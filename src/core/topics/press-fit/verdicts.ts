import type { Value, VerdictValue } from '../../contract/result.ts';
import type { MaterialKey } from '../../materials/index.ts';
import { isOver } from '../../thresholds/index.ts';
import { tools } from './grip.ts';

/** Share of its strength up to which an outer part leaves enough for the work; iron cracks without warning. Common practice. */
const easyShare = { iron: 0.5, other: 0.8 } as const;

/**
 * The tool for the most force the tightest pair can ask for.
 * @param force [N] @param tight some interference is left in the tightest pair
 * @param refused the outer part does not stand it: then no tool is advised
 */
export function forceVerdicts(force: number, tight: boolean, refused: boolean): Value[] {
  const base = {
    kind: 'verdict',
    key: 'tool',
    label: 'Tool',
    main: true,
    source: 'common-practice',
    data: { force },
  } as const;
  if (!tight) return [{ ...base, code: 'tool-none', level: 'note' }];
  if (refused) return [{ ...base, code: 'tool-refused', level: 'stop' }];
  const tool = tools.find((t) => !isOver(force, t.upTo));
  return [tool ? { ...base, code: tool.code, level: 'good' } : { ...base, code: 'tool-too-much', level: 'stop' }];
}

/** Iron does not yield, it cracks: it is judged more strictly. */
export function stressVerdict(share: number, hub: MaterialKey, source: string | undefined): VerdictValue {
  const base = { kind: 'verdict', key: 'stress', label: 'Outer part', main: true, source, data: { share } } as const;
  const most = hub === 'grey-iron' ? easyShare.iron : easyShare.other;
  if (isOver(share, 1))
    return { ...base, code: hub === 'grey-iron' ? 'stress-cracks' : 'stress-yields', level: 'stop' };
  return isOver(share, most)
    ? { ...base, code: 'stress-high', level: 'caution' }
    : { ...base, code: 'stress-fine', level: 'good' };
}
