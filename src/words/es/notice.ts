/** What is said about the copy kept on the device. */
import type { notice as en } from '../en/notice.ts';

export const notice: typeof en = {
  saving: (done, total) => `Guardando este sitio en su dispositivo: ${done} de ${total} archivos.`,
  saved: 'Guardado en este dispositivo. Ya funciona sin señal.',
  cutShort: 'No se pudo guardar todo el sitio. La próxima visita sigue desde aquí.',
  newer: 'Hay una edición más nueva lista.',
  show: 'Verla ahora',
  elsewhere: 'Esta página es de una edición anterior.',
  reload: 'Recargar',
  close: 'Cerrar',
};
