import { ApiProblem } from '@garboard/client/api-problem.ts';
import { answer } from '@garboard/client/client.ts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { type FormEvent, useState } from 'react';
import { api } from '../api/client.ts';
import { readAnew } from '../api/read-anew.ts';
import { whyItFailed } from '../api/why-it-failed.ts';
import { useOnceKey } from '../item/use-once-key.ts';
import { strings as recordStrings } from '../strings/record.ts';
import { strings } from '../strings/safety-notice.ts';
import { FaultSummary } from '../ui/fault-summary.tsx';
import { type AnswerBox, type AnswerDraft, type AnswerFaults, answerFaults, toNewAnswer } from './answer-draft.ts';
import { AnswerFields, nameOfBox } from './answer-fields.tsx';
import type { NewNoticeAnswer, NoticeAnswer, NoticeItem, SafetyNotice } from './notice.query.ts';

const { answerForm } = strings;
const { form } = recordStrings;

type Props = { notice: SafetyNotice; thing: NoticeItem; corrects: NoticeAnswer | undefined; start: AnswerDraft };

export function AnswerForm({ notice, thing, corrects, start }: Props) {
  const [draft, setDraft] = useState(start);
  const [refusal, setRefusal] = useState<{ faults: AnswerFaults; others: string[] }>({ faults: {}, others: [] });
  const sending = useAnswering(notice.id, thing.item.id, (error) => setRefusal(refusalOf(error)));
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const ready = toNewAnswer(draft, corrects?.id);
    setRefusal({ faults: ready.kind === 'faults' ? ready.faults : {}, others: [] });
    if (ready.kind === 'ready') sending.mutate(ready.body);
  };
  const boxes = Object.entries(refusal.faults) as [AnswerBox, string][];
  return (
    <form className="form" onSubmit={submit} noValidate>
      <FaultSummary
        heading={form.faultsHeading}
        why={form.faultsWhy}
        faults={boxes.map(([box, fault]) => ({ id: `answer-${box}`, name: nameOfBox(box), fault }))}
        others={refusal.others}
      />
      <AnswerFields
        draft={draft}
        notice={notice}
        correcting={corrects !== undefined}
        faults={refusal.faults}
        onChange={(changed) => setDraft((now) => ({ ...now, ...changed }))}
      />
      <p className="acts">
        <button type="submit" className="first" disabled={sending.isPending}>
          {sending.isPending ? form.sending : corrects ? answerForm.correct : answerForm.record}
        </button>
      </p>
    </form>
  );
}

function useAnswering(noticeId: string, itemId: string, onRefused: (error: Error) => void) {
  const queries = useQueryClient();
  const navigate = useNavigate();
  const keyFor = useOnceKey();
  return useMutation({
    mutationFn: (body: NewNoticeAnswer) =>
      answer(
        api.POST('/v1/safety-notices/{noticeId}/items/{itemId}/answers', {
          params: { path: { noticeId, itemId }, header: { 'Idempotency-Key': keyFor(body) } },
          body,
        }),
      ),
    onError: onRefused,
    onSuccess: async () => {
      await readAnew(queries);
      await navigate({ to: '/notices/$noticeId', params: { noticeId } });
    },
  });
}

function refusalOf(error: Error): { faults: AnswerFaults; others: string[] } {
  return error instanceof ApiProblem
    ? answerFaults(error.problem)
    : { faults: {}, others: [whyItFailed(error), form.notSent] };
}
