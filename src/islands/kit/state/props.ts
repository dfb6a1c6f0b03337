/** What a page hands to an island: plain data only, because it travels inside the HTML. */
import type { OfferedLanguage } from '../../languages/LanguageBox.tsx';
import type { Carry } from '../../../core/contract/carry.ts';
import type { Decides } from '../../../core/contract/judged.ts';
import type { Part } from '../../../core/contract/part.ts';
import type { Fill } from '../../../core/contract/plate.ts';
import type { RawInputs } from '../../../core/contract/field.ts';
import type { UnitKey, UnitSystem } from '../../../core/quantity/index.ts';
import type { CautionLevel } from '../../../core/contract/result.ts';

export interface ShownSource {
  readonly title: string;
  readonly where?: string;
  readonly how: 'read' | 'quoted' | 'memory' | 'common-practice' | 'arithmetic';
}

export interface ShownHazard {
  readonly level: CautionLevel;
  readonly title: string;
  /** The first act in a few words, for a line. */
  readonly first: string;
  readonly say: string;
  readonly do: readonly string[];
}

export interface ShopFacts {
  readonly name: string;
  /** Lines of the address. */
  readonly address: readonly string[];
  readonly phone: string;
  readonly currency: string;
  readonly units: UnitSystem;
  readonly labourRate: number;
  /** In percent. */
  readonly tax: { readonly parts: number; readonly labour: number };
  /** Languages a paper for the customer can be in, where the form makes one. */
  readonly languages?: readonly OfferedLanguage[];
}

export interface ShownCarry extends Carry {
  /** Of the calculator it leads to. */
  readonly title: string;
  readonly units: Readonly<Record<string, UnitKey>>;
}

/** What a machine's list fills in one form. */
export interface Plate {
  readonly name: string;
  readonly figures: RawInputs;
}

export interface IslandProps {
  /** Topic, as in the registry and in the address: "blade-speed". */
  readonly name: string;
  /** Begins every id in this form; the topic, unless a page shows the same calculator twice. */
  readonly id: string;
  /** MathML of each formula, by formula id. */
  readonly markup: Readonly<Record<string, string>>;
  readonly sources: Readonly<Record<string, ShownSource>>;
  readonly hazards: Readonly<Record<string, ShownHazard>>;
  readonly shop: ShopFacts;
  /** Live address of the calculator's page, for paper. */
  readonly address?: string;
  /** Fields that decide each verdict; all of them where the topic does not say. */
  readonly decides?: Decides | undefined;
  /** Values that stand while other boxes are empty. */
  readonly parts?: readonly Part[] | undefined;
  /** Ways on to other calculators, with the name of each and the units its boxes are read in. */
  readonly carries?: readonly ShownCarry[];
  /** Which fact of a machine fills which box. */
  readonly plate?: readonly Fill[] | undefined;
  /** The machines of the shop's list, with the figures this form asks for. */
  readonly plates?: Readonly<Record<string, Plate>> | undefined;
  /** Figures an article starts from instead of the worked example; as at the terminal. */
  readonly preset?: RawInputs;
  /** The short form: no seldom-needed boxes, no drawing, no working. */
  readonly compact?: boolean;
  /** False where the shop publishes no page with the form in full. */
  readonly full?: boolean;
}
