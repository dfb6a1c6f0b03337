/** From a name on the command line to what it calls. */
import { topics } from '../../core/registry.ts';
import type { Callable } from './answer-line.ts';

/** A topic (`blade-speed`) or one of its blocks (`blade-speed/cut-depth`); nothing for any other name. */
export function find(name: string): Callable | undefined {
  const [topicName = '', blockName, ...more] = name.split('/');
  if (more.length > 0) return undefined;
  const topic = Object.hasOwn(topics, topicName) ? topics[topicName] : undefined;
  if (!topic || blockName === undefined) return topic;
  const block = Object.hasOwn(topic.blocks, blockName) ? topic.blocks[blockName] : undefined;
  return block && { ...block, words: topic.words };
}
