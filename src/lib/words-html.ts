/** A text of src/words/<language>/pages.ts with what it says of the shop. */
import { shop } from './shop.ts';
import { tel } from './shop-in.ts';
import { fill } from '../words/index.ts';

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');

export const saidAsHtml = (html: string): string =>
  fill(html, { shop: escaped(shop.name), phone: escaped(shop.phone), call: escaped(tel) });
