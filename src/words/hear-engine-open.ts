/** The engine's ear once it is open; loaded with it. */
export { hearEngine as hearEngineWords } from './en/hear-engine-open.ts';
