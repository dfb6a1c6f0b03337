/** A complaint's page and its planner. */
export { aboutMinutes, aboutMinutesApart, fault as faultWords, minutes, percent } from './en/faults.ts';
