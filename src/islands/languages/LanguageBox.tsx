/** Which language a paper is to be in: the ones the site speaks, each by its own name. */
import type { Lang } from '../../words/lang.ts';

export interface OfferedLanguage {
  readonly lang: Lang;
  readonly name: string;
}

interface Props {
  readonly offered: readonly OfferedLanguage[];
  readonly lang: Lang;
  readonly choose: (lang: Lang) => void;
  readonly id?: string;
  readonly label?: string;
  readonly disabled?: boolean;
}

export function LanguageBox({ offered, lang, choose, id, label, disabled }: Props) {
  return (
    <select
      id={id}
      aria-label={label}
      disabled={disabled}
      value={lang}
      onChange={(e) => choose(offered.find((one) => one.lang === e.currentTarget.value)?.lang ?? lang)}
    >
      {offered.map((one) => (
        <option key={one.lang} value={one.lang}>
          {one.name}
        </option>
      ))}
    </select>
  );
}
