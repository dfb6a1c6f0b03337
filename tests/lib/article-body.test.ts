/**
 * Every article reads here as the MDX compiler of the library reads it: satteri's own way from text to a program, run
 * with a small writer of HTML, against the parts this site is made of. Components stand as bare marks in both.
 */
import { Buffer } from 'node:buffer';
import { readdirSync, readFileSync } from 'node:fs';
import { evaluate } from 'satteri';
import { expect, test } from 'vitest';
import { articleFeatures } from '../../src/lib/article-body/features.ts';
import { articleBody, type Part } from '../../src/lib/article-body/parts.ts';

const articles = readdirSync('content', { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.mdx'));
const textOf = (file: string) =>
  readFileSync(`content/${file}`, 'utf8')
    .replace(/^---[\s\S]*?^---$/m, '')
    .trim();

/** What it says and how it is nested, whatever way signs are escaped and attributes ordered. */
const mark = (name: string, props: object, inside: string) =>
  `[${name} ${JSON.stringify(
    Object.entries(props)
      .filter(([key]) => key !== 'id')
      .sort(),
  )}]${inside}[/${name}]`;

const unescaped = (html: string) =>
  html
    .replaceAll(/&(?:amp|#38);/g, '&')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll(/&(?:quot|#34);/g, '"')
    .replaceAll('&#39;', "'");

function written(part: Part): string {
  if (typeof part !== 'string') return mark(part.name, part.props, part.children.map(written).join(''));
  return part
    .replaceAll(/<(\/?)([a-z0-9]+)([^>]*)>/g, (_, end: string, name: string, attributes: string) => {
      if (end) return `[/${name}]`;
      const props = Object.fromEntries(
        [...attributes.matchAll(/ ([\w-]+)(?:="([^"]*)")?/g)].map(([, key = '', value]) => [
          key,
          value === undefined ? true : unescaped(value),
        ]),
      );
      return mark(name, props, '').replace(['br', 'hr', 'img', 'input'].includes(name) ? '' : `[/${name}]`, '');
    })
    .replaceAll(/&[#\w]+;/g, unescaped);
}

type Child = string | readonly Child[] | null | undefined | boolean | number;
const flat = (child: Child): string =>
  Array.isArray(child) ? child.map(flat).join('') : typeof child === 'string' ? child : '';

async function byTheCompiler(text: string): Promise<string> {
  const jsx = (type: unknown, { children, ...props }: { children?: Child }) =>
    typeof type === 'function'
      ? (type as (props: object) => string)({ ...props, children })
      : type === 'fragment'
        ? flat(children)
        : mark(String(type), props, flat(children));
  const components = Object.fromEntries([...text.matchAll(/<([A-Z]\w*)/g)].map(([, name = '']) => [name, name]));
  const { default: Content } = (await evaluate(text, {
    features: articleFeatures,
    Fragment: 'fragment',
    jsx,
    jsxs: jsx,
    elementAttributeNameCase: 'html',
  } as never)) as unknown as { default: (props: object) => string };
  return Content({ components });
}

test.each(articles)('%s', async (file) => {
  const text = textOf(file);
  const ours = articleBody(text, new Set()).parts.map(written).join('');
  const theirs = await byTheCompiler(text);
  const bare = (html: string) => html.replaceAll(/\s+/g, ' ').trim();
  expect(Buffer.byteLength(theirs)).toBeGreaterThan(100);
  expect(bare(ours)).toBe(bare(theirs));
});

test('what no article may hold stops the build with its name', () => {
  expect(() => articleBody('<Term id={1 + x} />', new Set())).toThrow('<Term id> holds {1 + x}');
});
