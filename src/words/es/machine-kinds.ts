/** What the kinds of machine are called. */
import type { machineKinds as en } from '../en/machine-kinds.ts';

export const machineKinds: typeof en = {
  'cut-off-saw': 'Cortadoras de mano',
  'twin-blade-saw': 'Cortadoras de doble disco',
  'floor-saw': 'Cortadoras de piso',
  'ring-saw': 'Cortadoras de anillo',
  other: 'Otras máquinas',
};
