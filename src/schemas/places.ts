/**
 * Where content stands. Knowledge is true in any shop and speaks of kinds of machine; the shop's folder holds who it
 * is, its machines and what it says in its own way. A file in a later place stands in for one of the same name in an
 * earlier one.
 */
export const places = ['content/knowledge', 'content/shop'] as const;
export const shopFolder = 'content/shop';
export const shopFile = `${shopFolder}/shop.yaml`;
