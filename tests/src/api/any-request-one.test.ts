/** Half of the operations, held to what the document promises; the other half runs beside it. */
import { holdToPromises } from './hold-to-promises.ts';

holdToPromises(0);
