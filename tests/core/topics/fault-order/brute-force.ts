/**
 * The same search worked out the slow way, from the joint chances of every fault and every set of answers,
 * trying every check at every turn. Nothing is taken from the code under test but the shape of the model.
 * The rules: a suspect is found when it is likely enough and a check that showed a fault made it likelier than it
 * would be without that check, or when no open check could still do so; a check whose answer is equally likely
 * with everybody left is not made, unless it can confirm the only one left; with a way out given, it may be
 * taken at any time.
 */
import type { FaultModel } from '../../../../src/core/topics/fault-order/index.ts';

interface Rules {
  readonly sure: number;
  readonly confirmLast: boolean;
  readonly fallback: number;
}

export function bruteForce(model: FaultModel, rules: Rules): number {
  const faults = [
    ...model.suspects.map((s) => ({ id: s.id, chance: s.likelihood })),
    { id: '', chance: 1 - model.suspects.reduce((a, s) => a + s.likelihood, 0) },
  ];
  const shows = (check: FaultModel['checks'][number], fault: string) => {
    let silent = 1;
    for (const tell of check.tells) silent *= tell.suspect === fault ? 1 - tell.ifFaulty : 1 - tell.ifSound;
    return 1 - silent;
  };

  type Check = FaultModel['checks'][number];
  type Answers = ReadonlyMap<string, boolean>;
  const jointOf = (answers: Answers, without?: Check) =>
    faults.map((f) =>
      model.checks.reduce(
        (p, c) =>
          answers.has(c.id) && c !== without ? p * (answers.get(c.id) ? shows(c, f.id) : 1 - shows(c, f.id)) : p,
        f.chance,
      ),
    );
  const sum = (list: readonly number[]) => list.reduce((a, b) => a + b, 0);
  /** Chance of a suspect with the check's showing, over the chance without it; above 1 when it points there. */
  const lift = (joint: readonly number[], check: Check, j: number) => {
    const own = shows(check, faults[j]?.id ?? '');
    const others = sum(joint) - (joint[j] ?? 0);
    if (others <= 1e-12 * (joint[j] ?? 0)) return own / shows(check, '');
    const shown = sum(joint.map((w, k) => w * shows(check, faults[k]?.id ?? '')));
    return (own * sum(joint)) / shown;
  };
  const points = (joint: readonly number[], check: Check, j: number) =>
    check.tells.some((t) => t.suspect === faults[j]?.id) &&
    shows(check, faults[j]?.id ?? '') > shows(check, '') + 1e-9 &&
    lift(joint, check, j) > 1 + 1e-9;

  function from(answers: Answers): number {
    const joint = jointOf(answers);
    const total = sum(joint);
    const alive = faults.map((_, j) => j).filter((j) => (joint[j] ?? 0) > 1e-12 * total);
    const tellsApart = (c: Check) => {
      const q = alive.map((j) => shows(c, faults[j]?.id ?? ''));
      return alive.length > 1 ? Math.max(...q) - Math.min(...q) > 1e-9 : points(joint, c, alive[0] ?? 0);
    };
    const left = model.checks.filter((c) => !answers.has(c.id) && tellsApart(c));
    for (const s of model.suspects) {
      const j = faults.findIndex((f) => f.id === s.id);
      if ((joint[j] ?? 0) / total < rules.sure - 1e-12) continue;
      const shown = model.checks.some((c) => answers.get(c.id) === true && points(jointOf(answers, c), c, j));
      const open = model.checks.some((c) => !answers.has(c.id) && points(joint, c, j));
      if (!rules.confirmLast || shown || !open) return 0;
    }
    if (left.length === 0) return rules.fallback;
    return Math.min(
      ...(rules.fallback > 0 ? [rules.fallback] : []),
      ...left.map((c) => {
        const opened = model.checks.some(
          (d) => answers.has(d.id) && d.stripDown !== undefined && d.stripDown === c.stripDown,
        );
        const strip = opened ? 0 : (model.stripDowns?.find((d) => d.id === c.stripDown)?.minutes ?? 0);
        const yes = joint.reduce((sum, w, j) => sum + w * shows(c, faults[j]?.id ?? ''), 0) / total;
        const after = (answer: boolean) => from(new Map([...answers, [c.id, answer]]));
        return (
          c.minutes + strip + (yes > 1e-14 ? yes * after(true) : 0) + (1 - yes > 1e-14 ? (1 - yes) * after(false) : 0)
        );
      }),
    );
  }
  return from(new Map());
}
