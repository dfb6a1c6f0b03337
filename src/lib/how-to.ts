/**
 * The steps of a job or guide for search engines (schema.org, HowTo), taken from the numbered lists of its text. A page
 * without such steps has none, and a caution stands before the step it protects here too.
 */
import { mdxToMdast } from 'satteri';
import { saidIn } from '../schemas/languages.ts';
import { wordsFor, type Lang } from '../words/index.ts';
import { liveAddress } from './addresses.ts';
import type { Article } from './articles.ts';
import { durationOf, sectionsOf, type TextNode } from './how-to-steps.ts';
import { records } from './records.ts';

const fewest = 2;

/** As JSON for the page's head; nothing without an address or without steps. */
export async function howToOf(article: Article): Promise<string | undefined> {
  const { folder, lang, path, entry } = article;
  const address = liveAddress(path);
  if (address === undefined || (folder !== 'jobs' && folder !== 'guides') || !entry.body) return undefined;
  const words = await records('glossary');
  const sections = sectionsOf(mdxToMdast(entry.body) as TextNode, (id) => {
    const word = words.get(id);
    return word ? saidIn(word, lang).term : id;
  });
  if (sections.flatMap((section) => section.steps).length < fewest) return undefined;
  const { data } = entry;
  const inText = entry.body;
  const first = data.hazards.filter((id) => !inText.includes(`<Hazard id="${id}"`));
  const cautionWords = await cautionsIn(lang);
  const steps = sections.map((section, at) => ({
    '@type': 'HowToSection',
    name: section.name || data.title,
    itemListElement: section.steps.map((step, i) => {
      const ids = at === 0 && i === 0 ? [...first, ...step.cautions] : step.cautions;
      if (ids.length === 0) return { '@type': 'HowToStep', text: step.text };
      const tips = ids.map((id) => ({ '@type': 'HowToTip', text: cautionWords(id) }));
      return { '@type': 'HowToStep', itemListElement: [...tips, { '@type': 'HowToDirection', text: step.text }] };
    }),
  }));
  const time = 'time' in data && data.time ? durationOf(data.time) : undefined;
  const named = (type: string, list: readonly string[]) => list.map((name) => ({ '@type': type, name }));
  const whole = {
    '@context': 'https://schema.org',
    '@type': 'HowTo',
    name: data.title,
    description: data.summary,
    url: address,
    inLanguage: lang,
    dateModified: data.reviewed.toISOString().slice(0, 10),
    ...(time && { totalTime: time }),
    ...('tools' in data && data.tools.length > 0 && { tool: named('HowToTool', data.tools) }),
    ...('parts' in data && data.parts.length > 0 && { supply: named('HowToSupply', data.parts) }),
    step: steps,
  };
  // No text may end the element it stands in.
  return JSON.stringify(whole).replaceAll('<', '\\u003c');
}

/** "Warning: Recoil spring. Do not ..." */
async function cautionsIn(lang: Lang): Promise<(id: string) => string> {
  const all = await records('hazards');
  return (id) => {
    const hazard = all.get(id);
    if (!hazard) return '';
    const said = saidIn(hazard, lang);
    return `${wordsFor(lang).level[hazard.level]}: ${said.title}. ${said.do.join(' ')}`;
  };
}
