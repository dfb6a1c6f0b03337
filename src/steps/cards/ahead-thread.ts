/** The inside of a thread that draws cards before there are pages; cards-ahead.ts starts it. */
import { workerData } from 'node:worker_threads';
import { drawAhead, type TitlesAhead } from './add-cards.ts';

await drawAhead(workerData as TitlesAhead);
