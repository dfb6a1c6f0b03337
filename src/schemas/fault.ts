/** content/faults: one file per complaint, with who could be at fault and which checks tell them apart. */
import { z } from 'astro/zod';
import { id, pagePath } from './article.ts';
import { day } from './words.ts';
import { machineKinds } from './machine-kinds.ts';

const chance = z.number().min(0).max(1);

const suspect = z.strictObject({
  id,
  name: z.string().min(3).max(80),
  /** Chance that it is this one, before anything was checked: 0.25 for one machine in four. What is missing to 1 is "something else". */
  likelihood: z.number().gt(0, 'must be above 0; leave the suspect out if it never happens').max(1),
  /** One or two sentences: how it comes to this complaint. */
  why: z.string().min(20),
  /** Minutes to put it right. */
  fixMinutes: z.number().positive().optional(),
  /** Page that tells how to put it right. */
  fix: pagePath.optional(),
  /** Only on these kinds of machine. Left out, on all of the complaint's. */
  kinds: z.array(z.enum(machineKinds)).min(1).optional(),
});

const tell = z.strictObject({
  suspect: id,
  /** How often the check shows a fault when this suspect is at fault. */
  ifFaulty: chance,
  /** How often it shows one although this suspect is sound. */
  ifSound: chance.default(0),
});

const check = z.strictObject({
  id,
  name: z.string().min(3).max(80),
  minutes: z.number().positive(),
  /** Money it uses up besides time, such as a plug. */
  cost: z.number().nonnegative().optional(),
  /** The state the machine must be in first, in a few words; shown in bold before the rest. */
  conditions: z.string().min(5).max(90).optional(),
  /** What to do and what counts as showing a fault. */
  how: z.string().min(20),
  /** Cautions of this very check, by file name in hazards, the first one shown; left out, the start of the engine. */
  hazards: z.array(id).max(2).optional(),
  /** Only on these kinds of machine: a floor saw has no cord. Left out, on all of the complaint's. */
  kinds: z.array(z.enum(machineKinds)).min(1).optional(),
  /** Strip-down that must come first, by its id below; its minutes count once. */
  stripDown: id.optional(),
  tells: z.array(tell).min(1),
});

const stripDown = z.strictObject({ id, name: z.string().min(3).max(80), minutes: z.number().positive() });

export const fault = z
  .strictObject({
    /** The complaint in the customer's words; at most 70 characters. */
    title: z.string().min(3).max(70),
    /** One sentence a reader decides by; shown in lists and search. */
    summary: z.string().min(20).max(220),
    reader: z.literal('mechanic'),
    /** Day somebody in the shop last went through it, as YYYY-MM-DD. */
    reviewed: day,
    /** Other words people search by. Not shown. */
    aliases: z.array(z.string().min(1)).default([]),
    /** Cautions shown at the top, by file name in content/hazards. */
    hazards: z.array(id).default([]),
    /** Paragraphs above the search, in Markdown. */
    intro: z.string().min(40),
    /** Most likely first; they add up to 1 at most. */
    suspects: z.array(suspect).min(2).max(12),
    /** In the order the shop would do them without a plan; the plan is compared with it. */
    checks: z.array(check).min(2).max(12),
    stripDowns: z.array(stripDown).default([]),
    /** Minutes of the way out when looking on costs more than it is worth: taking the machine down fully. */
    wayOutMinutes: z.number().positive().default(90),
    /** Where likelihoods and minutes come from, by file name in content/sources. */
    likelihoodsFrom: id.default('common-practice'),
    /** What the page rests on, by file name in content/sources. */
    sources: z.array(id).min(1),
    /** Pages worth reading next. */
    related: z.array(pagePath).default([]),
    /** Kinds of machine it applies to. */
    kinds: z.array(z.enum(machineKinds)).default([]),
  })
  .superRefine((file, context) => {
    const say = (path: (string | number)[], message: string) => context.addIssue({ code: 'custom', path, message });
    const suspects = file.suspects.map((s) => s.id);
    const downs = file.stripDowns.map((d) => d.id);
    for (const [list, ids] of [
      ['suspects', suspects],
      ['checks', file.checks.map((c) => c.id)],
      ['stripDowns', downs],
    ] as const)
      ids.forEach(
        (name, k) => ids.indexOf(name) < k && say([list, k, 'id'], `"${name}" is used twice; give each its own id`),
      );
    const total = file.suspects.reduce((sum, s) => sum + s.likelihood, 0);
    if (total > 1 + 1e-9)
      say(['suspects'], `the likelihoods add up to ${Number(total.toFixed(4))}; they must add up to 1 at most`);
    file.checks.forEach((c, k) => {
      if (c.stripDown !== undefined && !downs.includes(c.stripDown))
        say(
          ['checks', k, 'stripDown'],
          `there is no strip-down "${c.stripDown}" below; there is ${downs.join(', ') || 'none'}`,
        );
      c.tells.forEach((t, i) => {
        if (!suspects.includes(t.suspect))
          say(
            ['checks', k, 'tells', i, 'suspect'],
            `there is no suspect "${t.suspect}"; there is ${suspects.join(', ')}`,
          );
        if (c.tells.findIndex((other) => other.suspect === t.suspect) < i)
          say(['checks', k, 'tells', i, 'suspect'], `"${t.suspect}" stands twice in this check`);
        if (t.ifFaulty <= t.ifSound)
          say(['checks', k, 'tells', i, 'ifFaulty'], 'must be above ifSound, or the check tells nothing');
      });
    });
    file.suspects.forEach((s, k) => {
      if (!file.checks.some((c) => c.tells.some((t) => t.suspect === s.id)))
        say(['suspects', k], `no check tells about "${s.id}"; add one, or leave the suspect out`);
    });
    downs.forEach((name, k) => {
      if (!file.checks.some((c) => c.stripDown === name))
        say(['stripDowns', k], `no check needs the strip-down "${name}"`);
    });
  });
