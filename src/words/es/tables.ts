/** Words of the tables that guides show. */
import type { tables as en } from '../en/tables.ts';

export const tables: typeof en = {
  mixByCan: {
    label: 'Aceite para la gasolina',
    gasoline: 'gasolina',
    gallons: { one: '{amount} galón (EE. UU.)', other: '{amount} galones (EE. UU.)' },
  },
};
