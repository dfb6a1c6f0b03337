/** What to check first, for a complaint of one's own. */
import { compute, example, fields, title, words } from '../../core/topics/fault-order/index.ts';
import { Workbench, type IslandProps, type ShopFacts } from '../kit/index.ts';
import { Drawing } from './Drawing.tsx';

const topic = { title, fields, example, compute, words };
const fromShop = (shop: ShopFacts) => ({ labourRate: shop.labourRate });

export default function FaultOrder(props: IslandProps) {
  return <Workbench {...props} topic={topic} drawing={Drawing} fromShop={fromShop} />;
}
