import type { ListedMachine } from '../BenchStrip/index.tsx';
import type { OfferedLanguage } from '../languages/LanguageBox.tsx';

/** What the page hands over: who the shop is, for the customer's paper, and the machines by name. */
export interface JobSheetProps {
  readonly shop: { readonly name: string; readonly address: readonly string[]; readonly phone: string };
  readonly machines: readonly ListedMachine[];
  /** Languages the customer's paper can be in. */
  readonly languages: readonly OfferedLanguage[];
  /** The job with the list for handing a saw back, where the shop publishes it. */
  readonly handBack: string | undefined;
}
