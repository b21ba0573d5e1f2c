/** The dashboard's only way to the API. */
import { garboardClient } from '@garboard/client/client.ts';

export const api = garboardClient({ address: '' });
