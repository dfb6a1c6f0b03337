/** Words of the tables that guides show (src/components/tables). */
import type { Counted } from '../say/fill.ts';

export const tables = {
  mixByCan: {
    label: 'Oil for gasoline',
    gasoline: 'gasoline',
    gallons: { one: '{amount} US gal', other: '{amount} US gal' } as Counted,
  },
};
