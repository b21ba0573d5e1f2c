/** The page that enters a vessel. */
import { useQueries } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { whyItFailed } from '../api/why-it-failed.ts';
import { Forbidden } from '../frame/forbidden.tsx';
import { itemKindsQuery } from '../item/catalogue.query.ts';
import { useMay } from '../organisation/may.ts';
import { schemesQuery } from '../rule/rule.query.ts';
import { strings } from '../strings/new-vessel.ts';
import { Failed } from '../ui/failed.tsx';
import { PageHeader } from '../ui/page-header.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { NewVesselForm } from './new-vessel-form.tsx';
import { templatesQuery } from './template.query.ts';
import './new-vessel.css';

export function NewVesselPage() {
  if (!useMay().keepRegister) return <Forbidden permission="keepRegister" />;
  return (
    <>
      <PageHeader title={strings.title}>
        <p>
          <Link to="/vessels">{strings.back}</Link>
        </p>
        <p>{strings.intro}</p>
      </PageHeader>
      <Catalogue />
    </>
  );
}

function Catalogue() {
  const [templates, schemes, kinds] = useQueries({ queries: [templatesQuery(), schemesQuery(), itemKindsQuery()] });
  const failed = [templates, schemes, kinds].find((each) => each.isError);
  if (failed) {
    const again = () => void Promise.all([templates, schemes, kinds].map((each) => each.refetch()));
    return <Failed what={strings.failed} why={whyItFailed(failed.error)} again={again} />;
  }
  if (!templates.data || !schemes.data || !kinds.data) return <Waiting>{strings.waiting}</Waiting>;
  return <NewVesselForm templates={templates.data} schemes={schemes.data} kinds={kinds.data} />;
}
