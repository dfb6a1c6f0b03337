/**
 * What takes several words to say and is one thing: "fire up" is "start", "kill switch" is "stop switch". Read in
 * questions only, before they fall into words; the pages have their own words for it.
 */
import type { Tongue } from './forms.ts';

const sayings: Readonly<Record<Tongue, readonly (readonly [RegExp, string])[]>> = {
  en: [
    [/\b(?:fir(?:e|es|ed|ing)|crank(?:s|ed|ing)?) up\b/g, 'start'],
    [/\bwont (?:fire|crank|kick over|turn over)\b/g, 'wont start'],
    [/\bcuts? out\b|\bcutting out\b|\bconks? out\b|\bgives? out\b|\bpacks? up\b|\bshuts? down by itself\b/g, 'dies'],
    [/\b(?:kill|off|on off|stop) (?:switch|button)\b/g, 'stop switch'],
    [/\b(?:pull|rip|starter|recoil|starting) ?(?:cord|rope|string|start)\b/g, 'cord'],
    [/\btick(?:s|ing)? over\b/g, 'idle'],
    [/\bwhich way (?:round|around|up)\b|\bwrong way (?:round|around)\b/g, 'direction of rotation'],
    [/\bby (?:mistake|accident)\b|\baccidentally\b/g, 'wrong'],
    [/\bcurb ?stones?\b|\bkerb ?stones?\b/g, 'curb'],
    [/\b(?:what|which) time\b|\bare you open\b/g, 'opening hours'],
    [/\bnothing happens\b/g, 'wont start'],
    [/\b(?:wont|doesnt|will not) stay (?:running|on|lit|started)\b/g, 'starts then dies'],
    [/\b(?:closed|enclosed|confined) (?:room|space|area)s?\b/g, 'indoors'],
    [/\b(?:just )?sits (?:there|still)\b|\bstays put\b/g, 'does not turn'],
    [/\b(?:kitchen|bathroom|bedroom|living room|hallway|indoor)s?\b/g, 'indoors'],
    [/\b(?:right|straight) away\b|\bimmediately\b/g, ''],
    [/\bgas (?:line|main|pipe)s?\b/g, 'buried gas line'],
    [/\brefus(?:es|ed|ing) to\b/g, 'wont'],
    [/\b(?:hardly|barely|scarcely)(?: any)?\b/g, 'no'],
    [/\b(?:runs?|running|ran|pours?|pouring|comes?|coming) out of (?=the|my|it)/g, 'leaks from '],
    [
      /\b(?:been )?(?:sitting|sat|standing|stood|left) (?:in (?:the|my|a) \w+ )?(?:since|all|over|for (?:months?|years?|a year|ages))\b/g,
      'old',
    ],
    [/\bhours? (?:left|remaining)\b/g, 'life'],
    [/\bhow much (?:do you charge|does it cost|is it to|to fix|to look)\b/g, 'price'],
    [/\b(?:hired|rented|hire|rental) (?:saw|machine|one)\b/g, 'hire saw'],
    [/\b(?:\d+|two|few|couple of|several) (?=(?:minutes?|mins?|seconds?|secs?)\b)/g, ''],
  ],
  es: [
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
};

/** Names of the machine every page is about; a kind of its own ("floor saw", "ring saw") is not among them. */
const machine: Readonly<Record<Tongue, RegExp>> = {
  en: /\b(?:(?:chop|demo|demolition|cut ?off|stone|concrete|masonry) saws?|dis[ck] cutters?)\b/g,
  es: /\b(?:(?:cortadora|sierra|maquina) de (?:disco|concreto|hormigon|mano)|motocortadora|tronzadora)\b/g,
};

/** A question, folded (./words-of.ts), in the words of these pages. */
export function plainly(text: string, lang: Tongue): string {
  const said = sayings[lang].reduce((now, [saying, meant]) => now.replace(saying, meant), text);
  const rest = said.replace(machine[lang], ' ');
  // Asked for by name alone, the machine is what is asked for.
  return /[^\W\d_]{4}/.test(rest) ? rest : said;
}
