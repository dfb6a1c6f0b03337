/** The start page. */
import type { start as en } from '../en/start.ts';

export const start: typeof en = {
  question: '¿Qué necesita la cortadora?',
  searchLabel: 'Buscar en el almanaque',
  placeholder: 'agua, polvo, disco',
  use: 'Yo uso la máquina',
  useSays: 'Revisiones, agua, polvo, fallas',
  repair: 'Yo reparo',
  repairSays: 'Taller, tablas y cálculos, en inglés',
  before: 'Antes de arrancar',
  noStart: 'No arranca',
  point: 'Señale en la máquina',
  pointSays: 'Señale un número. Lleva a la parte en la lista de abajo, y de ahí a cada página que la trata.',
  otherSaws: 'Otras máquinas',
  useHead: 'Usted usa la cortadora (sierra)',
  repairHead: 'Usted la repara',
  wrong: 'La máquina no anda bien',
  wrongSays: 'Mire esto, no toque esto, tráigala cuando',
  checkSays: 'Un punto a la vez, en este teléfono, con constancia',
  all: 'Todas las páginas, de la A a la Z',
  twinHead: 'Cabezal de una cortadora de doble disco',
  twinSays: 'Medio corte visto de frente; lo mismo otra vez debajo del eje.',
  twinParts: [
    'Dos discos, se cambian juntos',
    'Eje de los discos y sus dos rodamientos',
    'Los separadores fijan la distancia entre las mitades',
    'Polea partida, dos mitades entre los discos',
    'Correa en V',
  ],
};
