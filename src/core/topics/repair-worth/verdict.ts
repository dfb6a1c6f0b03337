/** The one answer: what to do with the quote, and why. */
import type { Value, VerdictValue } from '../../contract/result.ts';
import { capitalRecovery, roundMoney } from '../../money/index.ts';
import { isOver, isUnder } from '../../thresholds/index.ts';
import { comebackWorth, mostWorthPaying, pays, type Comparison } from './comparison.ts';
import type { EngineLook } from './engine-first.ts';

/** Closer than this to the limit, and the figures can't tell repair from new. Our choice. */
export const close = 0.1;

/**
 * Where the quote stands. A look into the engine that pays comes before everything; else the better act without one:
 * the quote against the most worth paying, the chance of a worn engine counted in.
 * @param look undefined where nobody needs to look: the engine is known to be good, or this repair renews it
 */
export function verdictOf(c: Comparison, look: EngineLook | undefined): VerdictValue {
  const most = mostWorthPaying(c);
  const first = look?.pays === 'yes';
  const limit = look && !first ? look.blindLimit : most;
  const data = {
    quote: roundMoney(c.repair),
    limit: roundMoney(Math.max(0, limit)),
    between: roundMoney(Math.abs(limit - c.repair)),
  };
  const verdict = (code: string, level: VerdictValue['level'], more: VerdictValue['data'] = {}): VerdictValue => ({
    kind: 'verdict',
    key: 'verdict',
    label: 'Where the quote stands',
    code,
    level,
    data: { ...data, ...more },
    main: true,
  });
  if (!pays({ ...c, repair: 0 })) return verdict('no-repair-worth-it', 'caution', largestReason(c));
  if (first)
    return verdict('engine-in-doubt', 'caution', {
      fee: roundMoney(look.fee),
      blind: isOver(c.repair, look.blindLimit) ? 'new' : 'repair',
    });
  if (!isOver(Math.abs(limit - c.repair), close * limit)) return verdict('too-close-to-call', 'note');
  return isUnder(c.repair, limit) ? verdict('worth-repairing', 'good') : verdict('buy-new', 'caution');
}

/** Why no repair pays at any price: the largest of what keeping this machine costs besides the repair. */
function largestReason(c: Comparison): { readonly reason: string; readonly amount: number } {
  const extra = Math.max(0, c.repairRunning - (c.newYears ? 0 : c.newRunning));
  const parts = {
    'as-it-stands': c.asIs,
    stop: c.repairDown,
    comeback: comebackWorth(c),
    upkeep: extra / capitalRecovery(c.rate, c.service),
  };
  const [reason, amount] = Object.entries(parts).reduce((most, part) => (part[1] > most[1] ? part : most));
  return { reason, amount: roundMoney(amount) };
}

/** A word on money already spent, which no answer rests on; none where nothing was spent. */
export function spentValue(alreadySpent: number): Value[] {
  if (!(alreadySpent > 0)) return [];
  return [
    {
      kind: 'verdict',
      key: 'spent',
      label: 'Money already spent',
      code: 'already-spent',
      level: 'note',
      data: { spent: alreadySpent },
      main: true,
    },
  ];
}
