/** The edition as it stands at the foot of a page. A build that keeps pages puts it in when the page is finished. */
import { edition } from 'almanac:edition';
import { editionSaid, type Lang } from '../words/index.ts';

export const editionText = (lang: Lang): string => edition.standIn?.(lang) ?? editionSaid(edition, lang);
