/** Planning laid aside between its pieces gives what planning at one go gives, to the last bit. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { parse } from 'yaml';
import {
  planInPieces,
  planOrder,
  type FaultModel,
  type OrderOptions,
  type Seen,
} from '../../../../src/core/topics/fault-order/index.ts';
import { fault } from '../../../../src/schemas/fault.ts';

const folder = new URL('../../../../content/knowledge/faults/', import.meta.url);
const complaints = readdirSync(folder)
  .filter((f) => f.endsWith('.yaml'))
  .map((file) => ({ file, ...fault.parse(parse(readFileSync(new URL(file, folder), 'utf8'))) }));

function inPieces(...asked: Parameters<typeof planInPieces>) {
  const work = planInPieces(...asked);
  for (let pieces = 1; ; pieces += 1) {
    const piece = work.next();
    if (piece.done) return { plan: piece.value, pieces };
  }
}

/** The first check answered both ways, and on lists that do not take a second to plan nothing answered. */
function states({ checks }: FaultModel): (readonly Seen[])[] {
  const check = checks[0]?.id ?? '';
  const answered = [[{ check, shows: false }], [{ check, shows: true }]];
  return checks.length > 9 ? answered : [...answered, []];
}

it.each(complaints)('$file is planned alike in pieces and at one go', (complaint) => {
  const fallbackMinutes = complaint.wayOutMinutes;
  const aside = { ruledOut: [complaint.suspects[0]?.id ?? ''], skipped: [complaint.checks[1]?.id ?? ''] };
  const alike = (seen: readonly Seen[], options: OrderOptions) =>
    expect(inPieces(complaint, seen, options).plan).toStrictEqual(planOrder(complaint, seen, options));
  for (const seen of states(complaint)) alike(seen, { fallbackMinutes });
  // With no way out, a suspect put aside and a check left out.
  alike(states(complaint)[0] ?? [], aside);
});

it('a list of twelve checks is planned in many pieces, a list too long for every order too', () => {
  const longest = complaints.find((c) => c.checks.length === 12);
  if (!longest) throw new Error('no complaint has twelve checks');
  expect(inPieces(longest, [{ check: longest.checks[0]?.id ?? '', shows: false }]).pieces).toBeGreaterThan(1000);
  const checks = Array.from({ length: 14 }, (_, k) => ({
    id: `c${k}`,
    name: `c${k}`,
    minutes: 3 + ((7 * k) % 11),
    tells: [{ suspect: `s${k}`, ifFaulty: 0.9, ifSound: 0.04 }],
  }));
  const long = { checks, suspects: checks.map((_, k) => ({ id: `s${k}`, name: `s${k}`, likelihood: 0.9 / 14 })) };
  const { plan, pieces } = inPieces(long, [], { fallbackMinutes: 90 });
  expect(plan.method).toBe('ratio-rule');
  expect(plan).toStrictEqual(planOrder(long, [], { fallbackMinutes: 90 }));
  expect(pieces).toBeGreaterThan(100);
});
