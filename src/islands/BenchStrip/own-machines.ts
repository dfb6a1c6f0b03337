/** Saws a mechanic added on this device. */
import { isParts, load, ofDevice, readRecord, textsFrom, type Kind } from '../../browser/device/index.ts';
import type { Facts } from '../../core/machine/index.ts';

export interface OwnMachine {
  readonly name: string;
  readonly facts: Facts;
}

export const ownMachineKind: Kind<OwnMachine> = {
  name: 'machine',
  version: 1,
  precious: true,
  read: (data) => {
    if (!isParts(data) || typeof data['name'] !== 'string' || !isParts(data['facts'])) return undefined;
    // A figure that no longer reads is refused where it is used, by the reader that reads typed text.
    return { name: data['name'], facts: data['facts'] };
  },
};

/** Begins the id of a saw kept on this device, so that it cannot be taken for one of the site. */
const prefix = 'own/';

export function ownMachines(): readonly (OwnMachine & { readonly id: string })[] {
  const start = ofDevice(ownMachineKind).key;
  return textsFrom(start).flatMap(([key, text]) => {
    const { data } = readRecord(ownMachineKind, text);
    return data ? [{ ...data, id: prefix + decodeURIComponent(key.slice(start.length)) }] : [];
  });
}

/** A saw of the device by its id; nothing when it is one of the site, or gone. */
export function ownMachine(id: string): OwnMachine | undefined {
  return id.startsWith(prefix) ? load(ofDevice(ownMachineKind, id.slice(prefix.length))) : undefined;
}
