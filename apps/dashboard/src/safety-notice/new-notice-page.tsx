/** The form that enters a notice, with what it would find beside it. */

import { ApiProblem } from '@garboard/client/api-problem.ts';
import { answer } from '@garboard/client/client.ts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { Link, useNavigate } from '@tanstack/react-router';
import { type FormEvent, useState } from 'react';
import { api } from '../api/client.ts';
import { readAnew } from '../api/read-anew.ts';
import { whyItFailed } from '../api/why-it-failed.ts';
import { useOnceKey } from '../item/use-once-key.ts';
import { strings as recordStrings } from '../strings/record.ts';
import { strings } from '../strings/safety-notice.ts';
import { FaultSummary } from '../ui/fault-summary.tsx';
import { PageHeader } from '../ui/page-header.tsx';
import { Matches } from './matches.tsx';
import type { NewSafetyNotice } from './notice.query.ts';
import { emptyNotice, type NoticeBox, type NoticeFaults, noticeFaults, toNewNotice } from './notice-draft.ts';
import { NoticeFields, nameOfBox } from './notice-fields.tsx';
import '../item/record.css';
import './safety-notice.css';

const { newNotice, one } = strings;
const { form } = recordStrings;

export function NewNoticePage() {
  const [draft, setDraft] = useState(emptyNotice);
  const [refusal, setRefusal] = useState<{ faults: NoticeFaults; others: string[] }>({ faults: {}, others: [] });
  const entering = useEntering((error) => setRefusal(refusalOf(error)));
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const ready = toNewNotice(draft);
    setRefusal({ faults: ready.kind === 'faults' ? ready.faults : {}, others: [] });
    if (ready.kind === 'ready') entering.mutate(ready.body);
  };
  const boxes = Object.entries(refusal.faults) as [NoticeBox, string][];
  return (
    <>
      <PageHeader title={newNotice.title}>
        <p>
          <Link to="/notices">{one.back}</Link>
        </p>
        <p>{newNotice.intro}</p>
      </PageHeader>
      <div className="record">
        <form className="form" onSubmit={submit} noValidate>
          <FaultSummary
            heading={newNotice.faultsHeading}
            why={form.faultsWhy}
            faults={boxes.map(([box, fault]) => ({ id: `notice-${box}`, name: nameOfBox(box), fault }))}
            others={refusal.others}
          />
          <NoticeFields
            draft={draft}
            faults={refusal.faults}
            onChange={(box, value) => setDraft((now) => ({ ...now, [box]: value }))}
          />
          <p className="acts">
            <button type="submit" className="first" disabled={entering.isPending}>
              {entering.isPending ? newNotice.entering : newNotice.enter}
            </button>
          </p>
        </form>
        <Matches draft={draft} />
      </div>
    </>
  );
}

function useEntering(onRefused: (error: Error) => void) {
  const queries = useQueryClient();
  const navigate = useNavigate();
  const keyFor = useOnceKey();
  return useMutation({
    mutationFn: (body: NewSafetyNotice) =>
      answer(api.POST('/v1/safety-notices', { params: { header: { 'Idempotency-Key': keyFor(body) } }, body })),
    onError: onRefused,
    onSuccess: async ({ id }) => {
      await readAnew(queries);
      await navigate({ to: '/notices/$noticeId', params: { noticeId: id } });
    },
  });
}

function refusalOf(error: Error): { faults: NoticeFaults; others: string[] } {
  return error instanceof ApiProblem
    ? noticeFaults(error.problem)
    : { faults: {}, others: [whyItFailed(error), form.notSent] };
}
