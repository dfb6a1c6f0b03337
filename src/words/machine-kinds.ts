/** What the kinds of machine are called, by language. */
import type { Lang } from './index.ts';

export const machineKindNames: Readonly<Record<Lang, Readonly<Record<string, string>>>> = {
  en: {
    'cut-off-saw': 'Cut-off saws',
    'twin-blade-saw': 'Twin-blade deep-cut saws',
    'floor-saw': 'Floor saws',
    'ring-saw': 'Ring saws',
    other: 'Other machines',
  },
  es: {
    'cut-off-saw': 'Cortadoras de mano',
    'twin-blade-saw': 'Cortadoras de doble disco',
    'floor-saw': 'Cortadoras de piso',
    'ring-saw': 'Cortadoras de anillo',
    other: 'Otras máquinas',
  },
};
