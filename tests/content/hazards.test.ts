import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { parse } from 'yaml';
import { hazard } from '../../src/schemas/reference.ts';

const content = new URL('../../content/knowledge/hazards/', import.meta.url);
const core = new URL('../../src/core/', import.meta.url);

const levels = new Map(
  readdirSync(content)
    .filter((file) => file.endsWith('.yaml'))
    .map((file) => [
      file.replace('.yaml', ''),
      hazard.parse(parse(readFileSync(new URL(file, content), 'utf8'))).level,
    ]),
);

const raised = readdirSync(core, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .flatMap((file) =>
    [...readFileSync(new URL(file, core), 'utf8').matchAll(/hazard: '([a-z-]+)', level: '([a-z]+)'/g)].map(
      ([, id = '', level]) => ({ file, id, level }),
    ),
  );

it('an answer raises a caution with the signal word of its page', () => {
  expect(raised.length).toBeGreaterThan(15);
  expect(raised.filter(({ id, level }) => levels.get(id) !== level)).toEqual([]);
});
