/** The figures a machine's list has for one form: of the shop's own machines, and of those a reader added on this device. */
import { bench, isParts, load, ofDevice, type Kind } from '../../../browser/device/index.ts';
import { plateFigures } from '../../../core/contract/plate.ts';
import type { Facts } from '../../../core/machine/index.ts';
import type { Field } from '../../../core/contract/field.ts';
import { isRows } from '../../../core/contract/entry.ts';
import { entryAt, type Figures } from './figures.ts';
import type { IslandProps, Plate } from './props.ts';
import { untouchedText } from './shown-text.ts';
import { laidOver } from './starts.ts';
import { usedFigures } from './used.ts';

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
  const figures = plateFigures(page.plate, own.facts);
  return Object.keys(figures).length > 0 ? { name: own.name, figures } : undefined;
}

/** What the plate says, in words, wherever the reader has put another figure of their own; by field key. */
export function plateSays(
  fields: readonly Field[],
  plate: Plate,
  figures: Figures,
  currency: string,
): Readonly<Record<string, string>> {
  const onPlate = { ...figures, entries: laidOver(fields, {}, plate.figures, 'plate') };
  return Object.fromEntries(
    usedFigures(fields, onPlate, currency).flatMap(({ key, text }) => {
      const field = fields.find((f) => f.key === key);
      const [mine, its] = [entryAt(figures.entries, key), onPlate.entries[key]];
      if (!field || field.kind === 'rows' || mine?.from !== 'own' || !its || isRows(its)) return [];
      const same = untouchedText(field, mine, figures.system) === untouchedText(field, its, figures.system);
      return same ? [] : [[key, text] as const];
    }),
  );
}
