/** One figure of our own: who set it and why, and its end. */

import { isStatus } from '@garboard/client/api-problem.ts';
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { type FormEvent, useState } from 'react';
import { readAnew } from '../api/read-anew.ts';
import { whyItFailed } from '../api/why-it-failed.ts';
import { NotHere } from '../frame/not-here.tsx';
import { useOnceKey } from '../item/use-once-key.ts';
import { useMay } from '../organisation/may.ts';
import { strings } from '../strings/override.ts';
import { formatDay } from '../ui/calendar.ts';
import { Failed } from '../ui/failed.tsx';
import { FaultSummary } from '../ui/fault-summary.tsx';
import { LongField } from '../ui/fields.tsx';
import { PageHeader } from '../ui/page-header.tsx';
import { periodToType } from '../ui/read-period.ts';
import { Waiting } from '../ui/waiting.tsx';
import { endOverride, type Override, overrideQuery } from './override.query.ts';
import './own-rule.css';

const route = getRouteApi('/overrides/$overrideId');
const { page: words } = strings;

export function OverridePage() {
  const { overrideId } = route.useParams();
  const { data, error, isPending, refetch } = useQuery(overrideQuery(overrideId));
  const may = useMay();
  if (isStatus(error, 404)) return <NotHere />;
  if (isPending) return <Waiting>{words.waiting}</Waiting>;
  if (!data) return <Failed what={words.failed} why={whyItFailed(error)} again={refetch} />;
  const { vesselId, ruleId, period, from, decidedBy, reason, document, ended } = data;
  return (
    <>
      <PageHeader title={words.title}>
        <p>
          <Link to="/vessels/$vesselId" params={{ vesselId }}>
            {strings.back}
          </Link>
        </p>
      </PageHeader>
      <p className="voice">{words.counts(periodToType(period), formatDay(from))}</p>
      <p className="quiet">{words.said(decidedBy, reason, document)}</p>
      <p>
        <Link to="/rules/$ruleId" params={{ ruleId }}>
          {words.rule}
        </Link>
      </p>
      {ended && <p role="status">{words.ended(formatDay(ended.on), ended.reason)}</p>}
      {!ended && may.keepRegister && <EndForm override={data} />}
    </>
  );
}

function EndForm({ override }: { override: Override }) {
  const queries = useQueryClient();
  const keyFor = useOnceKey();
  const [reason, setReason] = useState('');
  const [fault, setFault] = useState('');
  const ending = useMutation({
    mutationFn: () => endOverride(override, reason.trim(), keyFor({ reason })),
    onError: (error) => setFault(whyItFailed(error)),
    onSuccess: () => readAnew(queries),
  });
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    const missing = reason.trim() === '' ? strings.empty : '';
    setFault(missing);
    if (missing === '') ending.mutate();
  };
  return (
    <form className="form figure" onSubmit={onSubmit} noValidate>
      <h2>{words.endHeading}</h2>
      <p>{words.endIntro}</p>
      <FaultSummary
        heading={strings.faultsHeading}
        why={strings.faultsWhy}
        faults={fault ? [{ id: 'figure-reason', name: strings.box.reason, fault }] : []}
        others={[]}
      />
      <LongField id="figure-reason" name={strings.box.reason} value={reason} fault={fault} onChange={setReason} />
      <p className="acts">
        <button type="submit" disabled={ending.isPending}>
          {ending.isPending ? strings.sending : words.endIt}
        </button>
      </p>
    </form>
  );
}
