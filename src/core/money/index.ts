/** Money: rounding to the cent, and what an amount of another year is worth today; shared by topics and papers. Not a calculator itself. */
export {
  presentWorth,
  presentWorthOfPayments,
  capitalRecovery,
  sinkingFund,
  gradientToLevel,
  isNoInterest,
  netPresentWorth,
  withInflation,
} from './time-value.ts';
export { toCents, roundMoney } from './rounding.ts';
