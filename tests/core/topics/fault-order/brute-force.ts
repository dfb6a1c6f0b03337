/**
 * The same search worked out the slow way, from the joint chances of every fault and every set of answers,
 * trying every check at every turn. Nothing is taken from the code under test but the shape of the model.
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

  function from(answers: ReadonlyMap<string, boolean>): number {
    const joint = faults.map((f) =>
      model.checks.reduce(
        (p, c) => (answers.has(c.id) ? p * (answers.get(c.id) ? shows(c, f.id) : 1 - shows(c, f.id)) : p),
        f.chance,
      ),
    );
    const total = joint.reduce((a, b) => a + b, 0);
    const live = (id: string) => (joint[faults.findIndex((f) => f.id === id)] ?? 0) > 1e-12 * total;
    const left = model.checks.filter((c) => !answers.has(c.id) && c.tells.some((t) => live(t.suspect)));
    for (const s of model.suspects) {
      const j = faults.findIndex((f) => f.id === s.id);
      if ((joint[j] ?? 0) / total < rules.sure - 1e-12) continue;
      const about = model.checks.filter((c) => c.tells.some((t) => t.suspect === s.id));
      if (!rules.confirmLast || about.some((c) => answers.get(c.id)) || about.every((c) => answers.has(c.id))) return 0;
    }
    if (left.length === 0) return rules.fallback;
    return Math.min(
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
