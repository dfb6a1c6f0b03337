/** Ticks on a list of checks: they hold for the day on which they were made. */
import { isParts, type Kind } from './record.ts';

export interface Ticks {
  /** The reader's day, as YYYY-MM-DD. */
  readonly day: string;
  readonly done: Readonly<Record<string, boolean>>;
}

export const ticksKind: Kind<Ticks> = {
  name: 'ticks',
  version: 1,
  derived: ['day'],
  read: (data) => {
    if (!isParts(data) || typeof data['day'] !== 'string' || !isParts(data['done'])) return undefined;
    const done = Object.entries(data['done']).filter((d): d is [string, boolean] => typeof d[1] === 'boolean');
    return { day: data['day'], done: Object.fromEntries(done) };
  },
};
