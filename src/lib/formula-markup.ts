/**
 * Formulas as MathML, made while the site is built. The text that tests evaluate is parsed by the same
 * mathjs, written as TeX and set by temml; none of it reaches the reader's browser.
 */
import type { MathNode, SymbolNode } from 'mathjs';
// Its number-only half reads formulas just the same, and loads in half the time.
import { parse } from 'mathjs/number';
import temml from 'temml';

const greek = new Set(
  'alpha beta gamma delta epsilon zeta eta theta kappa lambda mu nu xi pi rho sigma tau phi chi psi omega Gamma Delta Theta Lambda Pi Sigma Phi Psi Omega'.split(
    ' ',
  ),
);

/** "theta_s" -> \theta_{s}; words of more than one letter stand upright. */
function symbolTex(name: string): string {
  const [head = '', below] = name.split('_');
  const main = greek.has(head) ? ` \\${head}` : head.length === 1 ? ` ${head}` : ` \\mathrm{${head}}`;
  if (below === undefined) return main;
  return `${main}_{${greek.has(below) ? `\\${below}` : `\\mathrm{${below}}`}}`;
}

export function formulaTex(expression: string): string {
  const handler = (node: MathNode) => (node.type === 'SymbolNode' ? symbolTex((node as SymbolNode).name) : undefined);
  // Fractions within fractions keep their size: they are read at arm's length.
  return parse(expression).toTex({ parenthesis: 'auto', handler }).replaceAll('\\frac', '\\dfrac');
}

export function formulaMarkup(expression: string): string {
  const markup = temml.renderToString(formulaTex(expression), { displayMode: false, throwOnError: true });
  // The page's security policy allows no style attributes.
  return markup.replace(/ (?:style|class)="[^"]*"/g, '').replace('<math', '<math displaystyle="true"');
}
