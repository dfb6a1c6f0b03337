/** What an article's text holds: components, links, pictures, headings. */
import { componentProblems } from './component-problems.ts';
import type { ContentFile } from './content-file.ts';
import { headingProblems } from './heading-problems.ts';
import type { Library } from './library.ts';
import { linkProblems, pictureProblems, referencesNowhere } from './link-problems.ts';
import { parseBody, visit } from './parse-body.ts';
import type { Say } from './say.ts';

export function bodyProblems(file: ContentFile, library: Library) {
  if (file.ending !== 'mdx') return [];
  const { tree, problems } = parseBody(file);
  const found = [...problems];
  const say: Say = (node, field, got, allowed) =>
    found.push({ file: file.path, line: node.position?.start.line ?? 1, field, got, allowed });
  if (file.body.trim() === '')
    found.push({
      file: file.path,
      line: 1,
      field: 'text',
      got: 'nothing',
      allowed: 'an article below the second "---"',
    });
  visit(tree, (node) => {
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
  });
  headingProblems(tree, say);
  return found;
}
