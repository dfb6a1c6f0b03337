/** What an article's text holds: components, links, pictures, headings. */
import { componentProblems } from './component-problems.ts';
import type { ContentFile } from './content-file.ts';
import { headingProblems } from './heading-problems.ts';
import type { Library } from './library.ts';
import { linkProblems, pictureProblems, referencesNowhere } from './link-problems.ts';
import { parseBody } from './parse-body.ts';
import { sayOf } from './say.ts';

export function bodyProblems(file: ContentFile, library: Library) {
  if (file.ending !== 'mdx') return [];
  const { pieces, problems } = parseBody(file);
  const found = [...problems];
  const say = sayOf(file, found);
  if (file.body.trim() === '')
    found.push({
      file: file.path,
      line: 1,
      field: 'text',
      got: 'nothing',
      allowed: 'an article below the second "---"',
    });
  for (const node of pieces) {
    if (node.type === 'mdxJsxFlowElement' || node.type === 'mdxJsxTextElement') componentProblems(node, library, say);
    else if (
      (node.type === 'mdxTextExpression' || node.type === 'mdxFlowExpression') &&
      !/^\s*\/\*[\s\S]*\*\/\s*$/.test(node.value ?? '')
    )
      say(
        node,
        'text',
        `{${node.value ?? ''}}`,
        'no curly brackets in the text: write \\{ and \\} for the signs themselves',
      );
    else if (node.type === 'mdxjsEsm')
      say(
        node,
        'text',
        (node.value ?? '').split('\n')[0] ?? '',
        'no import or export: every component may be used without',
      );
    else if (node.type === 'image') pictureProblems(node, file, library, say);
    else if (node.url !== undefined) linkProblems(node, file, library, say);
    else if (node.type === 'text') referencesNowhere(node, say);
  }
  headingProblems(pieces, say);
  return found;
}
