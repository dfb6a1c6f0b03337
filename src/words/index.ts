/** Words of the frame around the articles, in every language a customer reads. */
export type Lang = 'en' | 'es';

const en = {
  skip: 'Skip to the page',
  home: 'Start',
  guides: 'Care guides',
  jobs: 'Bench jobs',
  faults: 'Complaints',
  tables: 'Tables',
  explainers: 'Why it works',
  calculators: 'Calculators',
  glossary: 'Words',
  sources: 'Sources',
  hazards: 'Cautions',
  machines: 'Machines',
  search: 'Search',
  atoz: 'All pages, A to Z',
  about: 'About this almanac',
  menu: 'Sections',
  language: 'Español',
  onThisPage: 'On this page',
  reader: { customer: 'For whoever runs the saw', mechanic: 'For the bench' },
  time: 'Time',
  tools: 'Tools',
  atHand: 'You need',
  parts: 'Parts',
  machinesFor: 'Machines',
  reviewed: 'Looked over',
  before: 'Before you start',
  related: 'Read next',
  sourcesHead: 'What this rests on',
  source: 'Source',
  unchecked: 'unchecked',
  print: 'Print this page',
  address: 'Page address',
  edition: 'Edition of',
  madeUp: 'This shop, its machines and its customers are made up to show what the almanac does.',
  madeWith: 'Made with Bench Almanac',
  manualFirst: 'The machine’s own manual and the law where you work come before anything on this page.',
  carried:
    'If you can read this line and the page looks bare, unpack the whole folder first and open index.html from it.',
  level: { danger: 'Danger', warning: 'Warning', caution: 'Caution', notice: 'Notice' },
  how: {
    read: 'read in the source',
    quoted: 'read where another work quotes it',
    memory: 'from memory, unchecked',
    'common-practice': 'common practice, no source',
    arithmetic: 'arithmetic',
  },
};

export type Dictionary = typeof en;

const es: Dictionary = {
  skip: 'Ir al contenido',
  home: 'Inicio',
  guides: 'Guías de cuidado',
  jobs: 'Trabajos de banco',
  faults: 'Fallas',
  tables: 'Tablas',
  explainers: 'Por qué funciona',
  calculators: 'Cálculos',
  glossary: 'Palabras',
  sources: 'Fuentes',
  hazards: 'Precauciones',
  machines: 'Máquinas',
  search: 'Buscar',
  atoz: 'Todas las páginas, de la A a la Z',
  about: 'Acerca de este almanaque',
  menu: 'Secciones',
  language: 'English',
  onThisPage: 'En esta página',
  reader: { customer: 'Para quien usa la sierra', mechanic: 'Para el banco de trabajo' },
  time: 'Tiempo',
  tools: 'Herramientas',
  atHand: 'Hace falta',
  parts: 'Repuestos',
  machinesFor: 'Máquinas',
  reviewed: 'Revisado',
  before: 'Antes de empezar',
  related: 'Siga leyendo',
  sourcesHead: 'En qué se apoya',
  source: 'Fuente',
  unchecked: 'sin comprobar',
  print: 'Imprimir esta página',
  address: 'Dirección de la página',
  edition: 'Edición del',
  madeUp: 'Este taller, sus máquinas y sus clientes son inventados para mostrar lo que hace el almanaque.',
  madeWith: 'Hecho con Bench Almanac',
  manualFirst: 'El manual de la máquina y la ley del lugar donde trabaja están por encima de esta página.',
  carried:
    'Si lee esta línea y la página se ve sin formato, descomprima primero la carpeta completa y abra index.html desde ella.',
  level: { danger: 'Peligro', warning: 'Advertencia', caution: 'Precaución', notice: 'Aviso' },
  how: {
    read: 'leído en la fuente',
    quoted: 'leído en otra obra que lo cita',
    memory: 'de memoria, sin comprobar',
    'common-practice': 'práctica común, sin fuente',
    arithmetic: 'aritmética',
  },
};

const dictionaries: Readonly<Record<Lang, Dictionary>> = { en, es };

export function wordsFor(lang: Lang): Dictionary {
  return dictionaries[lang];
}

export function formatDate(date: Date, lang: Lang): string {
  return new Intl.DateTimeFormat(lang, { dateStyle: 'long', timeZone: 'UTC' }).format(date);
}
