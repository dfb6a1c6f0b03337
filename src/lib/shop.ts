/** The shop whose site this is, read once from content/shop/shop.yaml. */
import { parse } from 'yaml';
import text from '../../content/shop/shop.yaml?raw';
import { shop as schema, type Shop } from '../schemas/shop.ts';

export const shop: Shop = schema.parse(parse(text));
