/** Hands a text on only after it has stood still, so that a screen reader is not interrupted at every key. */
import { useEffect, useState } from 'preact/hooks';

const pause = 600;

export function useAnnouncement(text: string, live: boolean): string {
  const [announced, setAnnounced] = useState('');
  useEffect(() => {
    if (!live) return;
    const timer = setTimeout(() => setAnnounced(text), pause);
    return () => clearTimeout(timer);
  }, [text, live]);
  return announced;
}
