/** Marks that tell levels apart by shape, not only by colour. */
export type IconName = 'good' | 'note' | 'caution' | 'stop';

const outline: Readonly<Record<IconName, string>> = {
  good: 'M12 2a10 10 0 1 0 0 20a10 10 0 1 0 0-20z',
  note: 'M3 3h18v18H3z',
  caution: 'M12 2L23 21.5H1z',
  stop: 'M7.5 1.5h9l6 6v9l-6 6h-9l-6-6v-9z',
};
const inside: Readonly<Record<IconName, string>> = {
  good: 'M7 12.5l3.5 3.5L17.5 8.5',
  note: 'M12 10.5v7M12 6v1.6',
  caution: 'M12 9v6M12 17.3v1.4',
  stop: 'M7 12h10',
};

export function Icon({ name }: { readonly name: IconName }) {
  return (
    <svg
      class={`calc-icon calc-icon-${name}`}
      viewBox="0 0 24 24"
      width="24"
      height="24"
      aria-hidden="true"
      focusable="false"
    >
      <path class="calc-icon-out" d={outline[name]} />
      <path class="calc-icon-in" d={inside[name]} />
    </svg>
  );
}
