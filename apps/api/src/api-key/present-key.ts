/** How a key leaves the API: never with a secret, but once with its text. */

import type { TextOfKey } from '@garboard/actions/api-key/make-key.ts';
import type { ApiKey, ApiKeyWithText } from '@garboard/contract/api-key/api-key.ts';
import type { ApiKeyRecord } from '@garboard/db/api-key/api-keys.ts';
import { presentGrant } from '../organisation/present-people.ts';
import { withoutNulls } from '../request/without-nulls.ts';

export function presentKey({ role, vesselIds, permissions, ...rest }: ApiKeyRecord): ApiKey {
  return {
    ...withoutNulls(rest),
    ...presentGrant({ role, vesselIds }),
    ...(permissions !== 'all' && { permissions: [...permissions] }),
  };
}

export const presentKeyWithText = ({ key, text }: TextOfKey): ApiKeyWithText => ({
  ...presentKey(key),
  ...(text !== null && { key: text }),
});
