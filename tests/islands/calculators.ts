/** Every topic that has a form, with its form. */
import type { ComponentType } from 'preact';
import { topics } from '../../src/core/registry.ts';
import type { Topic } from '../../src/core/contract/topic.ts';
import type { IslandProps } from '../../src/islands/kit/index.ts';

const found = import.meta.glob<{ default: ComponentType<IslandProps> }>('../../src/islands/*/index.tsx', {
  eager: true,
});

export interface Calculator {
  readonly name: string;
  readonly topic: Topic;
  readonly Island: ComponentType<IslandProps>;
}

export const calculators: readonly Calculator[] = Object.entries(topics).flatMap(([name, topic]) => {
  const folder = name
    .split('-')
    .map((w) => w.charAt(0).toUpperCase() + w.slice(1))
    .join('');
  const Island = found[`../../src/islands/${folder}/index.tsx`]?.default;
  return Island ? [{ name, topic, Island }] : [];
});
