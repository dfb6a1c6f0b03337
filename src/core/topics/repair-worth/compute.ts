import type { Caution, Problem, Result, Value } from '../../contract/result.ts';
import { guarded } from '../../contract/guarded.ts';
import { roundMoney } from '../../money/index.ts';
import { isOver, isUnder } from '../../thresholds/index.ts';
import { mostWorthPaying } from './comparison.ts';
import { engineLook, engineValues } from './engine-first.ts';
import { estimates } from './estimates.ts';
import { fields } from './fields.ts';
import { comparisonWorking, readComparison, serviceByHours } from './read-comparison.ts';
import { readQuote, type WorthInputs } from './read-quote.ts';
import { chance, flips, rulesOfThumb, serviceTable, yearly } from './values.ts';
import { spentValue, verdictOf } from './verdict.ts';

/** Nobody can count on more [years]; the box for years takes no more either. */
const longestService = 30;

export const compute = guarded(fields, (inputs): Result => {
  const problems = [...marginProblems(inputs), ...serviceProblems(inputs)];
  if (problems.length > 0) return { ok: false, problems };
  const quote = readQuote(inputs);
  if (inputs.quoteAs === 'lines' && quote.total === 0)
    return { ok: false, problems: [{ field: 'lines', code: 'empty-quote' }] };
  const taken = estimates(inputs);
  const c = readComparison(inputs, quote.toPay, taken.amounts);
  const look = engineLook(inputs, c);
  const [costs, flip, thumb] = [yearly(c, inputs), flips(c, inputs), rulesOfThumb(inputs, quote.total)];
  const most: Value = {
    kind: 'money',
    key: 'mostWorth',
    label: look ? 'Most worth paying, with a sound engine' : 'Most worth paying for this repair',
    value: roundMoney(Math.max(0, mostWorthPaying(c))),
    main: true,
  };
  return {
    ok: true,
    values: [
      most,
      ...engineValues(inputs, look),
      verdictOf(c, look),
      ...quote.values,
      ...costs.values,
      ...taken.values,
      serviceTable(c),
      ...flip.values,
      ...chance(c, inputs, look?.worn ?? 0),
      ...thumb.values,
      ...spentValue(inputs.alreadySpent),
    ],
    working: [
      ...quote.steps,
      ...taken.steps,
      ...comparisonWorking(c, inputs, taken.amounts),
      ...(look?.steps ?? []),
      ...costs.steps,
      ...flip.steps,
      ...thumb.steps,
    ],
    cautions: cautions(inputs),
  };
});

/** Markup may be any share of the cost; margin is a share of the price and can't reach it. */
function marginProblems(inputs: WorthInputs): Problem[] {
  return (inputs.lines ?? []).flatMap((line, k) =>
    line.basis === 'margin' && !isUnder(line.share, 1)
      ? [
          {
            field: `lines.${k + 1}.share`,
            code: 'margin-too-large',
            data: { got: Number((line.share * 100).toPrecision(6)) },
          },
        ]
      : [],
  );
}

function serviceProblems(inputs: WorthInputs): Problem[] {
  if (inputs.serviceAs !== 'hours' || !isOver(serviceByHours(inputs), longestService)) return [];
  const got = Number(serviceByHours(inputs).toPrecision(3));
  return [{ field: 'serviceHours', code: 'service-too-long', data: { got, max: longestService } }];
}

function cautions(inputs: WorthInputs): Caution[] {
  return inputs.engine === 'unknown' ? [{ hazard: 'compression-test-spark', level: 'warning' }] : [];
}
