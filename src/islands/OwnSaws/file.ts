/** Saws of the device as a file, and back. */
import { isParts, readRecord, writeRecord } from '../../browser/device/index.ts';
import { ownMachineKind, type OwnMachine } from '../BenchStrip/own-machines.ts';

const format = 'saws';

export function sawsText(saws: readonly OwnMachine[]): string {
  return JSON.stringify({ almanac: format, version: ownMachineKind.version, saws }, null, 1);
}

/** The saws in a file; nothing when it is not one of ours. */
export function readSaws(text: string): readonly OwnMachine[] | undefined {
  try {
    const file = JSON.parse(text.replace(/^\uFEFF/, '')) as unknown;
    if (!isParts(file) || file['almanac'] !== format || !Array.isArray(file['saws'])) return undefined;
    const saws = (file['saws'] as unknown[]).map((saw) =>
      // The same look that a record of the device gets.
      readRecord(
        ownMachineKind,
        writeRecord({ ...ownMachineKind, version: Number(file['version']) }, saw as OwnMachine, 0),
      ),
    );
    return saws.every((s) => s.data) ? saws.flatMap((s) => (s.data ? [s.data] : [])) : undefined;
  } catch {
    return undefined;
  }
}
