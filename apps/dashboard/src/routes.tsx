/** Which address shows which page, and what its search may say. */
import {
  createRootRoute,
  createRoute,
  createRouter,
  parseSearchWith,
  redirect,
  stringifySearchWith,
} from '@tanstack/react-router';
import { KeysPage } from './api-key/keys-page.tsx';
import { ChangesPage } from './audit/changes-page.tsx';
import { readChangesSearch } from './audit/changes-search.ts';
import { DuePage } from './due-list/due-page.tsx';
import { readDueSearch } from './due-list/due-search.ts';
import { EvidencePage } from './evidence/evidence-page.tsx';
import { PicturesPage } from './evidence/pictures-page.tsx';
import { FindingPage } from './finding/finding-page.tsx';
import { FindingsPage } from './finding/findings-page.tsx';
import { readFindingsSearch } from './finding/findings-search.ts';
import { NewFindingPage } from './finding/new-finding-page.tsx';
import { FleetPage } from './fleet/fleet-page.tsx';
import { isForDueList, readFleetSearch } from './fleet/fleet-search.ts';
import { Broken } from './frame/broken.tsx';
import { Frame } from './frame/frame.tsx';
import { NotHere } from './frame/not-here.tsx';
import { AddPage } from './item/add-page.tsx';
import { ChangePage } from './item/change-page.tsx';
import { RecordPage } from './item/record-page.tsx';
import { readRecordSearch } from './item/record-search.ts';
import { AccountPage } from './organisation/account-page.tsx';
import { ForgottenPage } from './organisation/forgotten-page.tsx';
import { InvitationPage } from './organisation/invitation-page.tsx';
import { NewPasswordPage } from './organisation/new-password-page.tsx';
import { PeoplePage } from './organisation/people-page.tsx';
import { SeasonPage } from './organisation/season-page.tsx';
import { SignUpPage } from './organisation/sign-up-page.tsx';
import { VerifyPage } from './organisation/verify-page.tsx';
import { ChangeRulePage } from './rule/change-rule-page.tsx';
import { EndRulePage } from './rule/end-rule-page.tsx';
import { readFigureSearch } from './rule/figure-search.ts';
import { NewRulePage } from './rule/new-rule-page.tsx';
import { OverridePage } from './rule/override-page.tsx';
import { RulePage } from './rule/rule-page.tsx';
import { readRuleSearch } from './rule/rule-search.ts';
import { RulesPage } from './rule/rules-page.tsx';
import { SetOverridePage } from './rule/set-override-page.tsx';
import { AnswerPage } from './safety-notice/answer-page.tsx';
import { NewNoticePage } from './safety-notice/new-notice-page.tsx';
import { NoticePage } from './safety-notice/notice-page.tsx';
import { readAnswerSearch, readNoticesSearch } from './safety-notice/notice-search.ts';
import { NoticesPage } from './safety-notice/notices-page.tsx';
import { ViewPage } from './saved-view/view-page.tsx';
import { SharedPage } from './share/shared-page.tsx';
import { SharesPage } from './share/shares-page.tsx';
import { NewVisitPage } from './survey-visit/new-visit-page.tsx';
import { RoutePage } from './survey-visit/route-page.tsx';
import { VisitPage } from './survey-visit/visit-page.tsx';
import { VisitsPage } from './survey-visit/visits-page.tsx';
import { ChangeVesselPage } from './vessel/change-vessel-page.tsx';
import { NewVesselPage } from './vessel/new-vessel-page.tsx';
import { VesselPage } from './vessel/vessel-page.tsx';
import { readVesselSearch } from './vessel/vessel-search.ts';
import { VesselsPage } from './vessel/vessels-page.tsx';

const root = createRootRoute({ component: Frame, notFoundComponent: NotHere, errorComponent: Broken });
const getParentRoute = () => root;

const fleet = createRoute({
  getParentRoute,
  path: '/',
  validateSearch: readFleetSearch,
  beforeLoad: ({ location }) => {
    if (isForDueList(location.search))
      throw redirect({ to: '/due', search: readDueSearch(location.search), replace: true });
  },
  component: FleetPage,
});
const due = createRoute({ getParentRoute, path: '/due', validateSearch: readDueSearch, component: DuePage });
const findings = createRoute({
  getParentRoute,
  path: '/findings',
  validateSearch: readFindingsSearch,
  component: FindingsPage,
});
const finding = createRoute({
  getParentRoute,
  path: '/findings/$findingId',
  validateSearch: (raw: Record<string, unknown>): { do?: string } => (typeof raw.do === 'string' ? { do: raw.do } : {}),
  component: FindingPage,
});
const evidence = createRoute({ getParentRoute, path: '/evidence/$evidenceId', component: EvidencePage });
const pictures = createRoute({ getParentRoute, path: '/vessels/$vesselId/photographs', component: PicturesPage });
const visits = createRoute({ getParentRoute, path: '/visits', component: VisitsPage });
const visit = createRoute({ getParentRoute, path: '/visits/$visitId', component: VisitPage });
const surveyRoute = createRoute({ getParentRoute, path: '/survey-routes/$craft', component: RoutePage });
const newVisit = createRoute({ getParentRoute, path: '/vessels/$vesselId/visit', component: NewVisitPage });
const newFinding = createRoute({ getParentRoute, path: '/vessels/$vesselId/finding', component: NewFindingPage });
const vessels = createRoute({ getParentRoute, path: '/vessels', component: VesselsPage });
const newVessel = createRoute({ getParentRoute, path: '/vessels/new', component: NewVesselPage });
const vessel = createRoute({
  getParentRoute,
  path: '/vessels/$vesselId',
  validateSearch: readVesselSearch,
  component: VesselPage,
});
const record = createRoute({
  getParentRoute,
  path: '/vessels/$vesselId/record',
  validateSearch: readRecordSearch,
  component: RecordPage,
});
const changeVessel = createRoute({
  getParentRoute,
  path: '/vessels/$vesselId/change',
  component: ChangeVesselPage,
});
const changeItem = createRoute({ getParentRoute, path: '/items/$itemId/change', component: ChangePage });
const add = createRoute({ getParentRoute, path: '/vessels/$vesselId/add', component: AddPage });
const rules = createRoute({ getParentRoute, path: '/rules', validateSearch: readRuleSearch, component: RulesPage });
const notices = createRoute({
  getParentRoute,
  path: '/notices',
  validateSearch: readNoticesSearch,
  component: NoticesPage,
});
const newNotice = createRoute({ getParentRoute, path: '/notices/new', component: NewNoticePage });
const notice = createRoute({ getParentRoute, path: '/notices/$noticeId', component: NoticePage });
const answerNotice = createRoute({
  getParentRoute,
  path: '/notices/$noticeId/answer',
  validateSearch: readAnswerSearch,
  component: AnswerPage,
});
const newRule = createRoute({ getParentRoute, path: '/rules/new', component: NewRulePage });
const changeRule = createRoute({ getParentRoute, path: '/rules/$ruleId/change', component: ChangeRulePage });
const endRule = createRoute({ getParentRoute, path: '/rules/$ruleId/end', component: EndRulePage });
const figure = createRoute({
  getParentRoute,
  path: '/vessels/$vesselId/figure',
  validateSearch: readFigureSearch,
  component: SetOverridePage,
});
const override = createRoute({ getParentRoute, path: '/overrides/$overrideId', component: OverridePage });
const rule = createRoute({ getParentRoute, path: '/rules/$ruleId', component: RulePage });
const view = createRoute({ getParentRoute, path: '/views/$viewId', component: ViewPage });
const outside = { outside: true } as const;
const signIn = createRoute({
  getParentRoute,
  path: '/sign-in',
  // The door stands at every address; this one only leads to it.
  beforeLoad: () => {
    throw redirect({ to: '/', replace: true });
  },
});
const signUp = createRoute({ getParentRoute, path: '/sign-up', staticData: outside, component: SignUpPage });
const verify = createRoute({ getParentRoute, path: '/verify/$token', staticData: outside, component: VerifyPage });
const forgotten = createRoute({ getParentRoute, path: '/forgotten', staticData: outside, component: ForgottenPage });
const newPassword = createRoute({
  getParentRoute,
  path: '/new-password/$token',
  staticData: outside,
  component: NewPasswordPage,
});
const invitation = createRoute({
  getParentRoute,
  path: '/invitation/$token',
  staticData: outside,
  component: InvitationPage,
});
const people = createRoute({ getParentRoute, path: '/people', component: PeoplePage });
const keys = createRoute({ getParentRoute, path: '/keys', component: KeysPage });
const changes = createRoute({
  getParentRoute,
  path: '/changes',
  validateSearch: readChangesSearch,
  component: ChangesPage,
});
const shares = createRoute({
  getParentRoute,
  path: '/shares',
  validateSearch: ({ vessel }: Record<string, unknown>): { vessel?: string } =>
    typeof vessel === 'string' ? { vessel } : {},
  component: SharesPage,
});
const shared = createRoute({ getParentRoute, path: '/shared', staticData: outside, component: SharedPage });
const account = createRoute({
  getParentRoute,
  path: '/account',
  staticData: { anywhere: true },
  component: AccountPage,
});
const season = createRoute({ getParentRoute, path: '/season', component: SeasonPage });

/** Addresses are read by people: plain words, not JSON in quotes. */
export const router = createRouter({
  routeTree: root.addChildren([
    fleet,
    due,
    findings,
    finding,
    newFinding,
    evidence,
    pictures,
    visits,
    visit,
    newVisit,
    surveyRoute,
    vessels,
    newVessel,
    vessel,
    record,
    changeItem,
    changeVessel,
    add,
    notices,
    newNotice,
    notice,
    answerNotice,
    season,
    people,
    keys,
    changes,
    shares,
    shared,
    account,
    signIn,
    signUp,
    verify,
    forgotten,
    newPassword,
    invitation,
    view,
    rules,
    newRule,
    rule,
    changeRule,
    endRule,
    figure,
    override,
  ]),
  parseSearch: parseSearchWith((value) => value),
  stringifySearch: stringifySearchWith(String),
  scrollRestoration: true,
  defaultErrorComponent: Broken,
});

declare module '@tanstack/react-router' {
  interface Register {
    router: typeof router;
  }
  interface StaticDataRouteOption {
    /** For whoever has no session, or no organisation. */
    outside?: true;
    /** For whoever has a session, at an organisation or at none. */
    anywhere?: true;
  }
}
