/** The frame around the articles. */
import type { frame as en } from '../en/frame.ts';
import { how, level } from './marks.ts';

export const frame: typeof en = {
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
  says: {
    guides:
      'Para quien usa la sierra. Una página cada una, hecha para el teléfono y para el mostrador: léala, imprímala, llévela.',
    jobs: 'El trabajo en el taller, paso a paso, con los cálculos en los pasos que los necesitan.',
    tables: 'Para buscar un dato: ajustes, plazos, límites de giro. Cada tabla dice de dónde vienen sus cifras.',
    explainers: 'Por qué los consejos de las otras páginas son los que son.',
    calculators:
      'Las cuentas que pide un trabajo de taller, con margen, pasos, fuentes y precauciones. Se hacen en este dispositivo; no se envía nada.',
    faults:
      'Empiece por lo que dice el cliente. Cada página enumera los sospechosos y pone primero las comprobaciones baratas que más dicen.',
  },
  atoz: 'Todas las páginas, de la A a la Z',
  about: 'Acerca de este almanaque',
  menu: 'Secciones',
  language: 'English',
  onThisPage: 'En esta página',
  for: 'Para',
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
  level,
  how,
};
