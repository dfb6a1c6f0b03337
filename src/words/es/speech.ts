/** How people ask in Spanish. */
import { list, type Speech } from '../say/speech.ts';

/** "arrancarla", "revisarlo", "cortándola": what is done, and to whom. */
const enclitic = /(?<=(?:ar|er|ir|ando|iendo))(?:se)?(?:la|las|lo|los|le|les|me|se)$/;

function stem(word: string): string {
  const bare = word
    .replace(enclitic, '')
    .replace(/(?:aciones|acion|[ai]mientos?|ando|iendo|adas?|ados?|idas?|idos?|adora?s?|eza|ar|er|ir)$/, '')
    .replace(/(?:es|as|os|a|o|e|s)$/, '');
  // "arranqu" of "arranque" is "arranc" of "arrancar".
  return bare.length < 3 ? word.replace(/s$/, '') : bare.replace(/qu$/, 'c').replace(/gu$/, 'g');
}

export const speech: Speech = {
  stopWords: list(
    `el la los las lo un una unos unas mi mis su sus tu de del al a en para por con y e o u que cual cuales como cuando donde
    quien es son esta estan este esto estos estas se me le les nos si hay ha he tiene tengo tener ser muy mas puedo puede debo
    debe hago hacer pongo uso usar cuanto cuanta cuantos cuantas ya pero mucho mucha muchos muchas demasiado bastante sola solo otra otro quiere quiero sirve hola favor`,
  ),
  softWords: list('sierra sierras maquina maquinas cortadora cortadoras'),
  negatives: list('no sin nunca nada ni'),
  theSaw: list('sierra sierras maquina maquinas cortadora cortadoras'),
  irregular: {},
  stem,
  kin: [
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
  sayings: [
    [/\bno (?:jala|da marcha|quiere (?:prender|arrancar|encender)|agarra)\b/g, 'no arranca'],
    [/\b(?:boton|switch|interruptor|llave|perilla) de (?:paro|parada|apagado)\b/g, 'interruptor de parada'],
    [/\b(?:toma|llave|pluma|paja) de agua\b/g, 'llave de agua'],
    [/\b(?:para (?:que|cual) lado|en que sentido|hacia donde)\b/g, 'sentido de giro'],
    [/\b(?:marcha minima|minimo|en neutral)\b/g, 'ralenti'],
    [/\ba que hora\b|\bque dias\b/g, 'horario'],
    [/\bcuanto (?:cobran|cuesta|vale|sale|es)\b/g, 'precio'],
    [/\b(?:disco de )?(?:radial|amoladora|esmeril)\b/g, 'disco'],
    [/\b(?:me )?(?:pego|dio) (?:un|una) (?:patada|patadon|golpe|latigazo)\b/g, 'patada'],
    [/\b(?:\d+|unos|dos|tres|pocos) (?=(?:minutos?|segundos?)\b)/g, ''],
    [/\bcortar cemento\b/g, 'cortar concreto'],
    [/\bno pasa nada\b/g, 'no arranca'],
    [/\bse niega a\b/g, 'no'],
    [/\bcasi (?:nada de )?(?=agua|fuerza)|\bcasi no\b/g, 'no '],
    [/\b(?:entra|va|viene|jala) (?:de vuelta|para atras|de regreso)\b/g, 'regresa'],
    [/\blleva (?:meses|anos|un ano|mucho tiempo|semanas)\b/g, 'vieja'],
    [/\bda vueltas\b/g, 'gira'],
    [/\b(?:se )?(?:baja|cae|viene abajo) de (?:vueltas|revoluciones)\b/g, 'pierde fuerza'],
    [/\bno avanza\b|\bno come\b/g, 'no corta'],
    [/\b(?:cocina|bano|recamara|dormitorio|sala|pasillo)s?\b/g, 'bajo techo'],
    [/\b(?:cuarto|lugar|espacio|local) cerrado\b/g, 'bajo techo'],
    [/\b(?:garage|garaje|cochera) cerrad[oa]\b/g, 'garaje'],
  ],
  machine: /\b(?:(?:cortadora|sierra|maquina) de (?:disco|concreto|hormigon|mano)|motocortadora|tronzadora)\b/g,
  meaning: /^\s*(?:¿?qu[eé] (?:es|son|significa)|¿qu[eé])\b/i,
  titles: { of: / de /, and: /[,;:?–—]| o | y / },
  units: [
    [/(\d)\s*pulgadas?\b/g, '$1 in '],
    [/(\d)\s*milimetros?\b/g, '$1 mm '],
    [/(\d)\s*litros?\b/g, '$1 l '],
    [/(\d)\s*galon(?:es)?\b/g, '$1 gal '],
    [/\b(\d+) a 1\b/g, '$1:1'],
  ],
};
