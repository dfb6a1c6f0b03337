/** What every page runs: keeping a copy for later, and saying so. */
import './edition-notice.ts';
