/** The plan of a search as it stands, on the machine in hand. */
import type { Pieces } from '../../core/contract/pieces.ts';
import {
  planInPieces,
  planOrder,
  type FaultModel,
  type OrderOptions,
  type PlannedCheck,
  type Seen,
} from '../../core/topics/fault-order/index.ts';
import { nothingYet, type Search } from './kept.ts';
import type { FaultSearchProps, ShownPlan } from './props.ts';

type Page = Pick<FaultSearchProps, 'model' | 'checks' | 'suspects' | 'wayOutMinutes'>;

/** Without a machine on the bench everything on the list may apply. */
const applies = (kinds: readonly string[] | undefined, kind: string | undefined): boolean =>
  kinds === undefined || kind === undefined || kinds.includes(kind);

/** The model without what this kind of machine does not have; a list left too short is kept whole. */
function modelFor({ model, checks, suspects }: Page, kind: string | undefined): FaultModel {
  const who = model.suspects.filter((s) => applies(suspects[s.id]?.kinds, kind));
  const which = model.checks.filter((c) => applies(checks[c.id]?.kinds, kind));
  if (who.length === model.suspects.length && which.length === model.checks.length) return model;
  if (who.length === 0 || which.length === 0) return model;
  // Whoever is left takes the share of those that can't be it; "something else" keeps its own.
  const sum = (list: FaultModel['suspects']) => list.reduce((total, s) => total + s.likelihood, 0);
  const share = sum(model.suspects) / sum(who);
  return {
    ...model,
    suspects: who.map((s) => ({ ...s, likelihood: s.likelihood * share })),
    checks: which.map((c) => ({ ...c, tells: c.tells.filter((t) => who.some((s) => s.id === t.suspect)) })),
  };
}

export interface PlanNow {
  readonly model: FaultModel;
  readonly plan: ShownPlan;
}

/** The plan of a search nobody has begun, made once with the page: a list of twelve checks takes a second or more. */
export function planAtRest(page: Page): ShownPlan {
  const { plan } = planFor(page, nothingYet(''), undefined);
  const { belief, found, next, stop, answered, method, expectedMinutes } = plan;
  const short = ({ id, minutes }: Pick<PlannedCheck, 'id' | 'minutes'>) => ({ id, minutes });
  return {
    belief,
    ...(found ? { found } : {}),
    ...(next ? { next } : {}),
    ...(stop ? { stop } : {}),
    answered,
    method,
    expectedMinutes,
    ranking: plan.ranking.map(short),
    path: plan.path.map(short),
  };
}

const isBegun = ({ given, ruledOut, goOn }: Search): boolean =>
  goOn || Object.keys(given).length + Object.keys(ruledOut).length > 0;

/** The plan at once. */
export function planFor(page: Page, search: Search, kind: string | undefined): PlanNow {
  const model = modelFor(page, kind);
  return { model, plan: planOrder(model, ...asked(page, model, search)) };
}

/** The same piece by piece; what has come with the page is not made again. */
export function* planning(
  page: Page & Partial<Pick<FaultSearchProps, 'atRest'>>,
  search: Search,
  kind: string | undefined,
): Pieces<PlanNow> {
  const model = modelFor(page, kind);
  const known = model === page.model && !isBegun(search) ? page.atRest : undefined;
  return { model, plan: known ?? (yield* planInPieces(model, ...asked(page, model, search))) };
}

/** What a search says, as the planner takes it. */
function asked(page: Page, model: FaultModel, search: Search): [seen: readonly Seen[], options: OrderOptions] {
  const entries = model.checks.flatMap((c) => {
    const given = search.given[c.id];
    return given ? [{ check: c.id, ...given }] : [];
  });
  return [
    entries
      .filter((e) => e.is === 'fault' || e.is === 'sound')
      .map((e) => ({ check: e.check, shows: e.is === 'fault' })),
    {
      ruledOut: Object.keys(search.ruledOut),
      skipped: entries.filter((e) => e.is === 'unsure' || e.is === 'later').map((e) => e.check),
      ...(search.goOn ? {} : { fallbackMinutes: page.wayOutMinutes }),
    },
  ];
}

/**
 * All checks in the order they stand on the page: those the plan still proposes first, then the rest. What was
 * answered stays in the list, so that it can be answered anew.
 */
export function inOrder({ model, plan }: PlanNow): readonly string[] {
  const planned = [...plan.path, ...plan.ranking].map((c) => c.id);
  return [...new Set([...planned, ...model.checks.map((c) => c.id)])];
}
