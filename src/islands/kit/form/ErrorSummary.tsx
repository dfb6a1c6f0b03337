/** All problems in one place, after the button was pressed; each line leads to its box. */
import { useLayoutEffect, useRef } from 'preact/hooks';
import { say } from '../../../words/kit.ts';
import { goToBox } from '../state/go-to-box.ts';
import { boxId } from '../state/form.ts';

interface Props {
  readonly id: string;
  readonly lines: readonly { readonly path: string; readonly text: string }[];
  /** Grows with every press of the button: each press moves the focus here again. */
  readonly presses: number;
}

export function ErrorSummary({ id, lines, presses }: Props) {
  const head = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    if (presses > 0) head.current?.focus();
  }, [presses]);
  if (lines.length === 0) return null;
  return (
    <div
      class="calc-summary"
      id={`${id}-problems`}
      ref={head}
      tabIndex={-1}
      role="group"
      aria-labelledby={`${id}-problems-head`}
    >
      <p class="calc-summary-head" id={`${id}-problems-head`}>
        {say.summaryHead(lines.length)}
      </p>
      <ul>
        {lines.map((line) => (
          <li key={line.path}>
            {line.path === '' ? (
              line.text
            ) : (
              <a
                href={`#${boxId(id, line.path)}`}
                onClick={(e) => {
                  e.preventDefault();
                  goToBox(boxId(id, line.path));
                }}
              >
                {line.text}
              </a>
            )}
          </li>
        ))}
      </ul>
    </div>
  );
}
