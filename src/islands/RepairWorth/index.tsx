/** The most a repair is worth, against a new machine. */
import { compute, example, fields, title, words } from '../../core/topics/repair-worth/index.ts';
import { Workbench, type IslandProps, type ShopFacts } from '../kit/index.ts';
import { Drawing } from './Drawing.tsx';
import { QuoteDesk } from './quote/QuoteDesk.tsx';

const topic = { title, fields, example, compute, words };
/** The smallest amount of a currency, from the number of decimals it is written with. */
const smallestOf = (currency: string) =>
  10 ** -(new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits ?? 2);
const fromShop = (shop: ShopFacts) => ({
  labourRate: shop.labourRate,
  smallest: smallestOf(shop.currency),
  taxParts: shop.tax.parts,
  taxLabour: shop.tax.labour,
});

export default function RepairWorth(props: IslandProps) {
  return <Workbench {...props} topic={topic} drawing={Drawing} fromShop={fromShop} takeAway={QuoteDesk} />;
}
