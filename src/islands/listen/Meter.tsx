/** How clear the newest stretch of sound is, as a bar with the line it must reach, and in words. */
import type { ComponentChildren } from 'preact';

interface Props {
  /** 0 to 1 */
  readonly clarity: number;
  /** From here a reading counts. */
  readonly from: number;
  readonly sure: 'clear' | 'fair' | 'poor';
  readonly children: ComponentChildren;
}

export function Meter({ clarity, from, sure, children }: Props) {
  return (
    <span class="listen-sure">
      <svg class="listen-meter" preserveAspectRatio="none" viewBox="0 0 100 8" width="100" height="8">
        <rect class="listen-meter-room" width="100" height="8" />
        <rect class={`listen-meter-${sure}`} width={(clarity * 100).toFixed(0)} height="8" />
        <path class="listen-meter-line" d={`M${from * 100} 0V8`} />
      </svg>
      {children}
    </span>
  );
}
