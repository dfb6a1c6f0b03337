/** What the search box says. */
import type { search as en } from '../en/search.ts';

export const search: typeof en = {
  label: 'Buscar en el almanaque',
  hint: 'una pieza, una falla: agua, polvo, disco',
  readers: 'Mostrar',
  everyone: 'Todo',
  customer: 'Guías de cuidado',
  mechanic: 'Páginas de banco',
  waking: 'Abriendo el índice…',
  broken: 'No se pudo abrir la búsqueda en este dispositivo. La lista de todas las páginas funciona sin ella.',
  notBuilt:
    'La búsqueda llega con el sitio construido: npm start. La lista de todas las páginas funciona también aquí.',
  found: (n, term) => `${n === 1 ? '1 página' : `${n} páginas`} para «${term}».`,
  nearest: (words) => `Ninguna página dice «${words}» exactamente; estas son las más cercanas.`,
  none: (term) => `No se encontró nada para «${term}».`,
  help: [
    'Pruebe con una sola palabra, o con una más corta.',
    'Pruebe con el nombre de todos los días: cuerda, disco, agua.',
  ],
  all: 'Ver todas las páginas, de la A a la Z',
  more: 'Mostrar más',
  noScripts: 'La búsqueda necesita scripts. Todas las páginas están en la lista, de la A a la Z.',
};
