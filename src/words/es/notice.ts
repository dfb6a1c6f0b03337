/** What is said about the copy kept on the device. */
import type { notice as en } from '../en/notice.ts';

export const notice: typeof en = {
  saving: 'Guardando este sitio en su dispositivo: {done} de {total} archivos.',
  kept: '{pages} páginas guardadas en este dispositivo. Funcionan sin señal.',
  cutShort: 'No se pudo guardar todo el sitio. La próxima visita sigue desde aquí.',
  altered: 'El servidor de este sitio cambia las páginas en el camino; por eso no se guardan en este dispositivo.',
  noRoom: 'En este dispositivo no cabe todo el sitio; por eso no funciona sin señal. Libere espacio y vuelva.',
  noRoomForNewer:
    'Hay una edición más nueva, pero no cabe en este dispositivo. Queda la anterior. Libere espacio y vuelva.',
  newer: 'Hay una edición más nueva lista.',
  show: 'Verla ahora',
  elsewhere: 'Esta página es de una edición anterior.',
  reload: 'Recargar',
};
