/** Hostile lines through the terminal's own answer function, and a few whole processes of it. */
import { spawnSync } from 'node:child_process';
import { topics } from '../../core/registry.ts';
import { answerLine, type Callable } from '../calc/answer-line.ts';
import { find } from '../calc/find.ts';
import { projectFolder } from '../support/command.ts';
import { hostileLine } from './lines.ts';
import type { Found, FuzzOptions } from './part.ts';
import { chance, type Chance } from './random.ts';

interface Tally {
  answers: number;
  refusals: number;
  unreadable: number;
  readonly codes: Map<string, number>;
  readonly faults: string[];
}

/** No answer and no refusal is longer; most are under 20 kB. */
const longest = 400_000;

/**
 * Lines with a seed, each judged: answered or refused in words, never thrown at, never without a number.
 * @returns counts of answers, refusals and problem codes, and every fault with its line
 */
export function fuzzTerminal({ seed, lines, calc }: FuzzOptions): Found {
  const names = Object.entries(topics).flatMap(([t, topic]) => [
    t,
    t,
    t,
    ...Object.keys(topic.blocks).map((b) => `${t}/${b}`),
  ]);
  const c = chance(seed);
  const tally: Tally = { answers: 0, refusals: 0, unreadable: 0, codes: new Map(), faults: [] };
  for (let n = 0; n < lines; n += 1) {
    const name = c.oneOf(names);
    const callable = find(name);
    if (callable) judge(name, hostileLine(callable, c), callable, tally);
  }
  const processes = wholeProcesses(names, calc, c, tally.faults);
  return {
    counts: [
      `${lines} lines to ${new Set(names).size} topics and blocks: ${tally.answers} answers, ${tally.refusals} refusals, ${tally.unreadable} no JSON object`,
      `${tally.codes.size} problem codes seen, the most frequent: ${mostFrequent(tally.codes)}`,
      processes,
    ],
    faults: tally.faults,
  };
}

function judge(name: string, line: string, callable: Callable, tally: Tally): void {
  const fault = (what: string) => tally.faults.push(`${name} ${what}: ${line.slice(0, 300)}`);
  let text: string;
  try {
    const answer = answerLine(line, callable);
    if (answer.broken !== undefined) {
      tally.unreadable += 1;
      return;
    }
    text = JSON.stringify(answer.out);
    if (answer.out.ok) tally.answers += 1;
    else {
      tally.refusals += 1;
      const problems = answer.out['problems'] as readonly { code: string; message: string }[];
      if (problems.length === 0) fault('is refused without a problem');
      for (const { code, message } of problems) {
        tally.codes.set(code, (tally.codes.get(code) ?? 0) + 1);
        if (code === 'fault') fault(`throws (${message})`);
        if (message.length < 8 || /undefined|\[object|NaN/.test(message.replaceAll(/"[^"]*"/g, '')))
          fault(`says "${message.slice(0, 200)}"`);
      }
    }
  } catch (error) {
    fault(`throws ${String(error)}`);
    return;
  }
  // JSON writes NaN and Infinity as null; only a table's empty cell may be null.
  if (/"(?:value|low|high|si)":null/.test(text)) fault('gives no number');
  if (text.length > longest) fault(`answers in ${text.length} characters`);
}

/** Real starts: as many lines out as in, and the exit code that fits. */
function wholeProcesses(names: readonly string[], calc: string, c: Chance, faults: string[]): string {
  const starts = 5;
  let linesIn = 0;
  for (let n = 0; n < starts; n += 1) {
    const name = c.oneOf(names);
    const callable = find(name);
    if (!callable) continue;
    const lines = Array.from({ length: 140 }, () => hostileLine(callable, c)).filter((l) => isObject(l));
    linesIn += lines.length;
    const run = spawnSync(process.execPath, [calc, name], {
      cwd: projectFolder,
      input: `${lines.join('\n')}\n`,
      encoding: 'utf8',
      maxBuffer: 1e9,
    });
    const out = run.stdout.split('\n').filter((l) => l !== '');
    const refused = out.some((l) => l.startsWith('{"ok":false'));
    if (out.length !== lines.length) faults.push(`${name}: ${lines.length} lines in, ${out.length} out`);
    if (run.status !== (refused ? 1 : 0))
      faults.push(`${name}: exit code ${run.status}, ${refused ? 'some' : 'no'} refusals`);
    if (run.stderr !== '') faults.push(`${name}: complains ${run.stderr.slice(0, 300)}`);
  }
  return `${starts} whole processes, ${linesIn} lines in and out`;
}

function isObject(line: string): boolean {
  try {
    const value: unknown = JSON.parse(line.replace(/^\uFEFF/, ''));
    return typeof value === 'object' && value !== null && !Array.isArray(value);
  } catch {
    return false;
  }
}

function mostFrequent(codes: ReadonlyMap<string, number>): string {
  const sorted = [...codes].sort((a, b) => b[1] - a[1]).slice(0, 8);
  return sorted.map(([code, n]) => `${code} ${n}`).join(', ');
}
