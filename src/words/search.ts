/** What the search box says, in both languages. */
export type SearchLang = 'en' | 'es';

const en = {
  label: 'Search the almanac',
  hint: 'a part, a fault, a size: belt, 6205, dust',
  readers: 'Show',
  everyone: 'Everything',
  customer: 'Care guides for saw users',
  mechanic: 'Bench pages',
  waking: 'Opening the index…',
  broken: 'Search could not be opened on this device. The list of all pages works without it.',
  found: (n: number, term: string) => `${n === 1 ? '1 page' : `${n} pages`} for “${term}”.`,
  nearest: (words: string) => `No page says “${words}” just so; these come nearest.`,
  none: (term: string) => `Nothing found for “${term}”.`,
  help: [
    'Try one word instead of several, or a shorter one.',
    'Part numbers work by their first digits: 6205.',
    'Try the everyday name: pull cord for recoil starter, blade for wheel.',
  ],
  all: 'See all pages, A to Z',
  more: 'Show more',
  noScripts: 'Search needs scripts. Every page is in the list of all pages, A to Z.',
};

const es: typeof en = {
  label: 'Buscar en el almanaque',
  hint: 'una pieza, una falla: agua, polvo, disco',
  readers: 'Mostrar',
  everyone: 'Todo',
  customer: 'Guías de cuidado',
  mechanic: 'Páginas de banco',
  waking: 'Abriendo el índice…',
  broken: 'No se pudo abrir la búsqueda en este dispositivo. La lista de todas las páginas funciona sin ella.',
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

export const searchWords: Readonly<Record<SearchLang, typeof en>> = { en, es };
