/** The figures a machine's list has for one form: of the shop's own machines, and of those a reader added on this device. */
import { bench, isParts, load, ofDevice, type Kind } from '../../../browser/device/index.ts';
import type { Facts } from '../../../core/machine/index.ts';
import type { IslandProps, Plate } from './props.ts';

/** What of a reader's own saw a form looks at. */
const ownKind: Kind<{ readonly name: string; readonly facts: Facts }> = {
  name: 'machine',
  version: 1,
  read: (data) =>
    isParts(data) && typeof data['name'] === 'string' && isParts(data['facts'])
      ? { name: data['name'], facts: data['facts'] }
      : undefined,
};

/** Plate of the machine on the bench; nothing when there is none, or it has no figure this form asks for. */
export function plateOnBench(page: IslandProps): Plate | undefined {
  const { machine } = bench();
  if (machine === '' || !page.plate) return undefined;
  if (!machine.startsWith('own/')) return page.plates?.[machine];
  const own = load(ofDevice(ownKind, machine.slice('own/'.length)));
  if (!own) return undefined;
  const facts: Readonly<Partial<Record<string, Facts[keyof Facts]>>> = own.facts;
  const figures = Object.entries(page.plate).flatMap(([field, key]) => {
    const value = facts[key]?.value;
    return value === undefined ? [] : [[field, value] as const];
  });
  return figures.length > 0 ? { name: own.name, figures: Object.fromEntries(figures) } : undefined;
}
