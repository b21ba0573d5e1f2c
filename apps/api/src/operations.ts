/** Every operation of the API, in the order in which its document tells them. */

import { getKeyRoute } from './api-key/get-key.route.ts';
import { listKeysRoute } from './api-key/list-keys.route.ts';
import { makeKeyRoute } from './api-key/make-key.route.ts';
import { renewKeyRoute } from './api-key/renew-key.route.ts';
import { revokeKeyRoute } from './api-key/revoke-key.route.ts';
import { exportAuditRoute } from './audit/export-audit.route.ts';
import { listAuditRoute } from './audit/list-audit.route.ts';
import { listDueRoute } from './due-list/list-due.route.ts';
import { listSamplesRoute } from './due-list/list-samples.route.ts';
import { addPieceRoute } from './evidence/add-piece.route.ts';
import { getEvidenceRoute } from './evidence/get-evidence.route.ts';
import { getUploadRoute } from './evidence/get-upload.route.ts';
import { listEvidenceRoute } from './evidence/list-evidence.route.ts';
import { startUploadRoute } from './evidence/start-upload.route.ts';
import { showEvidenceRoute, takeOriginalRoute } from './evidence/take-file.route.ts';
import { changeFindingRoute } from './finding/change-finding.route.ts';
import { enterFindingRoute } from './finding/enter-finding.route.ts';
import { getFindingRoute } from './finding/get-finding.route.ts';
import { getTermsRoute } from './finding/get-terms.route.ts';
import { listAlikeRoute } from './finding/list-alike.route.ts';
import { listEntriesRoute } from './finding/list-entries.route.ts';
import { listFindingsRoute } from './finding/list-findings.route.ts';
import { mergeFindingRoute } from './finding/merge-finding.route.ts';
import { setTermsRoute } from './finding/set-terms.route.ts';
import { sightFindingRoute } from './finding/sight-finding.route.ts';
import { splitFindingRoute } from './finding/split-finding.route.ts';
import { takeRemedyStepRoute } from './finding/take-remedy-step.route.ts';
import { verifyFindingRoute } from './finding/verify-finding.route.ts';
import { listFleetRoute } from './fleet/list-fleet.route.ts';
import { healthRoute } from './health/health.route.ts';
import { addItemRoute } from './item/add-item.route.ts';
import { addItemsRoute } from './item/add-items.route.ts';
import { changeItemRoute } from './item/change-item.route.ts';
import { explainRoute } from './item/explain.route.ts';
import { getItemRoute } from './item/get-item.route.ts';
import { listFactsRoute } from './item/list-facts.route.ts';
import { listItemsRoute } from './item/list-items.route.ts';
import { listObligationsRoute } from './item/list-obligations.route.ts';
import { recordFactRoute } from './item/record-fact.route.ts';
import { recordFactsRoute } from './item/record-facts.route.ts';
import { acceptInvitationRoute } from './organisation/accept-invitation.route.ts';
import { changeOrganisationRoute } from './organisation/change-organisation.route.ts';
import { changePersonRoute } from './organisation/change-person.route.ts';
import { createOrganisationRoute } from './organisation/create-organisation.route.ts';
import { endSessionRoute } from './organisation/end-session.route.ts';
import { endSessionsRoute } from './organisation/end-sessions.route.ts';
import { eraseAccountRoute } from './organisation/erase-account.route.ts';
import { getAccountRoute } from './organisation/get-account.route.ts';
import { getOrganisationRoute } from './organisation/get-organisation.route.ts';
import { getPersonRoute } from './organisation/get-person.route.ts';
import { getSeasonRoute } from './organisation/get-season.route.ts';
import { getSessionRoute } from './organisation/get-session.route.ts';
import { invitePersonRoute } from './organisation/invite-person.route.ts';
import { leaveOrganisationRoute } from './organisation/leave-organisation.route.ts';
import { listInvitationsRoute } from './organisation/list-invitations.route.ts';
import { listOrganisationsRoute } from './organisation/list-organisations.route.ts';
import { listPeopleRoute } from './organisation/list-people.route.ts';
import { previewInvitationRoute } from './organisation/preview-invitation.route.ts';
import { removePersonRoute } from './organisation/remove-person.route.ts';
import { setSeasonRoute } from './organisation/set-season.route.ts';
import { switchOrganisationRoute } from './organisation/switch-organisation.route.ts';
import { withdrawInvitationRoute } from './organisation/withdraw-invitation.route.ts';
import { addRuleRoute } from './rule/add-rule.route.ts';
import { changeRuleRoute } from './rule/change-rule.route.ts';
import { endOverrideRoute } from './rule/end-override.route.ts';
import { endRuleRoute } from './rule/end-rule.route.ts';
import { getOverrideRoute } from './rule/get-override.route.ts';
import { getRuleRoute } from './rule/get-rule.route.ts';
import { getRuleChangeRoute } from './rule/get-rule-change.route.ts';
import { listItemKindsRoute } from './rule/list-item-kinds.route.ts';
import { listOverridesRoute } from './rule/list-overrides.route.ts';
import { listRulesRoute } from './rule/list-rules.route.ts';
import { listSchemesRoute } from './rule/list-schemes.route.ts';
import { setOverrideRoute } from './rule/set-override.route.ts';
import { answerNoticeRoute } from './safety-notice/answer-notice.route.ts';
import { enterNoticeRoute } from './safety-notice/enter-notice.route.ts';
import { getNoticeRoute } from './safety-notice/get-notice.route.ts';
import { listNoticeItemsRoute } from './safety-notice/list-notice-items.route.ts';
import { listNoticesRoute } from './safety-notice/list-notices.route.ts';
import { matchNoticeRoute } from './safety-notice/match-notice.route.ts';
import { withdrawNoticeRoute } from './safety-notice/withdraw-notice.route.ts';
import { changeViewRoute } from './saved-view/change-view.route.ts';
import { getSavedViewRoute } from './saved-view/get-saved-view.route.ts';
import { listSavedViewsRoute } from './saved-view/list-saved-views.route.ts';
import { removeViewRoute, restoreViewRoute } from './saved-view/remove-view.route.ts';
import { saveViewRoute } from './saved-view/save-view.route.ts';
import { searchRoute } from './search/search.route.ts';
import { answerByLinkRoute, reportByLinkRoute } from './share/act-by-link.route.ts';
import { getShareLinkRoute } from './share/get-share-link.route.ts';
import { listLooksRoute } from './share/list-looks.route.ts';
import { listShareLinksRoute } from './share/list-share-links.route.ts';
import { lookAtSharedRoute } from './share/look-at-shared.route.ts';
import { makeShareLinkRoute } from './share/make-share-link.route.ts';
import { revokeShareLinkRoute } from './share/revoke-share-link.route.ts';
import { getLimitationRoute } from './survey-visit/get-limitation.route.ts';
import { getReferralRoute } from './survey-visit/get-referral.route.ts';
import { getSealedCopyRoute } from './survey-visit/get-sealed-copy.route.ts';
import { getVisitRoute } from './survey-visit/get-visit.route.ts';
import { getWalkRoute } from './survey-visit/get-walk.route.ts';
import { listLimitationsRoute } from './survey-visit/list-limitations.route.ts';
import { listReferralsRoute } from './survey-visit/list-referrals.route.ts';
import { listVisitsRoute } from './survey-visit/list-visits.route.ts';
import { startVisitRoute } from './survey-visit/start-visit.route.ts';
import { getSurveyRouteRoute, setSurveyRouteRoute } from './survey-visit/survey-route.route.ts';
import {
  answerLimitationRoute,
  changeVisitRoute,
  completeVisitRoute,
  reportReferralRoute,
} from './survey-visit/visit-acts.ts';
import {
  addAddendumRoute,
  answerZoneRoute,
  imposeLimitationRoute,
  referRoute,
  takeReadingRoute,
} from './survey-visit/visit-additions.ts';
import { changeVesselRoute } from './vessel/change-vessel.route.ts';
import { createVesselRoute } from './vessel/create-vessel.route.ts';
import { getVesselRoute } from './vessel/get-vessel.route.ts';
import { listEventsRoute } from './vessel/list-events.route.ts';
import { listSituationsRoute } from './vessel/list-situations.route.ts';
import { listTemplatesRoute } from './vessel/list-templates.route.ts';
import { listVesselsRoute } from './vessel/list-vessels.route.ts';
import { readIdentifiersRoute } from './vessel/read-identifiers.route.ts';
import { recordEventRoute } from './vessel/record-event.route.ts';
import { recordSituationRoute } from './vessel/record-situation.route.ts';

export const OPERATIONS = [
  listVesselsRoute,
  createVesselRoute,
  getVesselRoute,
  changeVesselRoute,
  listSituationsRoute,
  recordSituationRoute,
  listEventsRoute,
  recordEventRoute,
  readIdentifiersRoute,
  listItemsRoute,
  addItemRoute,
  addItemsRoute,
  getItemRoute,
  changeItemRoute,
  listFactsRoute,
  recordFactRoute,
  recordFactsRoute,
  listObligationsRoute,
  listEvidenceRoute,
  startUploadRoute,
  getUploadRoute,
  addPieceRoute,
  getEvidenceRoute,
  showEvidenceRoute,
  takeOriginalRoute,
  listVisitsRoute,
  startVisitRoute,
  getVisitRoute,
  changeVisitRoute,
  getWalkRoute,
  answerZoneRoute,
  takeReadingRoute,
  imposeLimitationRoute,
  referRoute,
  completeVisitRoute,
  addAddendumRoute,
  getSealedCopyRoute,
  listLimitationsRoute,
  getLimitationRoute,
  answerLimitationRoute,
  listReferralsRoute,
  getReferralRoute,
  reportReferralRoute,
  getSurveyRouteRoute,
  setSurveyRouteRoute,
  listFindingsRoute,
  enterFindingRoute,
  listAlikeRoute,
  getFindingRoute,
  changeFindingRoute,
  listEntriesRoute,
  sightFindingRoute,
  takeRemedyStepRoute,
  verifyFindingRoute,
  mergeFindingRoute,
  splitFindingRoute,
  getTermsRoute,
  setTermsRoute,
  listDueRoute,
  listSamplesRoute,
  listFleetRoute,
  searchRoute,
  getSeasonRoute,
  setSeasonRoute,
  listSavedViewsRoute,
  saveViewRoute,
  getSavedViewRoute,
  changeViewRoute,
  removeViewRoute,
  restoreViewRoute,
  explainRoute,
  listRulesRoute,
  addRuleRoute,
  getRuleRoute,
  changeRuleRoute,
  endRuleRoute,
  getRuleChangeRoute,
  listOverridesRoute,
  setOverrideRoute,
  getOverrideRoute,
  endOverrideRoute,
  listNoticesRoute,
  enterNoticeRoute,
  matchNoticeRoute,
  getNoticeRoute,
  listNoticeItemsRoute,
  answerNoticeRoute,
  withdrawNoticeRoute,
  listItemKindsRoute,
  listSchemesRoute,
  listTemplatesRoute,
  listAuditRoute,
  exportAuditRoute,
  listPeopleRoute,
  getPersonRoute,
  changePersonRoute,
  removePersonRoute,
  listInvitationsRoute,
  invitePersonRoute,
  withdrawInvitationRoute,
  previewInvitationRoute,
  acceptInvitationRoute,
  leaveOrganisationRoute,
  listShareLinksRoute,
  makeShareLinkRoute,
  getShareLinkRoute,
  listLooksRoute,
  revokeShareLinkRoute,
  lookAtSharedRoute,
  reportByLinkRoute,
  answerByLinkRoute,
  listKeysRoute,
  makeKeyRoute,
  getKeyRoute,
  renewKeyRoute,
  revokeKeyRoute,
  getOrganisationRoute,
  changeOrganisationRoute,
  listOrganisationsRoute,
  createOrganisationRoute,
  getAccountRoute,
  endSessionsRoute,
  eraseAccountRoute,
  getSessionRoute,
  switchOrganisationRoute,
  endSessionRoute,
  healthRoute,
] as const;
