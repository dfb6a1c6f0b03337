/** A search for a fault, kept on this device for its ticket, so that it can be picked up after the weekend. */
import { isParts, load, ofTicket, save, type Kind } from '../../browser/device/index.ts';

/** fault: shows one. sound: looks sound. unsure: looked, and could not tell. later: can't be checked now. */
export const answers = ['fault', 'sound', 'unsure', 'later'] as const;
export type Answer = (typeof answers)[number];

export interface Given {
  readonly is: Answer;
  /** Name of the check, so that a job sheet can say it without the page of the complaint. */
  readonly name: string;
  /** When it was given [ms since 1970]. */
  readonly at: number;
}

export interface Search {
  readonly title: string;
  /** By check. */
  readonly given: Readonly<Record<string, Given>>;
  /** Suspects looked at and found not to be it, by id: their name. */
  readonly ruledOut: Readonly<Record<string, string>>;
  /** "That was it": who, and what was known then. */
  readonly was?: { readonly id: string; readonly name: string; readonly chance: number } | undefined;
  /** Looking goes on although the way out would be shorter. */
  readonly goOn: boolean;
}

export const nothingYet = (title: string): Search => ({ title, given: {}, ruledOut: {}, goOn: false });

const isAnswer = (is: unknown): is is Answer => answers.includes(is as Answer);

export const searchKind: Kind<Search> = {
  name: 'search',
  version: 1,
  precious: true,
  read: (data) => {
    if (!isParts(data) || !isParts(data['given']) || !isParts(data['ruledOut'])) return undefined;
    const given = Object.entries(data['given']).flatMap(([check, g]): [string, Given][] =>
      isParts(g) && isAnswer(g['is']) && typeof g['name'] === 'string' && typeof g['at'] === 'number'
        ? [[check, { is: g['is'], name: g['name'], at: g['at'] }]]
        : [],
    );
    const ruledOut = Object.entries(data['ruledOut']).filter((r): r is [string, string] => typeof r[1] === 'string');
    const was = data['was'];
    return {
      title: typeof data['title'] === 'string' ? data['title'] : '',
      given: Object.fromEntries(given),
      ruledOut: Object.fromEntries(ruledOut),
      ...(isParts(was) &&
      typeof was['id'] === 'string' &&
      typeof was['name'] === 'string' &&
      typeof was['chance'] === 'number'
        ? { was: { id: was['id'], name: was['name'], chance: was['chance'] } }
        : {}),
      goOn: data['goOn'] === true,
    };
  },
};

export const searchPlace = (ticket: string, fault: string) => ofTicket(searchKind, ticket, fault);

/** Where the search of a ticket stands; one kept by an older edition, which knew no tickets, is taken over once. */
export function keptSearch(ticket: string, fault: string, title: string): Search {
  const kept = load(searchPlace(ticket, fault));
  return kept ?? (ticket === '' ? earlier(fault, title) : undefined) ?? nothingYet(title);
}

function earlier(fault: string, title: string): Search | undefined {
  const key = `almanac-fault-${fault}`;
  try {
    const old = JSON.parse(localStorage.getItem(key) ?? 'null') as unknown;
    if (!isParts(old) || !Array.isArray(old['seen']) || !Array.isArray(old['skipped'])) return undefined;
    const given: Record<string, Given> = {};
    for (const s of old['seen'] as unknown[])
      if (isParts(s) && typeof s['check'] === 'string')
        given[s['check']] = { is: s['shows'] === true ? 'fault' : 'sound', name: s['check'], at: 0 };
    for (const s of old['skipped'] as unknown[]) if (typeof s === 'string') given[s] = { is: 'later', name: s, at: 0 };
    const taken = { ...nothingYet(title), given };
    save(searchPlace('', fault), taken);
    localStorage.removeItem(key);
    return taken;
  } catch {
    return undefined;
  }
}
