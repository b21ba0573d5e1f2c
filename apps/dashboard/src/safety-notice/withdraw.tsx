/** Ends a notice, with a reason; what was answered stays. */

import { answer } from '@garboard/client/client.ts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { api } from '../api/client.ts';
import { readAnew } from '../api/read-anew.ts';
import { whyItFailed } from '../api/why-it-failed.ts';
import { useOnceKey } from '../item/use-once-key.ts';
import { strings } from '../strings/safety-notice.ts';
import { LongField } from '../ui/fields.tsx';
import type { SafetyNotice } from './notice.query.ts';

const { one } = strings;

export function Withdraw({ notice }: { notice: SafetyNotice }) {
  const [reason, setReason] = useState('');
  const [fault, setFault] = useState<string>();
  const queries = useQueryClient();
  const keyFor = useOnceKey();
  const withdrawing = useMutation({
    mutationFn: (body: { reason: string }) =>
      answer(
        api.POST('/v1/safety-notices/{noticeId}/withdrawal', {
          params: {
            path: { noticeId: notice.id },
            header: { 'If-Match': `"${notice.version}"`, 'Idempotency-Key': keyFor(body) },
          },
          body,
        }),
      ),
    onError: (error) => setFault(whyItFailed(error)),
    onSuccess: () => readAnew(queries),
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (reason.trim() === '') setFault(one.noReason);
    else withdrawing.mutate({ reason: reason.trim() });
  };
  return (
    <details className="notice-withdraw">
      <summary>{one.withdraw}</summary>
      <p className="quiet">{one.withdrawHow}</p>
      <form onSubmit={submit} noValidate>
        <LongField id="withdraw-reason" name={one.withdrawReason} value={reason} fault={fault} onChange={setReason} />
        <button type="submit" disabled={withdrawing.isPending}>
          {withdrawing.isPending ? one.withdrawing : one.withdraw}
        </button>
      </form>
    </details>
  );
}
