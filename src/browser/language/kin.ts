/**
 * Words that say the same thing in another town, trade or country. Each line begins with the word these pages use.
 * Only words that mean one thing here: "wheel" is a blade to one and a roller to another, so it is not among them.
 */
import type { Tongue } from './forms.ts';

const lines: Readonly<Record<Tongue, readonly string[]>> = {
  en: [
    'blade disc disk',
    'idle idling tickover',
    'gasoline gas petrol',
    'cord rope string',
    'curb kerb',
    'aluminum aluminium',
    'wrench spanner',
    'rent hire lease',
    'muffler silencer',
    'respirator mask',
    'break broken snap shred tear rip fray bust',
    'repair fix mend',
    'die stall quit conk',
    'drain sewer gutter gully',
    'cellar basement',
    'shake vibrate wobble judder',
    'leak drip weep seep ooze',
    'squeal screech squeak',
    'paver patio paving',
    'price cost charge',
    'replace change swap',
    'vehicle truck van pickup lorry',
    'hearing ear',
    'children child kids kid',
  ],
  es: [
    'disco hoja',
    'correa banda faja',
    'arrancar arranque arranca prender prende encender enciende enciendo',
    'gasolina nafta bencina',
    'cuerda piola cordon mecate soga jalon piolin cordel chicote',
    'rentada alquilada alquiler arrendada arriendo renta',
    'mascarilla cubrebocas tapabocas barbijo',
    'rodamiento balero ruleman rulemanes cojinete',
    'concreto hormigon',
    'tubo caño caneria tuberia cañeria',
    'alcantarilla drenaje desague coladera cloaca',
    'silenciador mofle escape',
    'lentes gafas anteojos goggles',
    'piso suelo',
    'grifo canilla',
    'chilla rechina chirria',
    'vibra tiembla traquetea cascabelea',
    'reparar arreglar componer',
    'lodo barro lechada',
    'hule goma caucho',
    'revisar revision checar chequear chequeo',
    'interruptor switch boton apagador',
    'rajado rajada agrietado fisurado cuarteado',
    'rota roto rompio reventado reventada quebrada',
    'tanque deposito',
    'sostener agarrar sujetar',
    'oidos orejas auditiva auditivo',
    'cuesta cobra cobran',
    'cambiar reemplazar sustituir',
    'vehiculo camioneta carro coche camion troca',
    'apaga muere',
    'gotea chorrea escurre',
    'hierro fierro',
    'acelerador gatillo',
    'dormido entumecido adormecido',
    'salta brinca',
    'regresa vuelve retorna recoge',
    'trabado trabada atorado atorada atascado atascada atora traba',
  ],
};

/** Each word -> the one these pages use, without accents. */
export function kinOf(lang: Tongue): ReadonlyMap<string, string> {
  return new Map(
    lines[lang].flatMap((line) => {
      const [own = '', ...others] = plainLetters(line).split(' ');
      return [own, ...others].map((word) => [word, own] as const);
    }),
  );
}

const plainLetters = (text: string): string => text.normalize('NFD').replace(/[\u0300-\u036f]/g, '');
