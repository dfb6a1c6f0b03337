/** Pages that are words and nothing else. */
import type { pages as en } from '../en/pages.ts';

export const pages: typeof en = {
  search: { summary: 'Busque en todas las guías.' },
  atoz: { summary: 'Todas las páginas del almanaque por su primera letra.' },
  glossary: { summary: 'Qué significan las palabras de estas páginas y cómo se dicen de otra manera.' },
  hazards: {
    summary:
      'Todas las precauciones de este sitio en un solo lugar. El peligro mata, la advertencia puede matar, la precaución lastima, el aviso daña la máquina.',
    levels: {
      id: 'como-se-elige-el-nivel',
      head: 'Cómo se elige el nivel',
      says: 'Con dos preguntas sobre lo peor que bien puede pasar si no se cumple la orden.',
      what: 'Qué hace',
      expected: 'Es de esperar',
      possible: 'Es posible',
      kills: 'Mata',
      lasts: 'Deja un daño que dura: un ojo, un dedo, el oído, los pulmones',
      heals: 'Lastima y sana',
      damages: 'Daña la máquina, el trabajo o el agua',
    },
  },
  shop: {
    summary: 'Dónde está el taller, cuándo abre, cómo llamar, qué traer con la máquina y cuánto cuesta la revisión.',
    aliases: [
      'horario',
      'teléfono',
      'dirección',
      'dónde están',
      'precio',
      'cuánto cuesta',
      'presupuesto',
      'contacto',
      'abierto',
      'sábado',
      'cuánto cobran',
      'cerrado el domingo',
      'qué llevar',
      'qué traer',
      'cómo llegar',
    ],
  },
  notFound: {
    title: 'Página no encontrada',
    says: 'No hay página en esta dirección, o aún no está guardada en este dispositivo.',
    html: 'Vea la <a href="/es/a-z/">lista de todas las páginas</a>, <a href="/es/search/">busque</a>, o vuelva al <a href="/es/">inicio</a>. ¿La máquina no anda bien? <a href="/es/trouble/">Mire aquí</a>, o <a href="{call}">llame al {phone}</a>.',
  },
  about: {
    summary:
      'En qué se apoyan estas páginas, cuánto confiar en una cifra y cómo llevar el almanaque a donde no hay señal.',
    aliases: ['sin internet', 'sin señal', 'memoria USB', 'privacidad', 'licencia'],
    first: '',
    parts: [
      {
        id: 'made-up',
        invented: true,
        head: 'Inventado, y real',
        html: '{shop}, sus máquinas y sus clientes son inventados. Los consejos, las cuentas y las fuentes son reales: cada cifra publicada dice dónde se publicó, y cada cifra que aquí nadie pudo comprobar lleva la marca <em class="unchecked">sin comprobar</em>.',
      },
      {
        id: 'trust',
        head: 'Cuánto confiar en una cifra',
        html: 'Los cálculos muestran sus pasos: la fórmula, los números que entraron, lo que salió y dónde está impresa la fórmula. Donde un ajuste o una fricción varía, usted recibe un margen y no una sola cifra. El manual de la máquina, la marca del disco y la ley del lugar donde trabaja van siempre primero.',
      },
      {
        id: 'carry',
        head: 'Donde no hay señal',
        html: 'Abra el sitio una vez con conexión y se guarda solo en el dispositivo; los cálculos y la búsqueda siguen funcionando sin ella. O copie la carpeta completa a una memoria USB y abra desde ahí <code>index.html</code>: también funciona. La memoria no se renueva sola; mire la edición al pie de la página.',
      },
      {
        id: 'private',
        head: 'Qué se guarda',
        html: 'Nada de lo que escribe sale del dispositivo. No hay cuentas de usuario, ni contadores, ni consultas a servidores ajenos.',
      },
      {
        id: 'spanish',
        head: 'En español y en inglés',
        html: 'Lo que lee quien usa la máquina está en los dos idiomas. Las páginas del taller (trabajos, tablas, cálculos, fuentes) están solo en inglés, y los enlaces lo dicen.',
      },
      {
        id: 'licenses',
        head: 'Libre para usar y cambiar',
        html: 'Bench Almanac y las bibliotecas y tipos de letra que vienen con sus páginas son software libre. Sus <a href="/licenses.txt" hreflang="en">licencias y avisos (en inglés)</a> están en un solo archivo.',
      },
    ],
  },
};
