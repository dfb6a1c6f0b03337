/**
 * Where content stands. Knowledge is true in any shop and speaks of kinds of machine; the shop's folder holds who it
 * is, its machines and what it says in its own way. A file in a later place stands in for one of the same name in an
 * earlier one.
 *
 * The demo shop stands in content/shop. SHOP=<folder> chooses another, which may lie anywhere; it is then reached
 * through content/chosen-shop (see steps/support/choose-shop.ts).
 */
export const demoShop = 'content/shop';
export const chosenShop = 'content/chosen-shop';
export const shopFolder = process.env['SHOP'] ? chosenShop : demoShop;
/** The shop's folder as whoever runs a command named it. */
export const shopNamed = process.env['SHOP'] ?? demoShop;
export const shopFileName = 'shop.yaml';
export const shopFile = `${shopFolder}/${shopFileName}`;
export const places: readonly string[] = ['content/knowledge', shopFolder];

/**
 * A path below content/, or a sentence that names some, as whoever runs a command finds the file: a chosen shop stands
 * in the folder it was named by.
 */
export function pathToSay(file: string): string {
  return process.env['SHOP'] ? file.replaceAll(chosenShop, shopNamed.replace(/[\\/]+$/, '')) : file;
}
