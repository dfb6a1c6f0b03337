/** The shop whose site this is, read once from its shop.yaml. */
import { parse } from 'yaml';
import text from 'almanac:shop?raw';
import { shop as schema, type Shop } from '../schemas/shop.ts';

export const shop: Shop = schema.parse(parse(text));
