import { getRouteApi } from '@tanstack/react-router';
import { strings } from '../strings/own-rule.ts';
import { readersToday } from '../ui/calendar.ts';
import { changeRule } from './own-rule.query.ts';
import { OwnRuleForm } from './own-rule-form.tsx';
import { draftOf } from './own-rule-text.ts';
import { OwnRuleToChange } from './own-rule-to-change.tsx';
import './own-rule.css';

const route = getRouteApi('/rules/$ruleId/change');

/** Starts from the last version that lays something down. */
export function ChangeRulePage() {
  const { ruleId } = route.useParams();
  return (
    <OwnRuleToChange ruleId={ruleId} title={strings.changeTitle} intro={strings.changeIntro}>
      {({ id }, { version, versions }) => {
        const last = versions.findLast(({ laysDown }) => laysDown)?.laysDown;
        return (
          last && (
            <OwnRuleForm
              start={draftOf(last, readersToday())}
              submit={strings.changeIt}
              send={(body, key) => changeRule(id, version, body, key)}
            />
          )
        );
      }}
    </OwnRuleToChange>
  );
}
