/** A machine in figures: which ones exist, and how they are read. Not a calculator itself. */
export { facts, origins, type Fact, type FactKey, type Facts, type Origin } from './facts.ts';
export { fillsOf } from './fills.ts';
export { readFacts } from './read-facts.ts';
