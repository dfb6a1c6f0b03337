/** What is said about the copy kept on the device. */
import type { notice as en } from '../en/notice.ts';

export const notice: typeof en = {
  saving: (done, total) => `Guardando este sitio en su dispositivo: ${done} de ${total} archivos.`,
  kept: (pages) => `${pages} páginas guardadas en este dispositivo. Funcionan sin señal.`,
  cutShort: 'No se pudo guardar todo el sitio. La próxima visita sigue desde aquí.',
  altered: 'El servidor de este sitio cambia las páginas en el camino; por eso no se guardan en este dispositivo.',
  newer: 'Hay una edición más nueva lista.',
  show: 'Verla ahora',
  elsewhere: 'Esta página es de una edición anterior.',
  reload: 'Recargar',
};
