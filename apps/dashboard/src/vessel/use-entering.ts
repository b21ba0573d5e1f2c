/** Enters a vessel and then what she has aboard. Where only the first was done, the next try does only the second. */

import { answer } from '@garboard/client/client.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { api } from '../api/client.ts';
import { readAnew } from '../api/read-anew.ts';
import { useOnceKey } from '../item/use-once-key.ts';
import type { Ticked } from './thing-draft.ts';

type Vessel = components['schemas']['Vessel'];
export type Entry = { readonly vessel: components['schemas']['NewVessel']; readonly things: Ticked };

export function useEntering(on: { entered: (vessel: Vessel) => void; refused: (error: Error, entry: Entry) => void }) {
  const queries = useQueryClient();
  const vesselKey = useOnceKey();
  const thingsKey = useOnceKey();
  const [entered, setEntered] = useState<Vessel>();
  const mutation = useMutation({
    mutationFn: async ({ vessel, things }: Entry): Promise<Vessel> => {
      const made = entered ?? (await createVessel(vessel, vesselKey(vessel)));
      setEntered(made);
      if (things.items.length > 0) await addThings(made.id, things.items, thingsKey([made.id, things.items]));
      return made;
    },
    onError: on.refused,
    onSuccess: on.entered,
    onSettled: () => void readAnew(queries),
  });
  return { send: mutation.mutate, sending: mutation.isPending, entered };
}

function createVessel(body: Entry['vessel'], key: string): Promise<Vessel> {
  return answer(api.POST('/v1/vessels', { params: { header: { 'Idempotency-Key': key } }, body }));
}

function addThings(vesselId: string, items: Ticked['items'], key: string) {
  return answer(
    api.POST('/v1/vessels/{vesselId}/items/batch', {
      params: { path: { vesselId }, header: { 'Idempotency-Key': key } },
      body: { items },
    }),
  );
}
