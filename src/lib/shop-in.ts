/** What the shop says of itself, in the reader's language where it has it. */
import type { MachineKind } from '../schemas/machine-kinds.ts';
import { first, wordsIn, type Lang } from '../words/index.ts';
import { shop } from './shop.ts';

/** "tel:" link of the shop's number. */
export const tel = `tel:${shop.phone.replace(/[^\d+*#]/g, '')}`;

type Said = Pick<typeof shop, 'line' | 'hours' | 'visit' | 'notice'>;

export interface ShopSaid extends Said {
  /** Words of the start page in place of the almanac's own. */
  readonly front: NonNullable<typeof shop.front>;
  /** What is said in English for want of the reader's language. */
  readonly borrowed: ReadonlySet<keyof Said>;
}

export function shopIn(lang: Lang): ShopSaid {
  const own: Partial<Said> & { front?: typeof shop.front } = (lang === first ? shop : shop[lang]) ?? {};
  const borrowed = (['line', 'hours', 'visit', 'notice'] as const).filter((key) => own[key] === undefined && shop[key]);
  return {
    line: own.line ?? shop.line,
    hours: own.hours ?? shop.hours,
    visit: own.visit ?? shop.visit,
    notice: own.notice ?? shop.notice,
    // A question in the wrong language helps nobody: there the almanac's own words stand.
    front: own.front ?? {},
    borrowed: new Set(borrowed),
  };
}

/** What a kind of machine is called here. */
export function kindName(kind: MachineKind, lang: Lang): string {
  const own = lang === first ? shop.kinds : shop[lang]?.kinds;
  return own?.[kind] ?? wordsIn(lang).machineKinds[kind];
}
