/** While the machine is open: change the part that is still good, or leave it. */
import { compute, example, fields, title, words } from '../../core/topics/part-change/index.ts';
import { Workbench, type IslandProps, type ShopFacts } from '../kit/index.ts';
import { Drawing } from './Drawing.tsx';

const topic = { title, fields, example, compute, words };
const fromShop = (shop: ShopFacts) => ({ labourRate: shop.labourRate });

export default function PartChange(props: IslandProps) {
  return <Workbench {...props} topic={topic} drawing={Drawing} fromShop={fromShop} />;
}
