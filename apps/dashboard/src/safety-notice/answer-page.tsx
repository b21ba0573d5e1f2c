/** The form that answers a notice for one thing. */
import { isStatus } from '@garboard/client/api-problem.ts';
import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { whyItFailed } from '../api/why-it-failed.ts';
import { NotHere } from '../frame/not-here.tsx';
import { strings } from '../strings/safety-notice.ts';
import { Failed } from '../ui/failed.tsx';
import { PageHeader } from '../ui/page-header.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { draftOfAnswer, emptyAnswer } from './answer-draft.ts';
import { AnswerForm } from './answer-form.tsx';
import { noticeItemsQuery, noticeQuery } from './notice.query.ts';
import { deadlineInWords } from './notice-words.ts';
import '../item/record.css';
import './safety-notice.css';

const route = getRouteApi('/notices/$noticeId/answer');
const { answerForm, one } = strings;

export function AnswerPage() {
  const { noticeId } = route.useParams();
  const search = route.useSearch();
  const notice = useQuery(noticeQuery(noticeId));
  const items = useQuery(noticeItemsQuery(noticeId));
  if (isStatus(notice.error, 404)) return <NotHere />;
  if (notice.isPending || items.isPending) return <Waiting>{one.waiting}</Waiting>;
  if (!notice.data || !items.data)
    return (
      <Failed
        what={one.failed}
        why={whyItFailed(notice.error ?? items.error)}
        again={() => void Promise.all([notice.refetch(), items.refetch()])}
      />
    );
  const thing = items.data.find(({ item }) => item.id === search.item);
  const corrects = thing?.answers.find(({ id, struckOutBy }) => id === search.corrects && !struckOutBy);
  const title = corrects ? answerForm.correctTitle : answerForm.title;
  return (
    <>
      <PageHeader title={thing ? title(thing.item.label, thing.vessel.name) : notice.data.title}>
        <p>
          <Link to="/notices/$noticeId" params={{ noticeId }}>
            {answerForm.back}
          </Link>
        </p>
        <p>
          {answerForm.asks}: {notice.data.action.words}, {deadlineInWords(notice.data)}.
        </p>
      </PageHeader>
      {thing ? (
        <AnswerForm
          notice={notice.data}
          thing={thing}
          corrects={corrects}
          start={corrects ? draftOfAnswer(corrects) : emptyAnswer}
        />
      ) : (
        <p role="alert">{answerForm.notCovered}</p>
      )}
    </>
  );
}
