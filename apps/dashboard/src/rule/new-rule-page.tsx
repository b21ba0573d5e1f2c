import { Link } from '@tanstack/react-router';
import { useMay } from '../organisation/may.ts';
import { strings } from '../strings/own-rule.ts';
import { readersToday } from '../ui/calendar.ts';
import { PageHeader } from '../ui/page-header.tsx';
import { addRule } from './own-rule.query.ts';
import { OwnRuleForm } from './own-rule-form.tsx';
import { emptyOwnRule } from './own-rule-text.ts';
import './own-rule.css';

export function NewRulePage() {
  const may = useMay();
  return (
    <>
      <PageHeader title={strings.addTitle}>
        <p>
          <Link to="/rules">{strings.back}</Link>
        </p>
        <p>{may.keepRules ? strings.addIntro : strings.notYours}</p>
      </PageHeader>
      {may.keepRules && <OwnRuleForm start={emptyOwnRule(readersToday())} submit={strings.layDown} send={addRule} />}
    </>
  );
}
