/** The parts of a topic a form needs. Islands import these by name, so that the blocks and formula lists stay out of the page. */
import type { Topic } from '../../../core/contract/topic.ts';

export type TopicParts = Pick<Topic, 'title' | 'fields' | 'example' | 'compute' | 'words'>;
