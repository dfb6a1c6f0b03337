import type { Formula, SymbolSpec } from '../../contract/formula.ts';

const n = (name: string): SymbolSpec => ({ name, unit: '1' });
const share = (name: string): SymbolSpec => ({ name, unit: '%' });

export const effort: Formula = {
  id: 'fault-order/effort',
  what: 'Minutes of the next check',
  expression: 'c = m + s + x / (w / 60)',
  symbols: {
    c: n('minutes in all'),
    m: n('its own minutes'),
    s: n('strip-down still to be done'),
    x: n('money it uses up'),
    w: n('labor rate for an hour'),
  },
  source: 'arithmetic',
};
export const foundPerMinute: Formula = {
  id: 'fault-order/ratio',
  what: 'Chance of finding the fault for each of its minutes',
  expression: 'k = f / c',
  symbols: { k: n('for each minute'), f: share('chance that it finds the fault'), c: n('minutes in all') },
  source: 'kadane-simon',
};
export const ifShows: Formula = {
  id: 'fault-order/if-shows',
  what: 'Chance of its suspect, if it shows a fault',
  expression: 'p_y = q * p / y',
  symbols: {
    p_y: share('chance afterwards'),
    q: share('chance that it shows a fault, if the suspect is at fault'),
    p: share('chance before'),
    y: share('chance that it shows a fault at all'),
  },
  source: 'bayes-rule',
};
export const ifClear: Formula = {
  id: 'fault-order/if-clear',
  what: 'Chance of its suspect, if it shows none',
  expression: 'p_n = (1 - q) * p / (1 - y)',
  symbols: {
    p_n: share('chance afterwards'),
    q: share('chance that it shows a fault, if the suspect is at fault'),
    p: share('chance before'),
    y: share('chance that it shows a fault at all'),
  },
  source: 'bayes-rule',
};
export const saved: Formula = {
  id: 'fault-order/saved',
  what: 'Saved against the order of the list',
  expression: 'g = E_l - E',
  symbols: {
    g: n('minutes saved'),
    E_l: n('expected minutes in the order listed'),
    E: n('expected minutes in this order'),
  },
  source: 'arithmetic',
};
