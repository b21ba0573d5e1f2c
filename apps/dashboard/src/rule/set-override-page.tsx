/** A figure of one's own in place of the interval that a date was worked out with. */
import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { whyItFailed } from '../api/why-it-failed.ts';
import { NotHere } from '../frame/not-here.tsx';
import { emphasised } from '../item/emphasised.tsx';
import { itemsQuery, obligationsQuery } from '../item/item.query.ts';
import { SourceLine } from '../item/source-line.tsx';
import { useMay } from '../organisation/may.ts';
import { strings as itemStrings } from '../strings/item.ts';
import { strings } from '../strings/override.ts';
import { Failed } from '../ui/failed.tsx';
import { PageHeader } from '../ui/page-header.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { OverrideForm } from './override-form.tsx';
import '../item/reasoning.css';
import './own-rule.css';

const route = getRouteApi('/vessels/$vesselId/figure');

export function SetOverridePage() {
  const { vesselId } = route.useParams();
  const { item = '', rule = '', duty = '' } = route.useSearch();
  const may = useMay();
  const items = useQuery(itemsQuery(vesselId));
  const obligations = useQuery({ ...obligationsQuery(item, undefined), enabled: item !== '' });
  if (item === '') return <NotHere />;
  const failed = [items, obligations].find((each) => each.isError);
  if (failed) return <Failed what={itemStrings.failed} why={whyItFailed(failed.error)} again={failed.refetch} />;
  if (!items.data || !obligations.data) return <Waiting>{itemStrings.waiting}</Waiting>;
  const obligation = obligations.data.items.find((each) => each.ruleId === rule && each.duty === duty);
  const label = items.data.find(({ id }) => id === item)?.label ?? '';
  return (
    <>
      <PageHeader title={strings.title(label)}>
        <p>
          <Link to="/vessels/$vesselId" params={{ vesselId }}>
            {strings.back}
          </Link>
        </p>
        <p>{may.keepRegister ? strings.intro : strings.notYours}</p>
      </PageHeader>
      {!obligation && <p className="quiet">{strings.noSuch}</p>}
      {obligation && (
        <section aria-labelledby="as-now">
          <h2 id="as-now">{strings.published}</h2>
          <p className="voice">{emphasised(obligation)}</p>
          <SourceLine obligation={obligation} />
        </section>
      )}
      {obligation && may.keepRegister && (
        <OverrideForm vesselId={vesselId} about={{ itemId: item, ruleId: rule, duty }} />
      )}
    </>
  );
}
