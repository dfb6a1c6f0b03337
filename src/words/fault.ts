/** A complaint's page and its planner. */
export { aboutMinutes, fault as faultWords, minutes, percent } from './en/faults.ts';
