/** The forms of a word under one name: "slipping", "slipped" and "slips" are "slip", "won't" and "does not" are "no". */
export type Tongue = 'en' | 'es';

/** However it is said that something does not happen. */
const negatives = new Set(
  `no not none never without wont dont doesnt didnt isnt arent cant cannot wouldnt couldnt hasnt havent hadnt wasnt werent
  aint nothing sin nunca nada ni`.split(/\s+/),
);

/** English verbs that change inside. */
const irregular: Readonly<Record<string, string>> = Object.fromEntries(
  [
    'break broke broken',
    'stick stuck',
    'wear wore worn',
    'bend bent',
    'spin spun',
    'tear torn tore',
    'die dead died dying dies',
    'come came',
    'run ran',
    'throw threw thrown',
    'freeze froze frozen',
    'shake shook shaken',
    'blow blew blown',
    'lose lost',
    'leave left',
    'keep kept',
    'tight tighten',
    'loose loosen',
    'hold held',
    'burn burnt',
    'buy bought',
    'ear ears',
    'gas gases',
    'blue bluish blueish',
    'white whitish',
    'black blackish',
    'gray grayish greyish grey',
  ].flatMap((line) => {
    const [base = '', ...others] = line.split(' ');
    return [base, ...others].map((word) => [word, base] as const);
  }),
);

/** What every page here is about, under one name. */
const theSaw = new Set('saw saws machine machines sierra sierras maquina maquinas cortadora cortadoras'.split(' '));

/** The name of a word's forms; the word as `wordsOf` gives it. */
export function formsOf(word: string, lang: Tongue): string {
  if (negatives.has(word)) return 'no';
  if (theSaw.has(word)) return 'saw';
  if (/\d/.test(word) || word.length < 4) return lang === 'en' ? (irregular[word] ?? word) : word;
  return lang === 'es' ? spanish(word) : (irregular[word] ?? english(word));
}

function english(word: string): string {
  let w = word.replace(/ies$/, 'y').replace(/(?:sses|shes|ches|xes|zes)$/, (end) => end.slice(0, -2));
  if (/[^suo]s$/.test(w) || /[aeiou]es$/.test(w)) w = w.slice(0, -1);
  const bare = w.replace(/(?:ing|(?<=.{5})ion|(?<!e)ed|er|ly|y|(?<!e)e)$/, '');
  if (bare.length < 3 || !/[aeiouy]/.test(bare)) return w;
  // "slipp" of "slipped", but not "pull".
  return bare.replace(/([bdgmnprt])\1$/, '$1');
}

/** "arrancarla", "revisarlo", "cortándola": what is done, and to whom. */
const enclitic = /(?<=(?:ar|er|ir|ando|iendo))(?:se)?(?:la|las|lo|los|le|les|me|se)$/;

function spanish(word: string): string {
  const bare = word
    .replace(enclitic, '')
    .replace(/(?:aciones|acion|[ai]mientos?|ando|iendo|adas?|ados?|idas?|idos?|adora?s?|eza|ar|er|ir)$/, '')
    .replace(/(?:es|as|os|a|o|e|s)$/, '');
  // "arranqu" of "arranque" is "arranc" of "arrancar".
  return bare.length < 3 ? word.replace(/s$/, '') : bare.replace(/qu$/, 'c').replace(/gu$/, 'g');
}
