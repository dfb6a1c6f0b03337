/** How people ask in English. */
import { list, type Speech } from '../say/speech.ts';

/** Verbs and colors that change inside. */
const irregular = Object.fromEntries(
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

function stem(word: string): string {
  let w = word.replace(/ies$/, 'y').replace(/(?:sses|shes|ches|xes|zes)$/, (end) => end.slice(0, -2));
  if (/[^suo]s$/.test(w) || /[aeiou]es$/.test(w)) w = w.slice(0, -1);
  const bare = w.replace(/(?:ing|(?<=.{5})ion|(?<!e)ed|er|ly|y|(?<!e)e)$/, '');
  if (bare.length < 3 || !/[aeiouy]/.test(bare)) return w;
  // "slipp" of "slipped", but not "pull".
  return bare.replace(/([bdgmnprt])\1$/, '$1');
}

export const speech: Speech = {
  stopWords: list(
    `a an the my our your his her their this that these those it its i we you he she they me us them im ive youre is am are was
    were be been being do does did has have had will would shall should can could may might must of to for in on at by with
    from into onto as and or but if then than so what which who whose how why where when there here some any very really just
    please use using once ok okay completely only still again now today used try tried trying says said get gets got getting keep keeps kept need needs want go goes going make makes much many lot also too until while
    because after does s t let put mean means about help tell show thing everywhere yes hi hello s`,
  ),
  softWords: list('saw saws machine machines thing'),
  negatives: list(
    'no not none never without wont dont doesnt didnt isnt arent cant cannot wouldnt couldnt hasnt havent hadnt wasnt werent aint nothing',
  ),
  theSaw: list('saw saws machine machines'),
  irregular,
  stem,
  kin: [
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
  sayings: [
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
  machine: /\b(?:(?:chop|demo|demolition|cut ?off|stone|concrete|masonry) saws?|dis[ck] cutters?)\b/g,
  meaning: /^\s*(?:what (?:is|are|does)|what's)\b/i,
  titles: { of: / of /, and: /[,;:?–—]| or | and / },
  units: [
    [/(\d)\s*(?:inch(?:es)?\b|-inch\b|-in\b)/g, '$1 in '],
    [/(\d)\s*millimet(?:er|re)s?\b/g, '$1 mm '],
    [/(\d)\s*lit(?:er|re)s?\b/g, '$1 l '],
    [/(\d)\s*gallons?\b/g, '$1 gal '],
    [/(\d)\s*met(?:er|re)s? per second\b/g, '$1 m/s '],
    [/\b(\d+) to 1\b/g, '$1:1'],
  ],
};
