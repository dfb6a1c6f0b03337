/** Kinds of machine the knowledge speaks of. Their names by language stand in src/words. */
export const machineKinds = ['cut-off-saw', 'twin-blade-saw', 'floor-saw', 'ring-saw', 'other'] as const;
export type MachineKind = (typeof machineKinds)[number];
