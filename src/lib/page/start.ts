/** What every page runs: keeping a copy for later, and saying so. */
import './worker-notice.ts';
