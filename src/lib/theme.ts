/** The colors of the page's ground, for what the browser draws around the page; styles/tokens.css is the one place. */
import tokens from '../styles/tokens.css?raw';

function paper(): { readonly light: string; readonly dark: string } {
  const [, light, dark] = /--paper:\s*light-dark\((#\w+),\s*(#\w+)\)/.exec(tokens) ?? [];
  if (light === undefined || dark === undefined)
    throw new Error('src/styles/tokens.css no longer says --paper: light-dark(#..., #...), which the page head needs.');
  return { light, dark };
}

export const ground = paper();
