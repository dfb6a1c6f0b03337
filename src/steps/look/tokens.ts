/** The colors of src/styles/tokens.css, read where they stand, and a shop's own put in their place. */
import { readFileSync } from 'node:fs';
import { lookSources } from '../support/browser-sources.ts';
import { tonesOf } from './color.ts';

export interface Pair {
  readonly light: string;
  readonly dark: string;
}

export function tokens(): string {
  return readFileSync(lookSources.tokens, 'utf8');
}

/** @throws Error when the sheet no longer has the color as light-dark(#..., #...) */
export function token(sheet: string, name: string): Pair {
  const [, light, dark] = new RegExp(`--${name}:\\s*light-dark\\((#\\w{6}),\\s*(#\\w{6})\\)`).exec(sheet) ?? [];
  if (light === undefined || dark === undefined)
    throw new Error(
      `src/styles/tokens.css no longer says --${name}: light-dark(#..., #...), which a shop's color needs.`,
    );
  return { light, dark };
}

/** The sheet with the shop's color for all that can be pressed. */
export function withColor(sheet: string, color: string): string {
  const { light, dark } = tonesOf(color, token(sheet, 'paper'));
  const put = (text: string, name: string, pair: Pair): string => {
    const { light: l, dark: d } = token(text, name);
    return text.replace(`--${name}: light-dark(${l}, ${d})`, `--${name}: light-dark(${pair.light}, ${pair.dark})`);
  };
  return [
    ['action', light.action, dark.action] as const,
    ['on-action', light.on, dark.on] as const,
    ['action-wash', light.wash, dark.wash] as const,
  ].reduce((text, [name, l, d]) => put(text, name, { light: l, dark: d }), sheet);
}
