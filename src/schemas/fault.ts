/** content/faults: one file per complaint, with who could be at fault and which checks tell them apart. */
import { z } from 'astro/zod';
import { id, pagePath } from './article.ts';
import { day } from './words.ts';
import { machineKinds } from './machine-kinds.ts';

const chance = z.number().min(0).max(1);

const suspect = z.strictObject({
  id: id.describe('A short name that checks use for it.'),
  name: z.string().min(3).max(80).describe('What is at fault, in a few words.'),
  likelihood: z
    .number()
    .gt(0, 'must be above 0; leave the suspect out if it never happens')
    .max(1)
    .describe(
      'Chance that it is this one, before anything was checked: 0.25 for one machine in four. What is missing to 1 is "something else".',
    ),
  why: z.string().min(20).describe('One or two sentences: how it comes to this complaint.'),
  fixMinutes: z.number().positive().optional().describe('Minutes to put it right.'),
  fix: pagePath.optional().describe('Page that tells how to put it right.'),
  kinds: z
    .array(z.enum(machineKinds))
    .min(1)
    .optional()
    .describe("Only on these kinds of machine. Left out, on all of the complaint's."),
});

const tell = z.strictObject({
  suspect: id.describe('The id of a suspect above.'),
  ifFaulty: chance.describe('How often the check shows a fault when this suspect is at fault.'),
  ifSound: chance.default(0).describe('How often it shows one although this suspect is sound.'),
});

const check = z.strictObject({
  id: id.describe('A short name of its own.'),
  name: z.string().min(3).max(80).describe('What is checked, in a few words.'),
  minutes: z.number().positive().describe('How long it takes once the machine is open so far.'),
  cost: z.number().nonnegative().optional().describe('Money it uses up besides time, such as a plug.'),
  conditions: z
    .string()
    .min(5)
    .max(90)
    .optional()
    .describe('The state the machine must be in first, in a few words; shown in bold before the rest.'),
  how: z.string().min(20).describe('What to do and what counts as showing a fault.'),
  hazards: z
    .array(id)
    .max(2)
    .optional()
    .describe(
      'Cautions of this very check, by file name in hazards, the first one shown; left out, the start of the engine.',
    ),
  kinds: z
    .array(z.enum(machineKinds))
    .min(1)
    .optional()
    .describe("Only on these kinds of machine: a floor saw has no cord. Left out, on all of the complaint's."),
  stripDown: id.optional().describe('Strip-down that must come first, by its id below; its minutes count once.'),
  tells: z.array(tell).min(1).describe('Which suspects it tells apart.'),
});

const stripDown = z.strictObject({
  id: id.describe('A short name that checks use for it.'),
  name: z.string().min(3).max(80).describe('What is taken off.'),
  minutes: z.number().positive().describe('How long that takes.'),
});

export const fault = z
  .strictObject({
    title: z.string().min(3).max(70).describe("The complaint in the customer's words; at most 70 characters."),
    summary: z.string().min(20).max(220).describe('One sentence a reader decides by; shown in lists and search.'),
    reader: z.literal('mechanic').describe('Complaints are worked through at the bench.'),
    reviewed: day.describe('Day somebody in the shop last went through it, as YYYY-MM-DD.'),
    aliases: z.array(z.string().min(1)).default([]).describe('Other words people search by. Not shown.'),
    hazards: z.array(id).default([]).describe('Cautions shown at the top, by file name in content/hazards.'),
    intro: z.string().min(40).describe('Paragraphs above the search, in Markdown.'),
    suspects: z.array(suspect).min(2).max(12).describe('Most likely first; they add up to 1 at most.'),
    checks: z
      .array(check)
      .min(2)
      .max(12)
      .describe('In the order the shop would do them without a plan; the plan is compared with it.'),
    stripDowns: z.array(stripDown).default([]).describe('What must come off before some checks.'),
    wayOutMinutes: z
      .number()
      .positive()
      .default(90)
      .describe('Minutes of the way out when looking on costs more than it is worth: taking the machine down fully.'),
    likelihoodsFrom: id
      .default('common-practice')
      .describe('Where likelihoods and minutes come from, by file name in content/sources.'),
    sources: z.array(id).min(1).describe('What the page rests on, by file name in content/sources.'),
    related: z.array(pagePath).default([]).describe('Pages worth reading next.'),
    kinds: z.array(z.enum(machineKinds)).default([]).describe('Kinds of machine it applies to.'),
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
