/** A paragraph or two of Markdown from a YAML record, as HTML. Same rules as the articles: no curled quotes. */
import { markdownToHtml } from 'satteri';

export function htmlOf(markdown: string): string {
  return markdownToHtml(markdown, { features: { smartPunctuation: false } }).html;
}
