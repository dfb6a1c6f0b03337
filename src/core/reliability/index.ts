/** Lives of parts: shared by the topics on money, parts and intervals. Not a calculator itself. */
export { gamma, gammaShare } from './gamma.ts';
export { survival, hazardRate, meanLife, meanServiceUpTo, meanRemainingLife, ageAtShare, type Life } from './weibull.ts';
