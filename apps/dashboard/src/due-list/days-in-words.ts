import { strings } from '../strings/due-list.ts';
import { age } from '../ui/age.ts';

/** `64 days` gone by, or `in 12 days`. */
export const daysInWords = (days: number): string => (days < 0 ? age(-days) : strings.inDays(days));
