/** A paragraph or two of Markdown from a YAML record, as HTML. Same rules as the articles: no curled quotes. */
import { markdownToHtml } from 'satteri';

export async function htmlOf(markdown: string): Promise<string> {
  return (await markdownToHtml(markdown, { features: { smartPunctuation: false } })).html;
}
