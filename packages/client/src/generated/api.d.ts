// Generated from the OpenAPI document by `npm run client`. Not for editing.
export interface paths {
    "/healthz": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Ask whether the program runs
         * @description Answers without looking at the database. For a supervisor that restarts what hangs.
         */
        get: operations["getHealth"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/readyz": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Ask whether the program can do its work
         * @description The database answers and every migration is applied. For whatever sends requests here.
         */
        get: operations["getReadiness"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/account": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read your own account
         * @description How you can sign in, and where you are signed in now.
         */
        get: operations["getAccount"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/account/erasure": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Erase your account
         * @description Name, address, passwords, passkeys and sessions are gone for good, and you leave every organisation. What you recorded stays with your id, which now says only that it was a former member. The last owner of an organisation must hand it over first. Nobody is left to repeat it, so `Idempotency-Key` has no effect.
         */
        post: operations["eraseAccount"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/account/other-sessions/end": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * End all your sessions but this one
         * @description To repeat it is harmless, so `Idempotency-Key` is not needed.
         */
        post: operations["endOtherSessions"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/account/sessions/{sessionId}/end": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * End one of your sessions
         * @description Its next request is refused. A repeat finds nothing, so `Idempotency-Key` is not needed.
         */
        post: operations["endOneSession"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/api-keys": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the keys of programs
         * @description The latest first, with those that are revoked or have run out. For `owner` and `manager`.
         */
        get: operations["listApiKeys"];
        put?: never;
        /**
         * Make a key for a program
         * @description For `owner` and `manager`; nobody makes a key that may more than they may themselves. The answer tells the text of the key, this once.
         */
        post: operations["makeApiKey"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/api-keys/{keyId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read one key
         * @description What it may do, until when, and when it was last used; never its text. For `owner` and `manager`.
         */
        get: operations["getApiKey"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/api-keys/{keyId}/renewal": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Give a key a new text
         * @description The text before works beside it for the hours asked for, so that no program has to stop; never longer than it was made for. The answer tells the new text, this once. `If-Match` is required.
         */
        post: operations["renewApiKey"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/api-keys/{keyId}/revocation": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Revoke a key
         * @description The next request with it, old text or new, is refused like one with a key that never was. `If-Match` is required.
         */
        post: operations["revokeApiKey"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/audit": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List who changed what
         * @description The latest first, with what was and what is since. For owners and managers who see the whole fleet. Names are those of today; the record itself holds ids only.
         */
        get: operations["listAudit"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/audit/export": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Take the audit away
         * @description Every row of the chain in its order, one JSON object a line, up to the last at the moment of asking. To check it: take `hash` out of a row, write the rest as in RFC 8785, and its SHA-256 is `hash`; `previous` is the `hash` of the row before, `sequence` counts from 1 without gaps. Rows from before there was a chain are only in `GET /v1/audit`.
         */
        get: operations["exportAudit"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/due": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List what is due across the fleet
         * @description Obligations and, in the same order, findings and what else waits for somebody; these have no rule, so `kind`, `scheme`, `weight` and `suspended` leave them out. Ordered by `overdueAfter`. Things without a date (`standing=unknown`) and duties suspended while a vessel is laid up (`suspended=true`) are groups of their own, counted in every answer. The day asked is, by default, today in the organisation’s time zone; the pages after the first keep it. For a day gone by, or with `knownAt`, everything is worked out anew from the facts, which costs the whole fleet.
         */
        get: operations["listDue"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/due-dates/explain": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Work out due dates from facts that are not stored
         * @description For every role. Nothing is written, so a repeat is harmless and `Idempotency-Key` has no effect. Each rule in `/v1/rules` lists the facts, attributes and events that it reads.
         */
        post: operations["explainDueDates"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/evidence/{evidenceId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read about a photograph or paper
         * @description What it shows, where and when. It never changes.
         */
        get: operations["getEvidence"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/evidence/{evidenceId}/original": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Take a file as it came
         * @description Byte for byte, with all that it may tell of position and camera; always to be saved, never to be shown. For `owner`, `manager` and `surveyor`.
         */
        get: operations["takeOriginal"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/evidence/{evidenceId}/view": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Show a photograph
         * @description Drawn anew as JPEG, upright, without position, camera or anything else that the original may tell. A PDF, and a HEIC, are not shown: 404.
         */
        get: operations["showEvidence"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/facts": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Record many facts at once
         * @description For every role but `viewer`. At most 200, each in a transaction of its own: one that is refused does not take the others with it. Answers 200 with a row for each in the order asked, recorded or refused and why; a body that does not fit its schema is refused whole, before anything is recorded. With an `Idempotency-Key`, a repeat does what was left undone and nothing twice.
         */
        post: operations["recordFacts"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/finding-terms": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read what is agreed about findings
         * @description House conventions, which an owner or manager may change; no source.
         */
        get: operations["getFindingTerms"];
        /**
         * Change what is agreed about findings
         * @description For `owner` and `manager`. The dates that hang on it are right when this answers. `If-Match` is required.
         */
        put: operations["setFindingTerms"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/findings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List findings across the fleet
         * @description The most urgent first unless `order` says otherwise.
         */
        get: operations["listFindings"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/findings/{findingId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read a finding
         * @description As it stands now. Its story is at `…/entries`.
         */
        get: operations["getFinding"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /**
         * Change what is written of a finding
         * @description For every role but `viewer`. What it said before stays among its entries. `before_use` is not let down here: that takes a surveyor’s new sighting. `If-Match` is required.
         */
        patch: operations["changeFinding"];
        trace?: never;
    };
    "/v1/findings/{findingId}/entries": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List what was seen, said and done about a finding
         * @description In the order in which it was recorded. Entries are only ever added.
         */
        get: operations["listFindingEntries"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/findings/{findingId}/merge": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Merge a finding into another of the same vessel
         * @description For every role but `viewer`. Both keep their history; the other stays open. It can be reopened. `If-Match` is required.
         */
        post: operations["mergeFinding"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/findings/{findingId}/remedy": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Take the remedy a step on
         * @description Proposing, planning, beginning and reporting the work is for every role but `viewer`; `defer` and `accept` are for `owner` and `manager`; `enter_in_error` and `reopen` for these and `surveyor`. With `report_done` the facts about things aboard are recorded in the same act, or nothing is. `If-Match` is required.
         */
        post: operations["takeRemedyStep"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/findings/{findingId}/sightings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Say what was seen of a finding
         * @description For every role but `viewer`. `gone` ends it, asks for evidence, and is said by an owner, manager or surveyor who did not do the work. Seen again after its end, it is open again. `If-Match` is required.
         */
        post: operations["sightFinding"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/findings/{findingId}/split": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Make a finding of its own out of a part of one
         * @description For every role but `viewer`. Answers with the new finding; both say where it came from. `If-Match` is required.
         */
        post: operations["splitFinding"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/findings/{findingId}/verification": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Verify the work, or send it back
         * @description For `owner`, `manager` and `surveyor`, and not for whoever did the work, unless the organisation has switched the second pair of eyes off. `If-Match` is required.
         */
        post: operations["verifyFinding"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/fleet": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * See the whole fleet on its horizon
         * @description A row per vessel, by name: how much stands how, the oldest that is overdue, and a mark for each day on which something falls, up to the horizon.
         */
        get: operations["listFleet"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/fleet-samples": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List what some of a vessel’s things owe together
         * @description Under SOLAS one portable extinguisher of each type and year of manufacture aboard is discharged every five years, whichever it is: no single one owes it, so it is in no due list. Record it as `tested` with `test: discharge`. That it is counted by ship is from memory.
         */
        get: operations["listFleetSamples"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/identifiers/read": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Read the identifiers of a vessel
         * @description For every role. Decodes each and holds them against each other. Doubt never refuses: a number cannot be one only where its check digit or its form makes it impossible. Nothing is written, so a repeat is harmless and `Idempotency-Key` has no effect.
         */
        post: operations["readIdentifiers"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/invitations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the invitations that nobody has answered
         * @description For `owner` and `manager`. Those that have run out stay until they are withdrawn.
         */
        get: operations["listInvitations"];
        put?: never;
        /**
         * Invite somebody
         * @description For `owner` and `manager`; only an owner invites an owner. A letter with a link goes to the address. The link works once, for seven days, and only for who has signed in with that address.
         */
        post: operations["invitePerson"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/invitations/{invitationId}/withdrawal": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Withdraw an invitation
         * @description For `owner` and `manager`. `If-Match` is required.
         */
        post: operations["withdrawInvitation"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/invitations/acceptance": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Accept an invitation
         * @description For the person to whose verified address it went; for others it is not there. Works once; a repeat with the same `Idempotency-Key` has the first answer. Afterwards the session is at that organisation.
         */
        post: operations["acceptInvitation"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/invitations/preview": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Look at an invitation by its link
         * @description For whoever has the link. Unknown, used, withdrawn and run out look alike. Nothing is written, so a repeat is harmless and `Idempotency-Key` has no effect.
         */
        post: operations["previewInvitation"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/item-kinds": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the kinds of item
         * @description With the facts that such a thing usually has, where each date is usually found, and the attributes that rules ask for.
         */
        get: operations["listItemKinds"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/items/{itemId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read one item
         * @description What is written of it. Its dates are facts, and what follows from them are obligations.
         */
        get: operations["getItem"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /**
         * Change what is written of an item
         * @description For `owner` and `manager`. What is absent stays; `null` takes it away. `If-Match` is required. Dates are facts and are not changed here.
         */
        patch: operations["changeItem"];
        trace?: never;
    };
    "/v1/items/{itemId}/facts": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the facts about an item
         * @description In the order in which they were learned. A struck-out fact stays, and `struckOutBy` names the correction.
         */
        get: operations["listFacts"];
        put?: never;
        /**
         * Record a fact about an item
         * @description For every role but `viewer`. Facts are only ever added; a wrong one is struck out by another that names it in `corrects`, and with `retracts` by one that puts nothing in its place. A fact is an addition, so `If-Match` is not required; where it is sent, it is honoured: 412 when the item has changed since. The answer carries the item’s obligations as they stand after the fact, with their reasoning; its `ETag` is the item’s new version.
         */
        post: operations["recordFact"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/items/{itemId}/obligations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read what is due on an item, and why
         * @description By `overdueAfter`; what has no date to go by comes last and says what is missing. For a day gone by, or with `knownAt`, it is worked out anew from the facts.
         */
        get: operations["listObligations"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/limitations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List limitations
         * @description What could not be examined, in the order in which it was written.
         */
        get: operations["listLimitations"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/limitations/{limitationId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read a limitation
         * @description With the version that a change of it must name.
         */
        get: operations["getLimitation"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/limitations/{limitationId}/answers": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Answer a limitation on a visit
         * @description For `owner`, `manager` and `surveyor`. Lifting it needs an open visit on which somebody looked. `If-Match` is required.
         */
        post: operations["answerLimitation"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/organisation": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read the organisation you are at
         * @description Its name and its time zone.
         */
        get: operations["getOrganisation"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /**
         * Change the organisation’s name or time zone
         * @description For `owner`. Vessels keep their own time zones. `If-Match` is required.
         */
        patch: operations["changeOrganisation"];
        trace?: never;
    };
    "/v1/organisation/leaving": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Leave the organisation you are at
         * @description Everybody may but its last owner. What you recorded stays. A repeat finds you gone already.
         */
        post: operations["leaveOrganisation"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/organisations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the organisations you belong to
         * @description By name, each with your role in it. For a person who has signed in.
         */
        get: operations["listOrganisations"];
        put?: never;
        /**
         * Found an organisation
         * @description For a person who has signed in. You own it, and your session is at it. Names need not be unique.
         */
        post: operations["createOrganisation"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/overrides/{overrideId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read one figure of your own
         * @description Who set it, when, why and by which document; and how it ended, if it has.
         */
        get: operations["getOverride"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/overrides/{overrideId}/ending": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * End a figure of your own
         * @description For `owner` and `manager`. It counts no more from today at the vessel’s place; what counted before stays as it was. `If-Match` is required.
         */
        post: operations["endOverride"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/people": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List who works here
         * @description Those who belong to the organisation now, in the order in which they came.
         */
        get: operations["listPeople"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/people/{personId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read what somebody may here
         * @description Only who belongs to the organisation now.
         */
        get: operations["getPerson"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /**
         * Change what somebody may
         * @description For `owner` and `manager`; only an owner makes an owner or changes one. The last owner stays one. Their next request goes by what is granted now. `If-Match` is required.
         */
        patch: operations["changePerson"];
        trace?: never;
    };
    "/v1/people/{personId}/removal": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Remove somebody
         * @description For `owner` and `manager`; only an owner removes an owner, and never the last one. Their next request is refused; what they recorded stays. `If-Match` is required.
         */
        post: operations["removePerson"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/referrals": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List referrals
         * @description Specialists who must look closer, in the order in which they were asked.
         */
        get: operations["listReferrals"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/referrals/{referralId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read a referral
         * @description With the version that a change of it must name.
         */
        get: operations["getReferral"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/referrals/{referralId}/result": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Report what the specialist found
         * @description For every role but `viewer`. What is not right is entered as a finding besides. `If-Match` is required.
         */
        post: operations["reportReferral"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/rule-changes/{changeId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Ask how far a change of your own rule is
         * @description Dates that it has not come to yet are still those of before, unless something was recorded of their thing meanwhile.
         */
        get: operations["getRuleChange"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/rules": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the rules
         * @description Each with its publication and clause, how far that was checked, and what it reads. A rule shown as common practice has no source. Your own rules come last, ended ones too.
         */
        get: operations["listRules"];
        put?: never;
        /**
         * Add a rule of your own
         * @description For `owner` and `manager` who see the whole fleet. It gives dates like a published rule, under a weight that is never law, from the day it takes effect. What it touches is worked out in the background: `/v1/rule-changes/{changeId}` says how far that is.
         */
        post: operations["addRule"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/rules/{ruleId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read one rule
         * @description The rule in words, where it stands, what resets its clock, and the facts, attributes and events that it reads; your own rules with their versions and, for `If-Match`, an `ETag`.
         */
        get: operations["getRule"];
        /**
         * Lay down another version of your own rule
         * @description For `owner` and `manager` who see the whole fleet. The body is the whole text of the version, with the day from which it counts; what applied before stays known. `If-Match` is required. A published rule cannot be changed.
         */
        put: operations["changeRule"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/rules/{ruleId}/ending": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * End your own rule
         * @description For `owner` and `manager` who see the whole fleet. It counts no more from the day named, today or later or earlier; what applied before stays known, and a later version can take it up again. `If-Match` is required.
         */
        post: operations["endRule"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/safety-notices": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the safety notices
         * @description By their day, the latest first; withdrawn ones stay. Each says how many things still wait for an answer.
         */
        get: operations["listSafetyNotices"];
        put?: never;
        /**
         * Enter a maker’s safety notice
         * @description For `owner` and `manager` who may see the whole fleet. Everything aboard that it covers or may cover has an obligation when this answers; what is put aboard later is matched then. Makers and models are compared without case, spaces, punctuation and accents; serial numbers by the number that counts up, with what stands before and after it. What cannot be compared, or is not on record, *may* be affected: it is never left out.
         */
        post: operations["enterSafetyNotice"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/safety-notices/{noticeId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read one safety notice
         * @description What it says and how many things still wait for an answer; which ones, `…/items` says.
         */
        get: operations["getSafetyNotice"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/safety-notices/{noticeId}/items": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the things that a safety notice is about
         * @description What still waits for an answer, and what was answered, with every answer given. Worked out from what is on record, so `asOf` and `knownAt` answer for any day and any knowledge. The day asked is, by default, today in the organisation’s time zone.
         */
        get: operations["listNoticeItems"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/safety-notices/{noticeId}/items/{itemId}/answers": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Answer a safety notice for one thing
         * @description For every role but `viewer`. Answers are only ever added; a wrong one is struck out by another that names it in `corrects`. An answer is an addition, so `If-Match` is not asked for. A serial number that was read is written on the item, and a replacement is recorded as a fact, in the same transaction. What is asked before the next use cannot be put off.
         */
        post: operations["answerSafetyNotice"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/safety-notices/{noticeId}/withdrawal": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Withdraw a safety notice
         * @description For `owner` and `manager` who may see the whole fleet: its publisher took it back, or it was entered in error. Every obligation of it ends today; what was owed and answered until then stays known. `If-Match` is required.
         */
        post: operations["withdrawSafetyNotice"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/safety-notices/matches": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * See what a safety notice would bear on
         * @description For every role; the same body as for entering it. Nothing is written, so a repeat is harmless and `Idempotency-Key` has no effect.
         */
        post: operations["matchSafetyNotice"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/saved-views": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the saved views
         * @description By name: those of whoever asks, and those that are shared in the organisation.
         */
        get: operations["listSavedViews"];
        put?: never;
        /**
         * Save a view
         * @description For every role but `viewer`. A shared one is seen by everybody in the organisation, any other only by whoever saved it.
         */
        post: operations["saveView"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/saved-views/{viewId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read one saved view
         * @description Somebody else’s own view is not here, like one that never was.
         */
        get: operations["getSavedView"];
        put?: never;
        post?: never;
        /**
         * Remove a saved view
         * @description For every role but `viewer`. `If-Match` is required. It can be brought back: see the restoration.
         */
        delete: operations["removeView"];
        options?: never;
        head?: never;
        /**
         * Change a saved view
         * @description For every role but `viewer`. What is absent stays; `filters` is replaced whole. No longer shared, it is the own one of whoever changed it. `If-Match` is required.
         */
        patch: operations["changeView"];
        trace?: never;
    };
    "/v1/saved-views/{viewId}/restoration": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Bring a removed view back
         * @description For every role but `viewer`. Under the address that it had. `If-Match` is required. One that was not removed stays as it is.
         */
        post: operations["restoreView"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/schemes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the schemes
         * @description Law first. What stands behind each is its weight; those marked `always` apply to every vessel.
         */
        get: operations["listSchemes"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/search": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Find a vessel, a thing aboard or a rule
         * @description A vessel by name, type, home port and identifiers; a thing by what it is called, kind, place, maker, model and serial number, and its vessel’s words besides; a published rule by what it asks and where it stands. Whole words come first.
         */
        get: operations["searchRegister"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/season": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read when the season is
         * @description The months in which the boats are used most, a band on the horizon; `null` where nothing is said.
         */
        get: operations["getSeason"];
        /**
         * Say when the season is
         * @description For `owner` and `manager`. `null` says nothing of one. It moves no date of a rule: it is drawn behind them. Findings to be dealt with this season are due on its last day. `If-Match` is required.
         */
        put: operations["setSeason"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/session": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Ask whom the credential stands for
         * @description The person, the organisation they are at and what they may there; or the organisation of an API key.
         */
        get: operations["getSession"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/session/end": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Sign out
         * @description Ends the session of the cookie and takes the cookie away. An API key has no session to end. To repeat it is harmless, so `Idempotency-Key` is not needed.
         */
        post: operations["endSession"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/session/organisation": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Go to another organisation
         * @description One you belong to; from now on the session reads and writes there. To repeat it is harmless, so `Idempotency-Key` has no effect.
         */
        post: operations["switchOrganisation"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/share-links": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the links that outsiders have
         * @description The latest first, with those that are revoked or have run out. For `owner` and `manager`.
         */
        get: operations["listShareLinks"];
        put?: never;
        /**
         * Show vessels or the due list to an outsider
         * @description Whoever has the link sees the particulars of these vessels and what is due aboard, as it stands when they look, and nothing else; without `vesselIds` that of the whole fleet. A link for a yard shows the work it is given instead and reports it done; a link for the owner of one vessel also says yes or no to estimates. For `owner` and `manager`. The answer tells the text, this once.
         */
        post: operations["makeShareLink"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/share-links/{linkId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read one link
         * @description What it shows, until when, and how often it was looked at; never its text. For `owner` and `manager`.
         */
        get: operations["getShareLink"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/share-links/{linkId}/looks": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List when a link was looked at
         * @description The latest first, with the browser as it called itself; no address is kept. For `owner` and `manager`.
         */
        get: operations["listLooksAtLink"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/share-links/{linkId}/revocation": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Revoke a link
         * @description Whoever opens it next sees what they would see of one that never was. `If-Match` is required.
         */
        post: operations["revokeShareLink"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/shared/answers": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Say yes or no to an estimate by a link
         * @description For the owner who has the link, in the very words that were shown; it is written down with name and day, and decides nothing by itself. A repeat is told by how it stands: 409, so `Idempotency-Key` has no effect. Unknown, revoked and run out look alike.
         */
        post: operations["answerByLink"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/shared/look": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Look at what a link shows
         * @description For whoever has the link. Unknown, revoked and run out look alike. Each look is written down, so a repeat is another look and `Idempotency-Key` has no effect. The text goes in the body: an address is kept in too many places.
         */
        post: operations["lookAtShared"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/shared/reports": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Report work by a link
         * @description For a yard that has the link: work that it was given is done, with a photograph if it likes. Somebody of the house looks and verifies. A repeat is told by how it stands: 409, so `Idempotency-Key` has no effect. Unknown, revoked and run out look alike.
         */
        post: operations["reportByLink"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/survey-routes/{craft}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read the route of a sort of boat
         * @description The organisation’s own, or the house route: common practice, no source.
         */
        get: operations["getSurveyRoute"];
        /**
         * Set the route of a sort of boat
         * @description For `owner`, `manager` and `surveyor`. Visits that have begun keep the route they walk. `If-Match` is required.
         */
        put: operations["setSurveyRoute"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/uploads/{uploadId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read how far a file has come
         * @description After a cut: `received` bytes are safe, and the next piece begins there. An upload is forgotten after a week, what was kept of it is not.
         */
        get: operations["getUpload"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /**
         * Send the next piece of a file
         * @description What is acknowledged is safe. `If-Match` is required, so that no piece counts twice: after a cut read the upload and go on from `received`. With the last piece the file is looked at by its content, whatever its name was; if it has the hash that was announced and is a photograph or a PDF that can be opened within the limits, it is `kept`, else `refused` with the reason, and the answer says which. Was the last answer lost on the way while the state is still `receiving`, send an empty piece.
         */
        patch: operations["addPiece"];
        trace?: never;
    };
    "/v1/vessel-templates": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the templates that a vessel’s list can be started from
         * @description What such a boat often has aboard, invented for this program: no source, and not what any law or certificate asks for. Confirm each row, leave out what is not aboard, and send the rest to `POST /v1/vessels/{vesselId}/items/batch`.
         */
        get: operations["listVesselTemplates"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/vessels": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the register
         * @description Every vessel of the organisation, by name.
         */
        get: operations["listVessels"];
        put?: never;
        /**
         * Put a vessel on the register
         * @description For `owner` and `manager`. Without `timeZone` she keeps the organisation’s.
         */
        post: operations["createVessel"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/vessels/{vesselId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read one vessel
         * @description Her particulars. What is not known is absent.
         */
        get: operations["getVessel"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /**
         * Change a vessel’s particulars
         * @description For `owner` and `manager`. What is absent stays; `null` takes it away. `If-Match` is required. New schemes bring their obligations at once.
         */
        patch: operations["changeVessel"];
        trace?: never;
    };
    "/v1/vessels/{vesselId}/events": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List what happened to a vessel and what is planned
         * @description The latest first.
         */
        get: operations["listEvents"];
        put?: never;
        /**
         * Record what happened to a vessel, or is planned
         * @description For every role but `viewer`. A day ahead must say `planned`. Obligations that depend on it are right when this answers.
         */
        post: operations["recordEvent"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/vessels/{vesselId}/evidence": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List photographs and papers
         * @description The latest taken first.
         */
        get: operations["listEvidence"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/vessels/{vesselId}/findings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Enter something that is not right
         * @description For every role but `viewer`. Ask `…/findings/alike` first: what is on record already is better seen again than entered twice. Its urgency gives it a date.
         */
        post: operations["enterFinding"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/vessels/{vesselId}/findings/alike": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Ask what is on record already of something just found
         * @description By the thing, the place and the words, with the reason for each; open ones and ended ones. Somebody decides.
         */
        get: operations["listAlikeFindings"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/vessels/{vesselId}/items": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the things aboard a vessel
         * @description In the order in which they were added; withdrawn ones too.
         */
        get: operations["listItems"];
        put?: never;
        /**
         * Add a thing to a vessel’s list
         * @description For `owner` and `manager`. Its obligations stand from the start, without a date until facts come.
         */
        post: operations["addItem"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/vessels/{vesselId}/items/batch": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Add many things to a vessel’s list at once
         * @description For `owner` and `manager`. At most 100, in one transaction: all of them or none. Answers in the order asked. `GET /v1/vessel-templates` has rows to start from.
         */
        post: operations["addItems"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/vessels/{vesselId}/overrides": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the figures of your own that count for a vessel
         * @description Hers and her items’, the latest to take effect first. Ended ones stay.
         */
        get: operations["listOverrides"];
        put?: never;
        /**
         * Put your own figure in place of a published interval
         * @description For `owner` and `manager`. Advice gives way to the figure; law and a certificate’s terms can be tightened, never loosened, and stay on the list beside it. The obligation carries the figure’s weight, and its explanation says who, when, why and the published figure.
         */
        post: operations["setOverride"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/vessels/{vesselId}/situations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List what a vessel has been doing
         * @description The latest first. Past situations stay.
         */
        get: operations["listSituations"];
        put?: never;
        /**
         * State what a vessel is doing
         * @description For `owner` and `manager`. It holds from the day `from` until the next one begins; earlier situations stay on record.
         */
        post: operations["recordSituation"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/vessels/{vesselId}/uploads": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Announce a file
         * @description A photograph (JPEG, PNG, WebP, AVIF, HEIC) or a PDF: its length, its hash, and what it shows. Its bytes follow in pieces. For every role but `viewer`; on a survey visit for those who keep it.
         */
        post: operations["startUpload"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/vessels/{vesselId}/visits": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Begin a survey visit
         * @description For `owner`, `manager` and `surveyor`. The route is kept as it is on that day; every open finding and every limitation of hers stands on it.
         */
        post: operations["startVisit"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/visits": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List survey visits
         * @description The latest first.
         */
        get: operations["listVisits"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/visits/{visitId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read a visit
         * @description What it says place by place is at `…/walk`.
         */
        get: operations["getVisit"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /**
         * Change what is written of an attendance
         * @description For `owner`, `manager` and `surveyor`, while the visit is open. `If-Match` is required.
         */
        patch: operations["changeVisit"];
        trace?: never;
    };
    "/v1/visits/{visitId}/addenda": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Correct a sealed visit by an addendum
         * @description For `owner`, `manager` and `surveyor`, once the visit is completed. The sealed text stays as it is.
         */
        post: operations["addAddendum"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/visits/{visitId}/completion": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Complete and seal a visit
         * @description For `owner`, `manager` and `surveyor`. Refused with everything that is unanswered and where: places, open findings, limitations. Sealed, nothing of it changes. `If-Match` is required.
         */
        post: operations["completeVisit"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/visits/{visitId}/limitations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Say what could not be examined, and why
         * @description For `owner`, `manager` and `surveyor`. It is not assessed, never good, and stands on the route of the next visits until one has looked.
         */
        post: operations["imposeLimitation"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/visits/{visitId}/readings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Write down a reading at a survey point
         * @description For `owner`, `manager` and `surveyor`. A moisture meter compares; it does not measure water content. What was not measured is a gap, never nought.
         */
        post: operations["takeReading"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/visits/{visitId}/referrals": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Ask for a specialist to look closer
         * @description For `owner`, `manager` and `surveyor`. It has a day and a place on the due list until its result is reported.
         */
        post: operations["askSpecialist"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/visits/{visitId}/sealed-copy": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Take the sealed copy of a visit away
         * @description The text that was sealed with its hash, and the addenda. Of a visit that is still open there is none: 404. Whoever the client is, it can always be taken.
         */
        get: operations["getSealedCopy"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/visits/{visitId}/walk": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read the route of a visit, place by place
         * @description With every open finding and limitation where it lies, what was answered, and what keeps the visit from being completed.
         */
        get: operations["getWalk"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/visits/{visitId}/zones": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Answer a place of the route
         * @description For `owner`, `manager` and `surveyor`. Answered again, the last counts and the earlier stays.
         */
        post: operations["answerZone"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
}
export type webhooks = Record<string, never>;
export interface components {
    schemas: {
        /**
         * @example {
         *       "id": "5a0c9b2e-0f6b-4a53-9c35-0d8f5b7e2a11",
         *       "name": "Ines Falk",
         *       "email": "ines@curlew.example",
         *       "hasPassword": true,
         *       "secondFactor": false,
         *       "passkeys": [],
         *       "sessions": []
         *     }
         */
        Account: {
            email: string;
            hasPassword: boolean;
            id: components["schemas"]["Id"];
            name: string;
            passkeys: components["schemas"]["Passkey"][];
            secondFactor: boolean;
            sessions: components["schemas"]["OpenSession"][];
        };
        /**
         * @example {
         *       "email": "ines@curlew.example"
         *     }
         */
        AccountErasure: {
            /** @description Your own address, so that it is meant. */
            email: string;
        };
        /**
         * @example {
         *       "kind": "service",
         *       "words": "Service at an approved station"
         *     }
         */
        Action: {
            /** @enum {string} */
            kind: "service" | "inspect" | "test" | "replace" | "withdraw" | "overhaul" | "stop_using" | "return";
            words: string;
        };
        AddedItems: {
            items: components["schemas"]["Item"][];
        };
        /**
         * @example {
         *       "id": "0198c5a6-3b10-7e21-9a3b-4c5d6e7f8099",
         *       "name": "Ines Vale",
         *       "words": "The serial number is 4471, not 4417.",
         *       "reason": "Misread on the day.",
         *       "recordedAt": "2026-11-25T09:00:00Z",
         *       "recordedBy": "person:0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e"
         *     }
         */
        Addendum: {
            id: components["schemas"]["Id"];
            /** @description Who adds it. */
            name: string;
            reason: string;
            recordedAt: components["schemas"]["Instant"];
            recordedBy: string;
            words: string;
        };
        /**
         * @example {
         *       "finding": {
         *         "id": "0198c5a5-2f10-7d21-8a3b-4c5d6e7f8091",
         *         "number": 12,
         *         "vessel": {
         *           "id": "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a",
         *           "name": "Marsh Harrier"
         *         },
         *         "zone": "gas_installation",
         *         "what": "Gas hose at the cooker cracked where it bends",
         *         "hazard": "fire_and_gas",
         *         "trade": "gas_engineer",
         *         "urgency": "before_use",
         *         "urgencySince": "2026-11-20",
         *         "firstSeenOn": "2026-11-20",
         *         "lastSeenOn": "2026-11-20",
         *         "lastSeen": "new",
         *         "remedy": {
         *           "state": "found"
         *         },
         *         "reads": "Found; nothing decided yet",
         *         "due": {
         *           "source": "finding",
         *           "on": "2026-11-20",
         *           "because": "To be dealt with before she is used again: due since it was said.",
         *           "standing": "overdue"
         *         },
         *         "mayBe": [
         *           "proposed",
         *           "planned",
         *           "begun",
         *           "reported_done",
         *           "entered_in_error"
         *         ]
         *       },
         *       "because": [
         *         "the same place",
         *         "the same words: hose"
         *       ]
         *     }
         */
        AlikeFinding: {
            because: string[];
            finding: components["schemas"]["Finding"];
        };
        /** @description At most ten, the likest first. */
        AlikeFindings: {
            items: components["schemas"]["AlikeFinding"][];
            nextCursor: null;
        };
        /**
         * @example {
         *       "answer": {
         *         "answer": "done",
         *         "on": "2026-10-01",
         *         "doneBy": {
         *           "name": "Ines Vale",
         *           "capacity": "gas_engineer"
         *         },
         *         "evidence": "certificate",
         *         "reference": "W-118",
         *         "replaced": true,
         *         "serialRead": "AC0001",
         *         "id": "0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d",
         *         "itemId": "0198c5a3-11d2-7f40-8b6e-0c9d3e2f1a4b",
         *         "corrects": null,
         *         "struckOutBy": null,
         *         "recordedAt": "2026-10-02T08:12:00Z",
         *         "recordedBy": "session:0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e"
         *       },
         *       "asOf": "2026-11-25",
         *       "obligations": [
         *         {
         *           "ruleId": "raft-solas",
         *           "duty": "service",
         *           "scheme": "solas",
         *           "weight": "law",
         *           "action": {
         *             "kind": "service",
         *             "words": "Have the liferaft serviced at an approved station"
         *           },
         *           "dueOn": "2026-11-04",
         *           "overdueAfter": "2026-11-04",
         *           "latestPermittedOn": "2027-04-04",
         *           "windows": [],
         *           "standing": "overdue",
         *           "explanation": {
         *             "sentence": "Serviced on 4 November 2025. An inflatable liferaft is serviced at intervals of not more than 12 months, so it is due by 4 November 2026.",
         *             "source": {
         *               "publication": "SOLAS",
         *               "clause": "III/20.8.1",
         *               "address": "http://imorules.com/Chunk1853486106.html",
         *               "status": "read"
         *             },
         *             "binds": {
         *               "limit": "12 months after the last service",
         *               "on": "2026-11-04",
         *               "factIds": [
         *                 "0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d"
         *               ]
         *             },
         *             "alsoCounted": [],
         *             "setAside": [],
         *             "assumed": [],
         *             "doubts": [],
         *             "missing": [],
         *             "wouldChangeIt": [
         *               {
         *                 "act": "serviced",
         *                 "by": [
         *                   "liferaft_service_station"
         *                 ],
         *                 "plus": "P12M",
         *                 "ifDoneOn": "2026-11-25",
         *                 "movesTo": "2027-11-25"
         *               }
         *             ]
         *           }
         *         }
         *       ]
         *     }
         */
        AnsweredNotice: {
            answer: components["schemas"]["NoticeAnswer"];
            asOf: components["schemas"]["CalendarDay"];
            /** @description The item’s, as they stand after the answer. */
            obligations: components["schemas"]["Obligation"][];
        };
        /**
         * @example {
         *       "id": "0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e",
         *       "name": "tide board in the office",
         *       "role": "surveyor",
         *       "permissions": [
         *         "read",
         *         "record_facts"
         *       ],
         *       "endsWith": "x3Qw",
         *       "madeBy": "person:5a0c9b2e-0f6b-4a53-9c35-0d8f5b7e2a11",
         *       "createdAt": "2026-11-25T08:12:00Z",
         *       "expiresAt": "2027-05-31T21:59:59Z",
         *       "version": 1
         *     }
         */
        ApiKey: {
            createdAt: components["schemas"]["Instant"];
            /** @description The last characters of its text, to tell keys apart. */
            endsWith?: string;
            expiresAt: components["schemas"]["Instant"];
            id: components["schemas"]["Id"];
            /**
             * Format: date-time
             * @description To the minute; absent while it never was.
             * @example 2026-11-25T08:12:00Z
             */
            lastUsedAt?: string;
            /** @description The credential that made it; absent where it was made at the machine. */
            madeBy?: string;
            name: string;
            permissions?: components["schemas"]["KeyPermissions"];
            /**
             * Format: date-time
             * @description Until then the text before the present one works too.
             * @example 2026-11-25T08:12:00Z
             */
            previousUntil?: string;
            revokedAt?: components["schemas"]["Instant"];
            role: components["schemas"]["RoleCode"];
            /** @description Its `ETag`. */
            version: number;
            vesselIds?: components["schemas"]["VesselIds"];
        };
        ApiKeyPage: {
            items: components["schemas"]["ApiKey"][];
            /** @description Asks for the next page; `null` at the end. */
            nextCursor: string | null;
        };
        /**
         * @example {
         *       "overlapHours": 24,
         *       "expiresAt": "2027-05-31T21:59:59Z"
         *     }
         */
        ApiKeyRenewal: {
            /**
             * Format: date-time
             * @description At most 366 days ahead.
             * @example 2026-11-25T08:12:00Z
             */
            expiresAt: string;
            /**
             * @description How long the text before works too; 0: it is over at once.
             * @default 24
             */
            overlapHours: number;
        };
        /**
         * @example {
         *       "reason": "It stood in a script that was published."
         *     }
         */
        ApiKeyRevocation: {
            reason?: string;
        };
        /**
         * @example {
         *       "id": "0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e",
         *       "name": "tide board in the office",
         *       "role": "surveyor",
         *       "permissions": [
         *         "read",
         *         "record_facts"
         *       ],
         *       "endsWith": "x3Qw",
         *       "madeBy": "person:5a0c9b2e-0f6b-4a53-9c35-0d8f5b7e2a11",
         *       "createdAt": "2026-11-25T08:12:00Z",
         *       "expiresAt": "2027-05-31T21:59:59Z",
         *       "version": 1,
         *       "key": "gbk_…"
         *     }
         */
        ApiKeyWithText: {
            createdAt: components["schemas"]["Instant"];
            /** @description The last characters of its text, to tell keys apart. */
            endsWith?: string;
            expiresAt: components["schemas"]["Instant"];
            id: components["schemas"]["Id"];
            /** @description The text to send as `Authorization: Bearer …`. Told only this once: a repeat does not have it. */
            key?: string;
            /**
             * Format: date-time
             * @description To the minute; absent while it never was.
             * @example 2026-11-25T08:12:00Z
             */
            lastUsedAt?: string;
            /** @description The credential that made it; absent where it was made at the machine. */
            madeBy?: string;
            name: string;
            permissions?: components["schemas"]["KeyPermissions"];
            /**
             * Format: date-time
             * @description Until then the text before the present one works too.
             * @example 2026-11-25T08:12:00Z
             */
            previousUntil?: string;
            revokedAt?: components["schemas"]["Instant"];
            role: components["schemas"]["RoleCode"];
            /** @description Its `ETag`. */
            version: number;
            vesselIds?: components["schemas"]["VesselIds"];
        };
        Attribute: {
            choices?: {
                value: string;
                words: string;
            }[];
            /**
             * @description `months` and `hours` are whole numbers above nought; `date` a day, a month or a year.
             * @enum {string}
             */
            is: "months" | "hours" | "yes_no" | "date" | "choice";
            /**
             * @description The key under `attributes`.
             * @example seasonMonths
             */
            name: string;
            /** @enum {string} */
            type: "string" | "number" | "boolean";
            whereFound: string;
            words: string;
        };
        /**
         * @description Values a rule asks for and no fact holds; each rule lists those that it reads.
         * @example {
         *       "seasonMonths": 6
         *     }
         */
        Attributes: {
            [key: string]: string | number | boolean;
        };
        /** @description The vessel and the thing that it is about, where there is one. */
        AuditAbout: {
            itemId?: components["schemas"]["Id"];
            itemLabel?: string;
            vesselId?: components["schemas"]["Id"];
            vesselName?: string;
        };
        /** @description Who answers for the change. */
        AuditActor: {
            id: components["schemas"]["Id"];
            /** @description `person`, `session`, `api_key`, `share_link` for an outsider, or `upkeep` for the program itself. */
            kind: string;
            /** @description Absent where there is none any more. */
            name?: string;
        };
        /**
         * @example {
         *       "id": "0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d",
         *       "at": "2026-11-25T08:12:00.000Z",
         *       "role": "manager",
         *       "credential": "api_key:0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e",
         *       "requestId": "6f1f2a52-7c57-4c3e-9d1b-3a4d5c6e7f80",
         *       "verb": "change_vessel",
         *       "subject": "vessel",
         *       "subjectId": "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a",
         *       "before": {
         *         "rig": "sloop"
         *       },
         *       "after": {
         *         "rig": "ketch"
         *       },
         *       "actor": {
         *         "kind": "api_key",
         *         "id": "0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e",
         *         "name": "office"
         *       },
         *       "about": {
         *         "vesselId": "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a",
         *         "vesselName": "Marsh Harrier"
         *       },
         *       "sequence": 17,
         *       "hash": "3a5e0c2f9b1d48e7a6c0f2d4b8e91735c6a8f0e2d4b69718a3c5e7f90b2d4f68"
         *     }
         */
        AuditEntry: {
            about: components["schemas"]["AuditAbout"];
            actor: components["schemas"]["AuditActor"];
            /** @description As it is since; absent where nothing is left. */
            after?: {
                [key: string]: unknown;
            };
            at: components["schemas"]["Instant"];
            /** @description As it was; absent where there was nothing. */
            before?: {
                [key: string]: unknown;
            };
            /** @description The session or key that was used, `kind:id`. */
            credential?: string;
            /** @description SHA-256 over the exported row without `hash`, written as in RFC 8785. */
            hash?: string;
            id: components["schemas"]["Id"];
            requestId: string;
            /** @description As what they were allowed it. */
            role?: string;
            /** @description Its place in the chain; absent for what is older than the chain. */
            sequence?: number;
            /**
             * @description The kind of thing that was changed.
             * @example vessel
             */
            subject: string;
            subjectId: components["schemas"]["Id"];
            /**
             * @description What was done.
             * @example change_vessel
             */
            verb: string;
        };
        AuditPage: {
            items: components["schemas"]["AuditEntry"][];
            /** @description Asks for the next page; `null` at the end. */
            nextCursor: string | null;
        };
        /**
         * @example {
         *       "id": "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a",
         *       "name": "Curlew Sailing School",
         *       "timeZone": "Europe/Oslo",
         *       "role": "owner"
         *     }
         */
        Belonging: {
            id: components["schemas"]["Id"];
            name: string;
            role: components["schemas"]["RoleCode"];
            timeZone: string;
        };
        BelongingPage: {
            items: components["schemas"]["Belonging"][];
            /** @description Asks for the next page; `null` at the end. */
            nextCursor: string | null;
        };
        /**
         * Format: date
         * @description A day, `YYYY-MM-DD`, in the vessel’s own place.
         * @example 2027-03-18
         */
        CalendarDay: string;
        CallSign: {
            /** @description What is doubtful about it by itself. */
            doubts: string[];
            /** @enum {string} */
            identifier: "callSign";
            /** @description What it says, as a sentence. */
            inWords: string;
            /** @enum {string} */
            kind: "decoded";
            sign: string;
            /** @description `null` where no series of our table has it. */
            state: string | null;
            /** @description As it was given. */
            text: string;
        };
        CountedLimit: {
            factIds: string[];
            limit: string;
            on: components["schemas"]["CalendarDay"] | null;
        };
        /**
         * @description Which sort of boat: it decides the places of the route.
         * @enum {string}
         */
        CraftCode: "sailing_yacht" | "motor_boat" | "open_boat";
        /** @description One of the item’s obligations as it stands after the fact. */
        DateAfter: {
            dueOn?: components["schemas"]["CalendarDay"];
            duty: string;
            ruleId: string;
            standing: components["schemas"]["StandingCode"];
            /** @description What is to be done. */
            words: string;
        };
        /** @description First and last day; `null` where no end is on record. */
        DaySpan: {
            from: components["schemas"]["CalendarDay"];
            to: components["schemas"]["CalendarDay"] | null;
        };
        DoneBy: {
            /**
             * @description In what capacity; a rule’s clock is reset only by the competence it asks for.
             * @enum {string}
             */
            capacity?: "owner_or_skipper" | "crew" | "competent_person" | "surveyor" | "marine_inspector" | "rigger" | "gas_engineer" | "marine_engineer" | "electrician" | "sailmaker" | "yard" | "liferaft_service_station" | "lifejacket_service_station" | "hydrostatic_release_service_station" | "shore_based_maintenance_provider" | "radio_surveyor" | "fire_equipment_technician" | "compass_adjuster" | "measurement_surveyor" | "registered_examiner" | "maker";
            certificate?: string;
            name?: string;
        };
        DueList: {
            asOf: components["schemas"]["CalendarDay"];
            /** @description On that day, of what `vesselId`, `kind`, `scheme` and `weight` leave: however it stands and however far ahead. */
            counts: {
                due: components["schemas"]["WeightCounts"];
                in_date: components["schemas"]["WeightCounts"];
                overdue: components["schemas"]["WeightCounts"];
                /** @description Suspended on the day, as the vessel is laid up in the way the clause says: counted here alone, whatever the date. What is due of it must be done before she returns to service. */
                suspended: {
                    certificate: number;
                    common_practice: number;
                    insurer: number;
                    law: number;
                    maker: number;
                    own: number;
                };
                unknown: components["schemas"]["WeightCounts"];
            };
            items: (components["schemas"]["DueRow"] | components["schemas"]["DueMatter"])[];
            matters: components["schemas"]["MatterCounts"];
            /** @description Asks for the next page; `null` at the end. */
            nextCursor: string | null;
            vesselsOverdue: number;
        };
        /**
         * @description What waits for somebody besides what rules ask.
         * @example {
         *       "source": "finding",
         *       "id": "0198c5a5-2f10-7d21-8a3b-4c5d6e7f8091",
         *       "vessel": {
         *         "id": "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a",
         *         "name": "Marsh Harrier"
         *       },
         *       "zone": "gas_installation",
         *       "label": "Gas hose at the cooker cracked where it bends",
         *       "action": {
         *         "words": "Decide what is to be done"
         *       },
         *       "urgency": "before_use",
         *       "trade": "gas_engineer",
         *       "dueOn": "2026-11-20",
         *       "overdueAfter": "2026-11-20",
         *       "standing": "overdue",
         *       "days": -5,
         *       "sentence": "To be dealt with before she is used again: due since it was said."
         *     }
         */
        DueMatter: {
            action: components["schemas"]["MatterAction"];
            days?: number;
            dueOn?: components["schemas"]["CalendarDay"];
            /**
             * Format: uuid
             * @description Of the finding, referral or limitation.
             * @example 0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a
             */
            id: string;
            label: string;
            overdueAfter?: components["schemas"]["CalendarDay"];
            responsible?: string;
            /** @description Why that day. */
            sentence: string;
            /**
             * @description `finding`: something not right. `deferral`: the review of what was put off or accepted. `referral`: a specialist who must look closer. `limitation`: what nobody could examine.
             * @enum {string}
             */
            source: "finding" | "deferral" | "referral" | "limitation";
            standing: components["schemas"]["StandingCode"];
            trade?: components["schemas"]["TradeCode"];
            urgency?: components["schemas"]["UrgencyCode"];
            vessel: {
                id: components["schemas"]["Id"];
                name: string;
            };
            zone: string;
        };
        /**
         * @example {
         *       "source": "obligation",
         *       "vessel": {
         *         "id": "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a",
         *         "name": "Marsh Harrier"
         *       },
         *       "item": {
         *         "id": "0198c5a3-11d2-7f40-8b6e-0c9d3e2f1a4b",
         *         "kind": "liferaft",
         *         "label": "Liferaft, 6 persons",
         *         "quantity": 1
         *       },
         *       "ruleId": "raft-solas",
         *       "duty": "service",
         *       "scheme": "solas",
         *       "weight": "law",
         *       "action": {
         *         "kind": "service",
         *         "words": "Have the liferaft serviced at an approved station"
         *       },
         *       "dueOn": "2026-11-04",
         *       "overdueAfter": "2026-11-04",
         *       "standing": "overdue",
         *       "days": -21,
         *       "sentence": "Serviced on 4 November 2025. An inflatable liferaft is serviced at intervals of not more than 12 months, so it is due by 4 November 2026.",
         *       "reference": {
         *         "publication": "SOLAS",
         *         "clause": "III/20.8.1",
         *         "address": "http://imorules.com/Chunk1853486106.html",
         *         "status": "read"
         *       }
         *     }
         */
        DueRow: {
            action: components["schemas"]["Action"];
            /** @description Whole days from the day asked to `overdueAfter`; negative when overdue. */
            days?: number;
            dueOn?: components["schemas"]["CalendarDay"];
            duty: string;
            item: {
                id: components["schemas"]["Id"];
                kind: string;
                label: string;
                quantity: number;
                zone?: string;
            };
            overdueAfter?: components["schemas"]["CalendarDay"];
            reference: components["schemas"]["Source"];
            ruleId: string;
            scheme: components["schemas"]["SchemeCode"];
            sentence: string;
            /**
             * @description What a rule asks, or what a safety notice asks.
             * @enum {string}
             */
            source: "obligation" | "safety_notice";
            standing: components["schemas"]["StandingCode"];
            /**
             * Format: date
             * @description The duty is suspended since then. Past its day it is not overdue but due before she returns to service.
             * @example 2027-03-18
             */
            suspendedFrom?: string;
            suspendedUntil?: components["schemas"]["CalendarDay"];
            vessel: {
                id: components["schemas"]["Id"];
                name: string;
            };
            weight: components["schemas"]["WeightCode"];
        };
        /** @example P42M */
        Duration: string;
        Duty: {
            action: components["schemas"]["Action"];
            /** @description How its date comes about, in sentences: the limits that compete, what counts where one gives no day, windows, extensions, conditions. */
            details: string[];
            id: string;
            inWords: string;
            onlyFor?: components["schemas"]["ItemKindCode"][];
            resets: components["schemas"]["Reset"][];
        };
        /**
         * @description What putting it right may cost.
         * @example {
         *       "amount": "180.00",
         *       "currency": "EUR",
         *       "author": "Ines Vale"
         *     }
         */
        Estimate: {
            amount: string;
            /**
             * @description Who says so.
             * @example Ines Vale
             */
            author: string;
            currency: string;
        };
        /**
         * @example {
         *       "id": "0198c5a7-4c10-7e21-9a3b-4c5d6e7f8092",
         *       "vesselId": "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a",
         *       "kind": "photograph",
         *       "words": "Crack at the inner radius",
         *       "zone": "mast_and_rigging",
         *       "takenOn": "2026-11-24",
         *       "mediaType": "image/jpeg",
         *       "bytes": 2481152,
         *       "sizePx": {
         *         "width": 4032,
         *         "height": 3024
         *       },
         *       "sha256": "9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08",
         *       "recordedAt": "2026-11-24T15:04:00Z",
         *       "recordedBy": "person:0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e"
         *     }
         */
        EvidenceFile: {
            bytes: number;
            id: components["schemas"]["Id"];
            /** @enum {string} */
            kind: "photograph" | "document";
            /** @enum {string} */
            mediaType: "image/jpeg" | "image/png" | "image/webp" | "image/avif" | "image/heic" | "application/pdf";
            /**
             * @description The survey point, named the same at every visit; with `zone` only.
             * @example port chainplate
             */
            point?: string;
            recordedAt: components["schemas"]["Instant"];
            recordedBy: string;
            /**
             * @description SHA-256 of the whole file, in lower-case hexadecimal.
             * @example 9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08
             */
            sha256: string;
            /** @description Upright. Absent where it is kept and can be taken, but not shown here. */
            sizePx?: {
                height: number;
                width: number;
            };
            takenOn: components["schemas"]["CalendarDay"];
            vesselId: components["schemas"]["Id"];
            /**
             * Format: uuid
             * @description The survey visit on which it was taken.
             * @example 0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a
             */
            visitId?: string;
            /**
             * @description What it shows.
             * @example Crack at the inner radius
             */
            words?: string;
            zone?: components["schemas"]["ZoneCode"];
        };
        EvidenceFilePage: {
            items: components["schemas"]["EvidenceFile"][];
            /** @description Asks for the next page; `null` at the end. */
            nextCursor: string | null;
        };
        /** @description Every obligation that the schemes put on such a thing, by `overdueAfter`; without a date last. */
        Explained: {
            asOf: components["schemas"]["CalendarDay"];
            /** @description What looks odd about a stated fact although it was accepted. */
            doubts: components["schemas"]["Fault"][];
            items: components["schemas"]["Obligation"][];
            nextCursor: null;
        };
        /**
         * @example {
         *       "kind": "liferaft",
         *       "schemes": [
         *         "solas"
         *       ],
         *       "facts": [
         *         {
         *           "fact": "manufactured",
         *           "on": "2019-04"
         *         },
         *         {
         *           "fact": "serviced",
         *           "on": "2025-11-04",
         *           "doneBy": {
         *             "capacity": "liferaft_service_station"
         *           },
         *           "evidence": "certificate"
         *         }
         *       ],
         *       "asOf": "2026-11-25"
         *     }
         */
        ExplainRequest: {
            /**
             * Format: date
             * @description Facts after this day do not count. Default: today in the vessel’s place. A fact may lie in the future of today only up to this day.
             * @example 2027-03-18
             */
            asOf?: string;
            attributes?: components["schemas"]["Attributes"];
            /** @default [] */
            events: {
                /** @enum {string} */
                event: "inspection" | "haul_out" | "liferaft_service" | "race_start" | "grounding" | "collision" | "lightning" | "fire" | "structural_repair" | "change_of_owner" | "gale" | "alteration" | "gas_system_change";
                note?: string;
                on: components["schemas"]["CalendarDay"];
                /**
                 * @description Still to come: an inspection booked, a race entered.
                 * @default false
                 */
                planned: boolean;
                /**
                 * Format: date-time
                 * @description When it was learned, for `knownAt`. Absent: always known.
                 * @example 2026-11-25T08:12:00Z
                 */
                recordedAt?: string;
            }[];
            facts: components["schemas"]["UnstoredFact"][];
            kind: components["schemas"]["ItemKindCode"];
            knownAt?: components["schemas"]["Instant"];
            /**
             * @description Own figures in place of published intervals, by the same rules as those that are kept.
             * @default []
             */
            overrides: components["schemas"]["UnstoredOverride"][];
            /**
             * @description Own rules beside the published ones; those that are kept do not count here by themselves.
             * @default []
             */
            ownRules: components["schemas"]["UnstoredOwnRule"][];
            /**
             * @description Schemes that always apply need not be named.
             * @default []
             */
            schemes: components["schemas"]["SchemeCode"][];
            /** @default [] */
            situations: {
                /** @default false */
                dismantled: boolean;
                /**
                 * Format: date
                 * @description Holds from this day until the next situation begins.
                 * @example 2027-03-18
                 */
                from: string;
                /** @enum {string} */
                place: "afloat" | "ashore";
                /**
                 * Format: date-time
                 * @description When it was learned, for `knownAt`. Absent: always known.
                 * @example 2026-11-25T08:12:00Z
                 */
                recordedAt?: string;
                /** @default false */
                underRepair: boolean;
                /** @enum {string} */
                use: "in_commission" | "laid_up" | "out_of_service";
            }[];
            /** @description Her time zone decides what day today is; default: the organisation’s. */
            vessel?: {
                timeZone?: components["schemas"]["TimeZone"];
            };
        };
        Explanation: {
            alsoCounted: components["schemas"]["CountedLimit"][];
            assumed: string[];
            binds: components["schemas"]["CountedLimit"] | null;
            doubts: string[];
            missing: components["schemas"]["Missing"][];
            /** @description The safety notice that asks it, and whether what is on record is enough to say that it covers the thing. */
            notice?: {
                id: components["schemas"]["Id"];
                match: components["schemas"]["NoticeMatchCode"];
            };
            /** @description Your own figure that it was worked out with: its id, or what the request calls it. */
            overrideId?: string;
            sentence: string;
            setAside: {
                factId: string;
                why: string;
            }[];
            source: components["schemas"]["Source"];
            wouldChangeIt: components["schemas"]["WouldChangeIt"][];
        };
        /**
         * @example {
         *       "id": "0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d",
         *       "itemId": "0198c5a3-11d2-7f40-8b6e-0c9d3e2f1a4b",
         *       "fact": "serviced",
         *       "on": "2025-11-04",
         *       "outcome": "passed",
         *       "doneBy": {
         *         "capacity": "liferaft_service_station"
         *       },
         *       "evidence": "certificate",
         *       "recordedAt": "2026-11-25T08:12:00Z",
         *       "recordedBy": "api_key:0198c5a1-0000-7000-8000-000000000001",
         *       "corrects": null,
         *       "struckOutBy": null
         *     }
         */
        Fact: {
            corrects: components["schemas"]["Id"] | null;
            doneBy?: components["schemas"]["DoneBy"];
            /** @enum {string} */
            evidence: "certificate" | "stamped" | "printed" | "record" | "owner_statement" | "unknown";
            /** @enum {string} */
            fact: "manufactured" | "installed" | "printed_expiry" | "inspected" | "serviced" | "tested" | "replaced" | "overhauled" | "extended" | "activated" | "moved" | "meter" | "withdrawn";
            id: components["schemas"]["Id"];
            itemId: components["schemas"]["Id"];
            note?: string;
            on: components["schemas"]["RecordedDate"];
            /** @enum {string} */
            outcome: "passed" | "failed" | "partly";
            /** @description `meter` only: what the meter read. */
            reading?: {
                /** @enum {string} */
                unit: "hours" | "sea_miles";
                value: number;
            };
            /**
             * Format: date
             * @description `manufactured` and `printed_expiry`: the day it was read on the thing aboard. Default: today.
             * @example 2027-03-18
             */
            readOn?: string;
            /**
             * Format: date-time
             * @description When it was learned.
             * @example 2026-11-25T08:12:00Z
             */
            recordedAt: string;
            recordedBy: string;
            /**
             * @description With `corrects`: strikes out and puts nothing in its place, as of a fact entered on the wrong thing. `fact` and `on` repeat what is struck out; say why in `note`.
             * @enum {boolean}
             */
            retracts?: true;
            /** @description The correction that struck this fact out; it stays visible. */
            struckOutBy: components["schemas"]["Id"] | null;
            /**
             * @description Which test, service or examination, where a rule tells them apart.
             * @enum {string}
             */
            test?: "visual" | "internal_examination" | "extended_service" | "hydrostatic" | "gas_inflation" | "necessary_additional_pressure" | "working_pressure" | "crack_test" | "valve_examination" | "onboard_check" | "drain" | "self_test" | "function" | "full_function" | "examination" | "weighing" | "inflation_24_hours" | "load_test" | "bolt_drawn" | "compass_swing" | "out_of_water" | "initial_survey" | "annual_survey" | "intermediate_survey" | "renewal_survey" | "tightness" | "acceptance" | "annual_test" | "battery" | "oil_and_filter" | "impeller" | "coolant" | "belts" | "belt_inspection" | "details_confirmed" | "discharge";
            /**
             * Format: date
             * @description `extended`: the last day the permission covers. An inspection or test that did not pass: the day by which whoever did it wants it put right.
             * @example 2027-03-18
             */
            until?: string;
        };
        /**
         * @example {
         *       "result": "recorded",
         *       "itemId": "0198c5a3-11d2-7f40-8b6e-0c9d3e2f1a4b",
         *       "fact": {
         *         "id": "0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d",
         *         "itemId": "0198c5a3-11d2-7f40-8b6e-0c9d3e2f1a4b",
         *         "fact": "serviced",
         *         "on": "2025-11-04",
         *         "outcome": "passed",
         *         "doneBy": {
         *           "capacity": "liferaft_service_station"
         *         },
         *         "evidence": "certificate",
         *         "recordedAt": "2026-11-25T08:12:00Z",
         *         "recordedBy": "api_key:0198c5a1-0000-7000-8000-000000000001",
         *         "corrects": null,
         *         "struckOutBy": null
         *       },
         *       "dates": [],
         *       "doubts": []
         *     }
         */
        FactOutcome: {
            dates: components["schemas"]["DateAfter"][];
            /** @description What looks odd about the fact although it was accepted. */
            doubts: string[];
            fact: components["schemas"]["Fact"];
            itemId: components["schemas"]["Id"];
            /** @enum {string} */
            result: "recorded";
        } | {
            itemId: components["schemas"]["Id"];
            /** @description Why; its pointers are into this row’s `fact`. */
            problem: {
                detail?: string;
                /** @description Every fault at once. */
                errors?: components["schemas"]["Fault"][];
                /**
                 * @description The request id, as in `X-Request-Id`.
                 * @example 6f1f2a52-7c57-4c3e-9d1b-3a4d5c6e7f80
                 */
                instance?: string;
                /** @example 404 */
                status: number;
                /** @example No such thing here */
                title: string;
                /**
                 * @description Resolves to a page that says what it means.
                 * @example /problems/not-found
                 */
                type: string;
            };
            /** @enum {string} */
            result: "refused";
        };
        FactOutcomes: {
            /** @description In the order asked. */
            items: components["schemas"]["FactOutcome"][];
        };
        FactPage: {
            items: components["schemas"]["Fact"][];
            /** @description Asks for the next page; `null` at the end. */
            nextCursor: string | null;
        };
        Fault: {
            /** @example must be a day, a month or a year: 2024-03-18, 2024-03 or 2024 */
            detail: string;
            /**
             * @description RFC 6901 pointer into the body; `#query/asOf` and `#header/If-Match` name a parameter or a header.
             * @example /on
             */
            pointer: string;
        };
        /**
         * @example {
         *       "id": "0198c5a5-2f10-7d21-8a3b-4c5d6e7f8091",
         *       "number": 12,
         *       "vessel": {
         *         "id": "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a",
         *         "name": "Marsh Harrier"
         *       },
         *       "zone": "gas_installation",
         *       "what": "Gas hose at the cooker cracked where it bends",
         *       "hazard": "fire_and_gas",
         *       "trade": "gas_engineer",
         *       "urgency": "before_use",
         *       "urgencySince": "2026-11-20",
         *       "firstSeenOn": "2026-11-20",
         *       "lastSeenOn": "2026-11-20",
         *       "lastSeen": "new",
         *       "remedy": {
         *         "state": "found"
         *       },
         *       "reads": "Found; nothing decided yet",
         *       "due": {
         *         "source": "finding",
         *         "on": "2026-11-20",
         *         "because": "To be dealt with before she is used again: due since it was said.",
         *         "standing": "overdue"
         *       },
         *       "mayBe": [
         *         "proposed",
         *         "planned",
         *         "begun",
         *         "reported_done",
         *         "entered_in_error"
         *       ]
         *     }
         */
        Finding: {
            /** @description Absent where the finding has ended. */
            due?: {
                because: string;
                /**
                 * Format: date
                 * @description Absent where there is no date to go by.
                 * @example 2027-03-18
                 */
                on?: string;
                /**
                 * @description `deferral`: the review of what was put off or accepted.
                 * @enum {string}
                 */
                source?: "finding" | "deferral";
                /** @enum {string} */
                standing: "overdue" | "due" | "in_date" | "unknown";
            };
            estimate?: components["schemas"]["Estimate"];
            firstSeenOn: components["schemas"]["CalendarDay"];
            hazard: components["schemas"]["HazardCode"];
            id: components["schemas"]["Id"];
            item?: {
                id: components["schemas"]["Id"];
                kind: string;
                label: string;
            };
            lastSeen: "new" | components["schemas"]["SeenCode"];
            lastSeenOn: components["schemas"]["CalendarDay"];
            limit?: components["schemas"]["RemedialLimit"];
            /** @description The steps that lead on from here, whoever may take them. */
            mayBe: string[];
            /** @description Counts the findings of the vessel, so that people can name them. */
            number: number;
            /** @description What her owner last said to an estimate, and to which words. It decides nothing by itself. */
            ownerSaid?: {
                name: string;
                offer: string;
                on: components["schemas"]["CalendarDay"];
                yes: boolean;
            };
            /** @description How it stands, in words. The same on every page, list and export. */
            reads: string;
            remedy: components["schemas"]["Remedy"];
            /** @description Who answers for getting it done. */
            responsible?: string;
            /**
             * @description The rule that it breaks: an `id` of `/v1/rules`.
             * @example lpg-hose
             */
            ruleId?: string;
            trade?: components["schemas"]["TradeCode"];
            urgency: components["schemas"]["UrgencyCode"];
            urgencySince: components["schemas"]["CalendarDay"];
            /**
             * Format: date
             * @description The surveyor’s own day; with `within_weeks` only.
             * @example 2027-03-18
             */
            urgentBy?: string;
            vessel: {
                id: components["schemas"]["Id"];
                name: string;
            };
            /**
             * @description What is not right.
             * @example Gas hose at the cooker cracked where it bends
             */
            what: string;
            /** @description What is to be done, as last proposed, planned or reported. */
            work?: string;
            zone: components["schemas"]["ZoneCode"];
        };
        /**
         * @description What is absent stays; `null` takes it away.
         * @example {
         *       "trade": "gas_engineer",
         *       "responsible": "Tomas Reef"
         *     }
         */
        FindingChange: {
            estimate?: components["schemas"]["Estimate"] | null;
            hazard?: components["schemas"]["HazardCode"];
            itemId?: components["schemas"]["Id"] | null;
            limit?: components["schemas"]["RemedialLimit"] | null;
            reason?: string;
            responsible?: string | null;
            ruleId?: string | null;
            trade?: components["schemas"]["TradeCode"] | null;
            /**
             * @description Letting it down asks for a `reason`; `before_use` is not let down here.
             * @enum {string}
             */
            urgency?: "before_use" | "within_weeks" | "this_season" | "next_lay_up" | "observe";
            /**
             * Format: date
             * @description The surveyor’s own day; with `within_weeks` only.
             * @example 2027-03-18
             */
            urgentBy?: string;
            /**
             * @description What is not right.
             * @example Gas hose at the cooker cracked where it bends
             */
            what?: string;
            zone?: components["schemas"]["ZoneCode"];
        };
        /**
         * @example {
         *       "id": "0198c5a5-2f10-7d21-8a3b-4c5d6e7f8092",
         *       "step": "found",
         *       "on": "2026-11-20",
         *       "recordedAt": "2026-11-20T15:04:00Z",
         *       "recordedBy": "person:0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e",
         *       "said": {
         *         "what": "Gas hose at the cooker cracked where it bends",
         *         "urgency": "before_use"
         *       },
         *       "evidence": []
         *     }
         */
        FindingEntry: {
            evidence: components["schemas"]["FindingEvidence"][];
            id: components["schemas"]["Id"];
            on: components["schemas"]["CalendarDay"];
            recordedAt: components["schemas"]["Instant"];
            recordedBy: string;
            /** @description What the entry says, as it was written. */
            said: {
                [key: string]: unknown;
            };
            /**
             * @description What was seen, said or done.
             * @example found
             */
            step: string;
        };
        FindingEntryPage: {
            items: components["schemas"]["FindingEntry"][];
            /** @description Asks for the next page; `null` at the end. */
            nextCursor: string | null;
        };
        /**
         * @example {
         *       "kind": "photograph",
         *       "words": "The new hose, dated 2026"
         *     }
         */
        FindingEvidence: {
            /**
             * Format: uuid
             * @description The file, where there is one.
             * @example 0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a
             */
            evidenceId?: string;
            /** @enum {string} */
            kind: "photograph" | "invoice" | "certificate" | "reading" | "looked";
            /** @description What it shows. */
            words: string;
        };
        /**
         * @example {
         *       "into": "0198c5a5-2f10-7d21-8a3b-4c5d6e7f8091",
         *       "reason": "The same crack, seen twice."
         *     }
         */
        FindingMerge: {
            /**
             * Format: uuid
             * @description The finding that stays, of the same vessel.
             * @example 0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a
             */
            into: string;
            /** @description Why. */
            reason: string;
        };
        FindingPage: {
            items: components["schemas"]["Finding"][];
            /** @description Asks for the next page; `null` at the end. */
            nextCursor: string | null;
        };
        /**
         * @example {
         *       "zone": "gas_installation",
         *       "what": "Hose clip at the regulator loose",
         *       "hazard": "fire_and_gas",
         *       "urgency": "before_use",
         *       "reason": "Two things, and not the same work."
         *     }
         */
        FindingSplit: {
            estimate?: components["schemas"]["Estimate"];
            /** @default [] */
            evidence: components["schemas"]["FindingEvidence"][];
            hazard: components["schemas"]["HazardCode"];
            /**
             * Format: uuid
             * @description The thing aboard that it is about, where it is about one.
             * @example 0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a
             */
            itemId?: string;
            limit?: components["schemas"]["RemedialLimit"];
            /** @description Why. */
            reason: string;
            /** @description Who answers for getting it done. */
            responsible?: string;
            /**
             * @description The rule that it breaks: an `id` of `/v1/rules`.
             * @example lpg-hose
             */
            ruleId?: string;
            trade?: components["schemas"]["TradeCode"];
            urgency: components["schemas"]["UrgencyCode"];
            /**
             * Format: date
             * @description The surveyor’s own day; with `within_weeks` only.
             * @example 2027-03-18
             */
            urgentBy?: string;
            /**
             * @description What is not right.
             * @example Gas hose at the cooker cracked where it bends
             */
            what: string;
            /** @description What was seen, where the line above is too short for it. */
            words?: string;
            zone: components["schemas"]["ZoneCode"];
        };
        /**
         * @description How it stands with the work. The last three have ended.
         * @enum {string}
         */
        FindingStateCode: "found" | "proposed" | "planned" | "in_hand" | "reported_done" | "deferred" | "accepted" | "verified" | "entered_in_error" | "merged";
        /**
         * @description House conventions of the organisation; no source.
         * @example {
         *       "withinWeeksDays": 28,
         *       "putOffAtMostDays": 365,
         *       "secondPairOfEyes": true
         *     }
         */
        FindingTerms: {
            /**
             * @description How far ahead a review may be put.
             * @example 365
             */
            putOffAtMostDays: number;
            /** @description Whether somebody other than whoever did the work must verify it. Off, such findings read “closed, not independently checked”. */
            secondPairOfEyes: boolean;
            /**
             * @description Days that `within_weeks` leaves where the surveyor named no day.
             * @example 28
             */
            withinWeeksDays: number;
        };
        FirstGenerationBeacon: {
            /** @description Tells several beacons of one vessel apart. */
            beacon: string | null;
            callSign: string | null;
            carriesPosition: boolean;
            /** @description Four bits of a location protocol, three of a user protocol. */
            code: string;
            /** @description The protocol in words; `null` where it is not known to us. */
            codedAs: string | null;
            country: components["schemas"]["IdentifiedCountry"];
            /** @description What is doubtful about it by itself. */
            doubts: string[];
            /** @enum {string} */
            flag: "location" | "user";
            /** @enum {string} */
            generation: "first";
            hex: string;
            /** @description Bits 84 and 85, where a user protocol has them. */
            homing: string | null;
            /** @enum {string} */
            identifier: "beaconId";
            /** @description What it says, as a sentence. */
            inWords: string;
            /** @enum {string} */
            kind: "decoded";
            mmsi: string | null;
            /** @enum {string} */
            protocol: "location_with_mmsi" | "return_link_with_mmsi" | "maritime_user" | "radio_call_sign_user" | "other";
            /** @description As it was given. */
            text: string;
        };
        Fleet: {
            asOf: components["schemas"]["CalendarDay"];
            items: components["schemas"]["FleetRow"][];
            /** @description Asks for the next page; `null` at the end. */
            nextCursor: string | null;
            organisation: string;
            /** @description When the boats are used most; see `/v1/season`. */
            season: components["schemas"]["Season"] | null;
            until: components["schemas"]["CalendarDay"];
        };
        /**
         * @example {
         *       "vesselId": "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a",
         *       "name": "Marsh Harrier",
         *       "type": "sloop",
         *       "lengthOverallM": 9.6,
         *       "counts": {
         *         "overdue": {
         *           "law": 1,
         *           "certificate": 0,
         *           "insurer": 0,
         *           "maker": 0,
         *           "common_practice": 0,
         *           "own": 0
         *         },
         *         "due": {
         *           "law": 0,
         *           "certificate": 0,
         *           "insurer": 0,
         *           "maker": 0,
         *           "common_practice": 0,
         *           "own": 0
         *         },
         *         "in_date": {
         *           "law": 2,
         *           "certificate": 0,
         *           "insurer": 0,
         *           "maker": 4,
         *           "common_practice": 0,
         *           "own": 0
         *         },
         *         "unknown": {
         *           "law": 0,
         *           "certificate": 0,
         *           "insurer": 0,
         *           "maker": 0,
         *           "common_practice": 0,
         *           "own": 0
         *         },
         *         "suspended": {
         *           "law": 0,
         *           "certificate": 0,
         *           "insurer": 0,
         *           "maker": 0,
         *           "common_practice": 0,
         *           "own": 0
         *         }
         *       },
         *       "findings": {
         *         "before_use": 1,
         *         "within_weeks": 0,
         *         "this_season": 2,
         *         "next_lay_up": 0,
         *         "observe": 0
         *       },
         *       "matters": {
         *         "overdue": 1,
         *         "due": 0,
         *         "in_date": 2,
         *         "unknown": 0
         *       },
         *       "oldestOverdueAfter": "2026-11-04",
         *       "nextOverdueAfter": "2027-03-31",
         *       "laidUp": [
         *         {
         *           "from": "2026-11-02",
         *           "to": null
         *         }
         *       ],
         *       "ashore": [
         *         {
         *           "from": "2026-11-02",
         *           "to": null
         *         }
         *       ],
         *       "haulOuts": [
         *         {
         *           "on": "2027-10-20",
         *           "planned": true
         *         }
         *       ],
         *       "marks": [
         *         {
         *           "on": "2027-03-31",
         *           "mark": "replace",
         *           "standing": "in_date",
         *           "things": [
         *             {
         *               "itemId": "0198c5a3-11d2-7f40-8b6e-0c9d3e2f1a4b",
         *               "ruleId": "flare-usrec",
         *               "duty": "replacement",
         *               "label": "Hand flares, red",
         *               "words": "Replace the flares",
         *               "status": "read"
         *             }
         *           ]
         *         }
         *       ]
         *     }
         */
        FleetRow: {
            /** @description When she stands ashore, likewise. */
            ashore: components["schemas"]["DaySpan"][];
            counts: components["schemas"]["StandingCounts"];
            /** @description Open findings by urgency, those put off or accepted among them. */
            findings: {
                before_use: number;
                next_lay_up: number;
                observe: number;
                this_season: number;
                within_weeks: number;
            };
            /** @description The days on which she comes out of the water, as recorded or planned. */
            haulOuts: {
                on: components["schemas"]["CalendarDay"];
                planned: boolean;
            }[];
            /** @description When she is laid up, as far as it touches the horizon. */
            laidUp: components["schemas"]["DaySpan"][];
            lengthOverallM?: number;
            marks: components["schemas"]["HorizonMark"][];
            /** @description Findings, reviews, referrals and limitations by standing. */
            matters: {
                due: number;
                in_date: number;
                overdue: number;
                unknown: number;
            };
            name: string;
            nextOverdueAfter?: components["schemas"]["CalendarDay"];
            oldestOverdueAfter?: components["schemas"]["CalendarDay"];
            type?: string;
            vesselId: components["schemas"]["Id"];
        };
        FleetSample: {
            /** @description Those of which it may be any; the longest without first. */
            among: components["schemas"]["SampledThing"][];
            /**
             * Format: date
             * @description The last day on which nothing is wrong yet.
             * @example 2027-03-18
             */
            by: string;
            howMany: number;
            kind: components["schemas"]["ItemKindCode"];
            /**
             * @description The year of manufacture that they share.
             * @example 2019
             */
            madeIn: string;
            reference: components["schemas"]["Source"];
            ruleId: string;
            standing: components["schemas"]["StandingCode"];
            vessel: {
                id: components["schemas"]["Id"];
                name: string;
            };
        };
        /**
         * @example {
         *       "asOf": "2026-11-25",
         *       "items": [
         *         {
         *           "vessel": {
         *             "id": "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a",
         *             "name": "Marsh Harrier"
         *           },
         *           "kind": "portable_extinguisher_dry_powder",
         *           "madeIn": "2019",
         *           "howMany": 1,
         *           "by": "2027-03-01",
         *           "standing": "in_date",
         *           "among": [
         *             {
         *               "itemId": "0198c5a3-11d2-7f40-8b6e-0c9d3e2f1a4b",
         *               "label": "Extinguisher, galley"
         *             }
         *           ],
         *           "ruleId": "fe-imo",
         *           "reference": {
         *             "publication": "Res. A.951(23)",
         *             "clause": "9.1-9.2",
         *             "address": "http://imorules.com/Chunk1853486106.html",
         *             "status": "read"
         *           }
         *         }
         *       ],
         *       "unknown": [],
         *       "nextCursor": null
         *     }
         */
        FleetSampleList: {
            asOf: components["schemas"]["CalendarDay"];
            items: components["schemas"]["FleetSample"][];
            nextCursor: null;
            /** @description Things whose year of manufacture is not on record: nothing can be said of them. */
            unknown: {
                thing: components["schemas"]["SampledThing"];
                vessel: {
                    id: components["schemas"]["Id"];
                    name: string;
                };
            }[];
        };
        FoundItem: {
            id: components["schemas"]["Id"];
            kind: string;
            label: string;
            serialNumber?: string;
            vessel: {
                id: components["schemas"]["Id"];
                name: string;
            };
            /** @description Taken out of use. */
            withdrawn: boolean;
            zone?: string;
        };
        FoundRule: {
            clause: string | null;
            id: string;
            inWords: string;
            publication: string | null;
        };
        FoundVessel: {
            id: components["schemas"]["Id"];
            name: string;
            type?: string;
        };
        /**
         * @description What it threatens.
         * @enum {string}
         */
        HazardCode: "life" | "watertight_integrity" | "fire_and_gas" | "rig" | "steering" | "propulsion" | "equipment" | "value";
        /**
         * @example {
         *       "status": "ok",
         *       "version": "0.1.0"
         *     }
         */
        Health: {
            /** @enum {string} */
            status: "ok";
            /** @description Of this program. */
            version: string;
        };
        HorizonMark: {
            /**
             * @description service, test or inspection; replace or withdraw; document.
             * @enum {string}
             */
            mark: "service" | "replace" | "document";
            /**
             * Format: date
             * @description `overdueAfter` of what falls on this day.
             * @example 2027-03-18
             */
            on: string;
            /** @enum {string} */
            standing: "due" | "in_date";
            things: {
                duty: string;
                itemId: components["schemas"]["Id"];
                label: string;
                ruleId: string;
                /**
                 * @description How far the figure behind the day was checked.
                 * @enum {string}
                 */
                status: "read" | "second_hand" | "memory" | "common_practice";
                words: string;
            }[];
        };
        HullNumber: {
            built: {
                month: number;
                year: number;
            };
            /** @description Two letters as written. */
            country: string | null;
            /** @description What is doubtful about it by itself. */
            doubts: string[];
            /** @enum {string} */
            form: "current" | "straight_year" | "model_year";
            /** @enum {string} */
            identifier: "hin";
            /** @description What it says, as a sentence. */
            inWords: string;
            /** @enum {string} */
            kind: "decoded";
            maker: string;
            modelYear: number | null;
            number: string;
            serial: string;
            /** @description As it was given. */
            text: string;
        };
        /**
         * Format: uuid
         * @description UUIDv7.
         * @example 0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a
         */
        Id: string;
        IdentifiedCountry: {
            /** @description Three maritime identification digits. */
            mid: number;
            /** @description `null` where our table does not know the digits. */
            name: string | null;
            /** @description For a territory, the state that it belongs to. */
            partOf: string | null;
        };
        /** @description Read-only. Absent while no identifier is given. */
        IdentifierNotes: {
            doubts: string[];
            inWords: string[];
        };
        Identifiers: {
            callSign?: string;
            /** @description Hull identification number. */
            hin?: string;
            imo?: string;
            mmsi?: string;
            officialNumber?: string;
        };
        ImoNumber: {
            /** @description What is doubtful about it by itself. */
            doubts: string[];
            /** @enum {string} */
            identifier: "imo";
            /** @description What it says, as a sentence. */
            inWords: string;
            /** @enum {string} */
            kind: "decoded";
            number: string;
            /** @description As it was given. */
            text: string;
            weightedSum: number;
        };
        /**
         * Format: date-time
         * @description RFC 3339 with offset.
         * @example 2026-11-25T08:12:00Z
         */
        Instant: string;
        /**
         * @example {
         *       "key": "meter",
         *       "maker": "Quillmere",
         *       "model": "QM-2",
         *       "scale": "0-100 relative",
         *       "nextCheckOn": "2027-03-01"
         *     }
         */
        Instrument: {
            /**
             * Format: date
             * @description When it was last checked.
             * @example 2027-03-18
             */
            checkedOn?: string;
            /**
             * @description Names it within the visit.
             * @example meter
             */
            key: string;
            maker: string;
            model: string;
            /**
             * Format: date
             * @description When it is next to be checked. Read after that day, each of its readings says so.
             * @example 2027-03-18
             */
            nextCheckOn?: string;
            /** @example 0-100 relative */
            scale?: string;
            serial?: string;
        };
        /**
         * @example {
         *       "id": "0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d",
         *       "email": "ines@curlew.example",
         *       "role": "surveyor",
         *       "invitedBy": "person:5a0c9b2e-0f6b-4a53-9c35-0d8f5b7e2a11",
         *       "createdAt": "2026-03-01T08:12:00Z",
         *       "expiresAt": "2026-03-08T08:12:00Z",
         *       "version": 1
         *     }
         */
        Invitation: {
            createdAt: components["schemas"]["Instant"];
            /** @description Forgotten once it is accepted or withdrawn. */
            email?: string;
            expiresAt: components["schemas"]["Instant"];
            id: components["schemas"]["Id"];
            /** @description The credential that invited. */
            invitedBy: string;
            /** @description Told when it is made: whether the letter could be handed over. */
            mailed?: boolean;
            role: components["schemas"]["RoleCode"];
            /** @description Its `ETag`. */
            version: number;
            vesselIds?: components["schemas"]["VesselIds"];
            withdrawnAt?: components["schemas"]["Instant"];
        };
        InvitationPage: {
            items: components["schemas"]["Invitation"][];
            /** @description Asks for the next page; `null` at the end. */
            nextCursor: string | null;
        };
        /**
         * @example {
         *       "organisation": "Curlew Sailing School",
         *       "email": "ines@curlew.example",
         *       "role": "surveyor",
         *       "expiresAt": "2026-03-08T08:12:00Z"
         *     }
         */
        InvitationPreview: {
            email: string;
            expiresAt: components["schemas"]["Instant"];
            organisation: string;
            role: components["schemas"]["RoleCode"];
            vesselIds?: components["schemas"]["VesselIds"];
        };
        /**
         * @example {
         *       "token": "gbi_…"
         *     }
         */
        InvitationToken: {
            /** @description What the link in the letter ends with. */
            token: string;
        };
        /**
         * @example {
         *       "reason": "The address was wrong."
         *     }
         */
        InvitationWithdrawal: {
            reason?: string;
        };
        /**
         * @example {
         *       "id": "0198c5a3-11d2-7f40-8b6e-0c9d3e2f1a4b",
         *       "vesselId": "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a",
         *       "kind": "liferaft",
         *       "label": "Liferaft, 6 persons",
         *       "zone": "on deck",
         *       "quantity": 1,
         *       "attributes": {
         *         "seasonMonths": 6
         *       },
         *       "withdrawn": false,
         *       "createdAt": "2026-11-25T08:12:00Z",
         *       "version": 2
         *     }
         */
        Item: {
            attributes: components["schemas"]["Attributes"];
            createdAt: components["schemas"]["Instant"];
            id: components["schemas"]["Id"];
            kind: components["schemas"]["ItemKindCode"];
            /** @example Gas hose, cooker */
            label: string;
            maker?: string;
            model?: string;
            quantity: number;
            serialNumber?: string;
            /** @description Grows with every change and every fact; its `ETag`. */
            version: number;
            vesselId: components["schemas"]["Id"];
            /** @description Taken out of use by a `withdrawn` fact: it has no obligations. */
            withdrawn: boolean;
            /**
             * @description Where aboard.
             * @example gas locker
             */
            zone?: string;
        };
        /**
         * @description What is absent stays; `null` takes it away. `attributes` are replaced whole.
         * @example {
         *       "serialNumber": "R-4471",
         *       "zone": null
         *     }
         */
        ItemChange: {
            attributes?: components["schemas"]["Attributes"];
            /** @example Gas hose, cooker */
            label?: string;
            maker?: string | null;
            model?: string | null;
            quantity?: number;
            serialNumber?: string | null;
            zone?: string | null;
        };
        /**
         * @example {
         *       "id": "liferaft",
         *       "itemClass": "liferaft",
         *       "name": "inflatable liferaft",
         *       "zone": "on deck",
         *       "dates": [
         *         {
         *           "fact": "serviced",
         *           "whereFound": "the service certificate"
         *         }
         *       ],
         *       "attributes": [
         *         {
         *           "name": "seasonMonths",
         *           "type": "number",
         *           "is": "months",
         *           "words": "how many months a year the vessel operates",
         *           "whereFound": "the operating schedule"
         *         }
         *       ]
         *     }
         */
        ItemKind: {
            attributes: components["schemas"]["Attribute"][];
            /** @description The facts that such a thing usually has, and where each date is usually found. */
            dates: {
                /** @enum {string} */
                fact: "manufactured" | "installed" | "printed_expiry" | "inspected" | "serviced" | "tested" | "replaced" | "overhauled" | "extended" | "activated" | "moved" | "meter" | "withdrawn";
                whereFound: string;
            }[];
            id: components["schemas"]["ItemKindCode"];
            /** @enum {string} */
            itemClass: "rigging" | "hoses" | "flares" | "liferaft" | "extinguishers" | "seacocks" | "gas" | "lifejackets" | "beacons" | "hydrostatic_release" | "engine" | "electrics" | "steering_keel_shaft" | "ground_tackle" | "navigation" | "safety_on_deck" | "first_aid" | "hull" | "documents";
            name: string;
            /** @description Where it usually is. */
            zone: string;
        };
        /**
         * @description An entry of `/v1/item-kinds`.
         * @example gas_hose
         */
        ItemKindCode: string;
        ItemKindPage: {
            items: components["schemas"]["ItemKind"][];
            /** @description Asks for the next page; `null` at the end. */
            nextCursor: string | null;
        };
        ItemPage: {
            items: components["schemas"]["Item"][];
            /** @description Asks for the next page; `null` at the end. */
            nextCursor: string | null;
        };
        /** @description Of what its role may, these alone. Absent: all of it. `read` is always among them. */
        KeyPermissions: components["schemas"]["PermissionCode"][];
        /**
         * @example {
         *       "id": "0198c5a6-3b10-7e21-9a3b-4c5d6e7f8094",
         *       "vessel": {
         *         "id": "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a",
         *         "name": "Marsh Harrier"
         *       },
         *       "zone": "structure_inside",
         *       "what": "Chainplates behind the lining",
         *       "reason": "no_access_lining",
         *       "imposedOn": "2026-11-24",
         *       "visitId": "0198c5a6-3b10-7e21-9a3b-4c5d6e7f8091"
         *     }
         */
        Limitation: {
            id: components["schemas"]["Id"];
            imposedOn: components["schemas"]["CalendarDay"];
            itemId?: components["schemas"]["Id"];
            /**
             * Format: date
             * @description Until then the thing is not assessed, and never good.
             * @example 2027-03-18
             */
            liftedOn?: string;
            reason: components["schemas"]["LimitationReasonCode"];
            trade?: components["schemas"]["TradeCode"];
            vessel: {
                id: components["schemas"]["Id"];
                name: string;
            };
            visitId: components["schemas"]["Id"];
            /**
             * @description What could not be examined or tested.
             * @example Chainplates behind the lining
             */
            what: string;
            words?: string;
            zone: components["schemas"]["ZoneCode"];
        };
        LimitationPage: {
            items: components["schemas"]["Limitation"][];
            /** @description Asks for the next page; `null` at the end. */
            nextCursor: string | null;
        };
        /**
         * @description Why it could not be examined or tested.
         * @enum {string}
         */
        LimitationReasonCode: "no_access_lining" | "no_access_stowed_gear" | "not_dismantled" | "coating_not_removed" | "afloat" | "in_slings_short_time" | "mast_stepped_head_height_only" | "tank_not_opened" | "no_power" | "engine_not_run" | "wet_or_frozen_surface" | "too_recently_lifted" | "ice_or_weather" | "owner_refused" | "item_not_on_board" | "specialist_scope";
        /**
         * @example {
         *       "id": "0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e",
         *       "at": "2026-11-26T09:00:00Z"
         *     }
         */
        LookAtLink: {
            at: components["schemas"]["Instant"];
            id: components["schemas"]["Id"];
            /** @description As the browser called itself. */
            userAgent?: string;
        };
        LookAtLinkPage: {
            items: components["schemas"]["LookAtLink"][];
            /** @description Asks for the next page; `null` at the end. */
            nextCursor: string | null;
        };
        MatterAction: {
            words: string;
        };
        /** @description Findings and what else waits for somebody, counted apart: no rule stands behind them. */
        MatterCounts: {
            due: number;
            in_date: number;
            overdue: number;
            unknown: number;
        };
        Meaning: {
            code: string;
            /** @enum {string} */
            of: "fact" | "test" | "event" | "situation" | "capacity";
            words: string;
        };
        /**
         * @description What is measured. `moisture` compares on the meter’s own scale; it is no water content.
         * @enum {string}
         */
        MeasureCode: "moisture" | "thickness" | "length" | "blisters" | "rig_tension" | "rudder_play" | "shaft_play" | "battery_voltage" | "insulation" | "tap_test_dull_area";
        Missing: {
            what: string;
            whereFound: string;
        };
        Mmsi: {
            /** @description `null` where the form carries none. */
            country: components["schemas"]["IdentifiedCountry"] | null;
            digits: string;
            /** @description What is doubtful about it by itself. */
            doubts: string[];
            /** @enum {string} */
            identifier: "mmsi";
            /** @description What it says, as a sentence. */
            inWords: string;
            /** @enum {string} */
            kind: "decoded";
            /** @enum {string} */
            station: "ship_station" | "group_of_ships" | "coast_station" | "sar_aircraft" | "craft_of_parent" | "aid_to_navigation" | "handheld_vhf" | "ais_sart" | "man_overboard" | "epirb_ais";
            /** @description As it was given. */
            text: string;
        };
        /**
         * @example {
         *       "amount": "1234.50",
         *       "currency": "EUR"
         *     }
         */
        Money: {
            amount: string;
            currency: string;
        };
        /**
         * @description A day of every year, `MM-DD`.
         * @example 04-01
         */
        MonthDay: string;
        /**
         * @example {
         *       "name": "Ines Vale",
         *       "words": "The serial number of the regulator is 4471, not 4417.",
         *       "reason": "Misread on the day."
         *     }
         */
        NewAddendum: {
            /** @description Who adds it. */
            name: string;
            reason: string;
            words: string;
        };
        /**
         * @example {
         *       "name": "tide board in the office",
         *       "role": "surveyor",
         *       "permissions": [
         *         "read",
         *         "record_facts"
         *       ],
         *       "expiresAt": "2027-05-31T21:59:59Z"
         *     }
         */
        NewApiKey: {
            /**
             * Format: date-time
             * @description At most 366 days ahead.
             * @example 2026-11-25T08:12:00Z
             */
            expiresAt: string;
            name: string;
            permissions?: components["schemas"]["KeyPermissions"];
            role: components["schemas"]["RoleCode"];
            vesselIds?: components["schemas"]["VesselIds"];
        };
        /**
         * @example {
         *       "fact": "serviced",
         *       "on": "2026-03-18",
         *       "doneBy": {
         *         "capacity": "liferaft_service_station"
         *       },
         *       "evidence": "certificate"
         *     }
         */
        NewFact: {
            /**
             * Format: uuid
             * @description The fact that this one strikes out and stands in for.
             * @example 0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a
             */
            corrects?: string;
            doneBy?: components["schemas"]["DoneBy"];
            /**
             * @default unknown
             * @enum {string}
             */
            evidence: "certificate" | "stamped" | "printed" | "record" | "owner_statement" | "unknown";
            /** @enum {string} */
            fact: "manufactured" | "installed" | "printed_expiry" | "inspected" | "serviced" | "tested" | "replaced" | "overhauled" | "extended" | "activated" | "moved" | "meter" | "withdrawn";
            note?: string;
            on: components["schemas"]["RecordedDate"];
            /**
             * @default passed
             * @enum {string}
             */
            outcome: "passed" | "failed" | "partly";
            /** @description `meter` only: what the meter read. */
            reading?: {
                /** @enum {string} */
                unit: "hours" | "sea_miles";
                value: number;
            };
            /**
             * Format: date
             * @description `manufactured` and `printed_expiry`: the day it was read on the thing aboard. Default: today.
             * @example 2027-03-18
             */
            readOn?: string;
            /**
             * @description With `corrects`: strikes out and puts nothing in its place, as of a fact entered on the wrong thing. `fact` and `on` repeat what is struck out; say why in `note`.
             * @enum {boolean}
             */
            retracts?: true;
            /**
             * @description Which test, service or examination, where a rule tells them apart.
             * @enum {string}
             */
            test?: "visual" | "internal_examination" | "extended_service" | "hydrostatic" | "gas_inflation" | "necessary_additional_pressure" | "working_pressure" | "crack_test" | "valve_examination" | "onboard_check" | "drain" | "self_test" | "function" | "full_function" | "examination" | "weighing" | "inflation_24_hours" | "load_test" | "bolt_drawn" | "compass_swing" | "out_of_water" | "initial_survey" | "annual_survey" | "intermediate_survey" | "renewal_survey" | "tightness" | "acceptance" | "annual_test" | "battery" | "oil_and_filter" | "impeller" | "coolant" | "belts" | "belt_inspection" | "details_confirmed" | "discharge";
            /**
             * Format: date
             * @description `extended`: the last day the permission covers. An inspection or test that did not pass: the day by which whoever did it wants it put right.
             * @example 2027-03-18
             */
            until?: string;
        };
        /**
         * @example {
         *       "items": [
         *         {
         *           "itemId": "0198c5a3-11d2-7f40-8b6e-0c9d3e2f1a4b",
         *           "fact": {
         *             "fact": "serviced",
         *             "on": "2026-03-18",
         *             "doneBy": {
         *               "capacity": "fire_equipment_technician"
         *             },
         *             "outcome": "passed",
         *             "evidence": "certificate"
         *           }
         *         }
         *       ]
         *     }
         */
        NewFacts: {
            items: {
                fact: components["schemas"]["NewFact"];
                itemId: components["schemas"]["Id"];
            }[];
        };
        /**
         * @example {
         *       "zone": "gas_installation",
         *       "what": "Gas hose at the cooker cracked where it bends",
         *       "hazard": "fire_and_gas",
         *       "trade": "gas_engineer",
         *       "urgency": "before_use",
         *       "on": "2026-11-20"
         *     }
         */
        NewFinding: {
            estimate?: components["schemas"]["Estimate"];
            /** @default [] */
            evidence: components["schemas"]["FindingEvidence"][];
            hazard: components["schemas"]["HazardCode"];
            /**
             * Format: uuid
             * @description The thing aboard that it is about, where it is about one.
             * @example 0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a
             */
            itemId?: string;
            limit?: components["schemas"]["RemedialLimit"];
            /**
             * Format: date
             * @description The day on which it was seen; not in the future.
             * @example 2027-03-18
             */
            on: string;
            /** @description Who answers for getting it done. */
            responsible?: string;
            /**
             * @description The rule that it breaks: an `id` of `/v1/rules`.
             * @example lpg-hose
             */
            ruleId?: string;
            trade?: components["schemas"]["TradeCode"];
            urgency: components["schemas"]["UrgencyCode"];
            /**
             * Format: date
             * @description The surveyor’s own day; with `within_weeks` only.
             * @example 2027-03-18
             */
            urgentBy?: string;
            /**
             * Format: uuid
             * @description The open survey visit on which it was seen.
             * @example 0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a
             */
            visitId?: string;
            /**
             * @description What is not right.
             * @example Gas hose at the cooker cracked where it bends
             */
            what: string;
            /** @description What was seen, where the line above is too short for it. */
            words?: string;
            zone: components["schemas"]["ZoneCode"];
        };
        /**
         * @example {
         *       "email": "ines@curlew.example",
         *       "role": "surveyor"
         *     }
         */
        NewInvitation: {
            /**
             * Format: email
             * @example ines@curlew.example
             */
            email: string;
            role: components["schemas"]["RoleCode"];
            vesselIds?: components["schemas"]["VesselIds"];
        };
        /**
         * @example {
         *       "kind": "liferaft",
         *       "label": "Liferaft, 6 persons",
         *       "zone": "on deck",
         *       "attributes": {
         *         "seasonMonths": 6
         *       }
         *     }
         */
        NewItem: {
            attributes?: components["schemas"]["Attributes"];
            kind: components["schemas"]["ItemKindCode"];
            /** @example Gas hose, cooker */
            label: string;
            maker?: string;
            model?: string;
            /** @default 1 */
            quantity: number;
            serialNumber?: string;
            /**
             * @description Where aboard.
             * @example gas locker
             */
            zone?: string;
        };
        /**
         * @description Things for one vessel, all of them or none. A fault points at its row: `/items/3/kind`.
         * @example {
         *       "items": [
         *         {
         *           "kind": "gas_hose",
         *           "label": "Gas hose, cooker",
         *           "zone": "galley"
         *         },
         *         {
         *           "kind": "hand_flare",
         *           "label": "Hand flares, red",
         *           "zone": "cockpit",
         *           "quantity": 4
         *         }
         *       ]
         *     }
         */
        NewItems: {
            items: components["schemas"]["NewItem"][];
        };
        /**
         * @example {
         *       "zone": "structure_inside",
         *       "what": "Chainplates behind the lining",
         *       "reason": "no_access_lining"
         *     }
         */
        NewLimitation: {
            itemId?: components["schemas"]["Id"];
            reason: components["schemas"]["LimitationReasonCode"];
            trade?: components["schemas"]["TradeCode"];
            /**
             * @description What could not be examined or tested.
             * @example Chainplates behind the lining
             */
            what: string;
            words?: string;
            zone: components["schemas"]["ZoneCode"];
        };
        /**
         * @example {
         *       "visitId": "0198c5a6-3b10-7e21-9a3b-4c5d6e7f8091",
         *       "answer": "still",
         *       "reason": "no_access_lining"
         *     }
         */
        NewLimitationAnswer: {
            /** @enum {string} */
            answer: "lifted" | "still";
            /**
             * @description Asked for with `still`.
             * @enum {string}
             */
            reason?: "no_access_lining" | "no_access_stowed_gear" | "not_dismantled" | "coating_not_removed" | "afloat" | "in_slings_short_time" | "mast_stepped_head_height_only" | "tank_not_opened" | "no_power" | "engine_not_run" | "wet_or_frozen_surface" | "too_recently_lifted" | "ice_or_weather" | "owner_refused" | "item_not_on_board" | "specialist_scope";
            /**
             * Format: uuid
             * @description The open visit that answers it: lifting it needs somebody who looks.
             * @example 0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a
             */
            visitId: string;
            /** @description What was seen; asked for with `lifted`. */
            words?: string;
        };
        /**
         * @example {
         *       "answer": "done",
         *       "on": "2026-10-01",
         *       "doneBy": {
         *         "name": "Ines Vale",
         *         "capacity": "gas_engineer"
         *       },
         *       "evidence": "certificate",
         *       "reference": "W-118",
         *       "replaced": true,
         *       "serialRead": "AC0001"
         *     }
         */
        NewNoticeAnswer: {
            answer: components["schemas"]["NoticeAnswerCode"];
            /**
             * Format: uuid
             * @description The answer that this one strikes out and stands in for.
             * @example 0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a
             */
            corrects?: string;
            /** @description Who did it, looked, or decided. */
            doneBy: {
                /**
                 * @description Asked for with `done`.
                 * @enum {string}
                 */
                capacity?: "owner_or_skipper" | "crew" | "competent_person" | "surveyor" | "marine_inspector" | "rigger" | "gas_engineer" | "marine_engineer" | "electrician" | "sailmaker" | "yard" | "liferaft_service_station" | "lifejacket_service_station" | "hydrostatic_release_service_station" | "shore_based_maintenance_provider" | "radio_surveyor" | "fire_equipment_technician" | "compass_adjuster" | "measurement_surveyor" | "registered_examiner" | "maker";
                certificate?: string;
                name: string;
            };
            /**
             * @description What shows it; asked for with `done`.
             * @enum {string}
             */
            evidence?: "certificate" | "stamped" | "printed" | "record" | "owner_statement" | "unknown";
            /** @description Why: asked for with `deferred` and `reopened`. */
            note?: string;
            /**
             * Format: date
             * @description The day on which it was done, looked at or decided.
             * @example 2027-03-18
             */
            on: string;
            /** @description A work order, an invoice, the maker’s own number. */
            reference?: string;
            /**
             * @description With `done`: another came in its place. It is recorded as a fact; without `serialRead` the item’s number is taken away.
             * @default false
             */
            replaced: boolean;
            /** @description Read on the thing itself, and written on the item. Asked for with `not_affected` where the notice names serial numbers. */
            serialRead?: string;
            /**
             * Format: date
             * @description `deferred`: the day on which it is looked at again.
             * @example 2027-03-18
             */
            until?: string;
        };
        /**
         * @example {
         *       "reason": "The maker has taken it back."
         *     }
         */
        NewNoticeWithdrawal: {
            reason: string;
        };
        /**
         * @example {
         *       "name": "Curlew Sailing School",
         *       "timeZone": "Europe/Oslo"
         *     }
         */
        NewOrganisation: {
            /** @example Curlew Sailing School */
            name: string;
            timeZone: components["schemas"]["TimeZone"];
        };
        /**
         * @example {
         *       "ruleId": "lpg-hose",
         *       "duty": "replacement",
         *       "period": "P4Y",
         *       "weight": "maker",
         *       "decidedBy": "Anna Berg",
         *       "reason": "The maker of this hose gives it four years.",
         *       "document": "Data sheet H-88, page 2",
         *       "from": "2026-03-01"
         *     }
         */
        NewOverride: {
            /**
             * @description Who decided it.
             * @example Anna Berg
             */
            decidedBy: string;
            /**
             * @description Where it stands.
             * @example Data sheet H-88, page 2
             */
            document: string;
            /**
             * @description The id of one of the rule’s duties.
             * @example replacement
             */
            duty: string;
            /**
             * Format: date
             * @description The first day on which it counts; not in the future.
             * @example 2027-03-18
             */
            from: string;
            /**
             * Format: uuid
             * @description For this item only. Absent: for everything aboard that the rule bears on.
             * @example 0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a
             */
            itemId?: string;
            /**
             * @description Counted in place of the interval that the duty names first, from whatever it counts; another limit of another length stays as published.
             * @example P42M
             */
            period: string;
            /** @example The maker of this hose gives it four years. */
            reason: string;
            /**
             * @description An entry of `/v1/rules`.
             * @example lpg-hose
             */
            ruleId: string;
            /**
             * @description What stands behind the figure.
             * @enum {string}
             */
            weight: "maker" | "insurer" | "own";
        };
        /**
         * @example {
         *       "reason": "Another make of hose was fitted."
         *     }
         */
        NewOverrideEnding: {
            reason: string;
        };
        /**
         * @example {
         *       "kinds": [
         *         "portable_extinguisher_dry_powder",
         *         "portable_extinguisher_foam"
         *       ],
         *       "vessels": {
         *         "which": "all"
         *       },
         *       "action": {
         *         "kind": "inspect",
         *         "words": "Look at pin, gauge and bracket"
         *       },
         *       "inWords": "Every extinguisher is looked at once a week.",
         *       "limits": [
         *         {
         *           "kind": "interval",
         *           "from": "last_done",
         *           "plus": "P7D"
         *         }
         *       ],
         *       "resets": [
         *         {
         *           "act": "inspected",
         *           "by": []
         *         }
         *       ],
         *       "weight": "own",
         *       "takesEffectOn": "2026-03-01",
         *       "decidedBy": "Anna Berg",
         *       "reason": "Two were found empty at the end of last season.",
         *       "document": "Standing orders, no. 4"
         *     }
         */
        NewOwnRule: {
            action: components["schemas"]["OwnAction"];
            /**
             * @description Who decided it.
             * @example Anna Berg
             */
            decidedBy: string;
            /**
             * @description Where it stands in writing.
             * @example Standing orders, no. 4
             */
            document: string;
            /** @description Counted while it was never done, where the limits alone give no day. */
            first?: {
                /** @enum {string} */
                from: "manufactured" | "installed";
                plus: components["schemas"]["Duration"];
            };
            /** @description The whole rule, in full sentences. */
            inWords: string;
            /** @description The things that it bears on. */
            kinds: components["schemas"]["ItemKindCode"][];
            limits: components["schemas"]["OwnLimit"][];
            reason: string;
            resets: components["schemas"]["OwnReset"][];
            /**
             * Format: date
             * @description The first day on which this counts; it may lie in the future.
             * @example 2027-03-18
             */
            takesEffectOn: string;
            vessels: components["schemas"]["OwnRuleVessels"];
            /**
             * @description What stands behind it.
             * @enum {string}
             */
            weight: "own" | "insurer" | "maker" | "common_practice";
            /** @description The span around the due date in which the work counts as done on it. */
            window?: {
                after: components["schemas"]["Duration"];
                before: components["schemas"]["Duration"];
            };
        };
        /**
         * @description `takesEffectOn`: the first day on which there is no such rule.
         * @example {
         *       "takesEffectOn": "2027-01-01",
         *       "decidedBy": "Anna Berg",
         *       "reason": "Gauges that report by themselves were fitted.",
         *       "document": "Standing orders, no. 4"
         *     }
         */
        NewOwnRuleEnding: {
            /**
             * @description Who decided it.
             * @example Anna Berg
             */
            decidedBy: string;
            /**
             * @description Where it stands in writing.
             * @example Standing orders, no. 4
             */
            document: string;
            reason: string;
            /**
             * Format: date
             * @description The first day on which this counts; it may lie in the future.
             * @example 2027-03-18
             */
            takesEffectOn: string;
        };
        /**
         * @example {
         *       "zone": "hull_below_water",
         *       "point": "port, frame 4",
         *       "measure": "moisture",
         *       "value": 18
         *     }
         */
        NewReading: {
            /** @description The `key` of an instrument of the visit. */
            instrument?: string;
            measure: components["schemas"]["MeasureCode"];
            /**
             * @description The survey point: named the same at every visit.
             * @example port, frame 4, 300 mm below the waterline
             */
            point: string;
            /** @description Absent: not measured, which is a gap and never nought. */
            value?: number;
            words?: string;
            zone: components["schemas"]["ZoneCode"];
        };
        /**
         * @example {
         *       "zone": "mast_and_rigging",
         *       "trade": "rigger",
         *       "what": "Mast aloft and all terminals",
         *       "dueOn": "2027-02-27"
         *     }
         */
        NewReferral: {
            dueOn: components["schemas"]["CalendarDay"];
            findingId?: components["schemas"]["Id"];
            itemId?: components["schemas"]["Id"];
            /** @description Who sees to it that somebody comes. */
            responsible?: string;
            trade: components["schemas"]["TradeCode"];
            /**
             * @description What the specialist is to look at.
             * @example Mast aloft and all terminals
             */
            what: string;
            zone: components["schemas"]["ZoneCode"];
        };
        /**
         * @example {
         *       "title": "Hoses that may come off the tail",
         *       "publisher": "Quillmere Hose Works",
         *       "reference": "QH-2026-09",
         *       "issuedOn": "2026-09-03",
         *       "document": "Letter to owners, 3 September 2026",
         *       "kinds": [
         *         "gas_hose"
         *       ],
         *       "makers": [
         *         "Quillmere Hose Works"
         *       ],
         *       "models": [],
         *       "serials": [
         *         {
         *           "from": "AB1200",
         *           "to": "AB1399"
         *         }
         *       ],
         *       "hazard": "gas can escape below",
         *       "action": {
         *         "kind": "replace",
         *         "words": "Have the hose replaced by a gas engineer"
         *       },
         *       "deadline": {
         *         "kind": "on",
         *         "on": "2026-12-31"
         *       },
         *       "weight": "maker"
         *     }
         */
        NewSafetyNotice: {
            action: components["schemas"]["NoticeAction"];
            /**
             * Format: uri
             * @description Where it can be read. An address, a `document` or both.
             */
            address?: string;
            deadline: components["schemas"]["NoticeDeadline"];
            /** @example Letter to owners, 3 September 2026 */
            document?: string;
            /**
             * @description What can happen.
             * @example gas can escape below
             */
            hazard: string;
            /**
             * Format: date
             * @description The day of the notice; not in the future.
             * @example 2027-03-18
             */
            issuedOn: string;
            /** @description The kinds of thing that it is about. */
            kinds: components["schemas"]["ItemKindCode"][];
            /**
             * @description Any of them; none: whoever made it.
             * @default []
             */
            makers: string[];
            /** @description Made between these days, both inclusive; an absent end is open. */
            manufactured?: {
                from?: components["schemas"]["CalendarDay"];
                to?: components["schemas"]["CalendarDay"];
            };
            /**
             * @description Any of them; none: every model.
             * @default []
             */
            models: string[];
            /**
             * @description The maker, or the authority.
             * @example Quillmere Hose Works
             */
            publisher: string;
            /** @example QH-2026-09 */
            reference?: string;
            /**
             * @description Any of them; none: every serial number.
             * @default []
             */
            serials: components["schemas"]["SerialRange"][];
            /** @example Hoses that may come off the tail */
            title: string;
            /**
             * @description `law` when an authority has ordered it.
             * @enum {string}
             */
            weight: "maker" | "law";
        };
        /**
         * @example {
         *       "name": "Extinguishers before Easter",
         *       "page": "due",
         *       "filters": {
         *         "kind": "portable_extinguisher_dry_powder",
         *         "until": "6-months"
         *       },
         *       "shared": false
         *     }
         */
        NewSavedView: {
            /**
             * @description As they stand in the page’s address.
             * @example {
             *       "kind": "portable_extinguisher_dry_powder",
             *       "until": "6-months"
             *     }
             */
            filters: {
                [key: string]: string;
            };
            /** @example Extinguishers before Easter */
            name: string;
            /**
             * @description Which page it is a view of.
             * @enum {string}
             */
            page: "fleet" | "due";
            /** @description Whether everybody in the organisation sees it, or only whoever saved it. */
            shared: boolean;
        };
        /**
         * @example {
         *       "label": "the insurer, for the renewal",
         *       "expiresAt": "2026-12-25T08:12:00Z"
         *     }
         */
        NewShareLink: {
            /**
             * Format: date-time
             * @description At most 366 days ahead.
             * @example 2026-11-25T08:12:00Z
             */
            expiresAt: string;
            /** @description The open findings that a yard is given to put right; with `yard` only, and asked for there. */
            findingIds?: components["schemas"]["Id"][];
            /** @description For whom it is; the outsider reads it too. */
            label: string;
            purpose?: components["schemas"]["SharePurposeCode"];
            /**
             * @description Whether it shows what the vessels are worth.
             * @default false
             */
            showsValue: boolean;
            vesselIds?: components["schemas"]["VesselIds"];
        };
        /**
         * @example {
         *       "seen": "worse",
         *       "on": "2026-11-24",
         *       "words": "The crack is through the outer cover now."
         *     }
         */
        NewSighting: {
            /**
             * @description Asked for with `gone`, which ends the finding.
             * @default []
             */
            evidence: components["schemas"]["FindingEvidence"][];
            /**
             * Format: date
             * @description The day on which somebody looked; not in the future.
             * @example 2027-03-18
             */
            on: string;
            seen: components["schemas"]["SeenCode"];
            /**
             * @description Where it has become more or less urgent. `before_use` is let down only by a surveyor.
             * @enum {string}
             */
            urgency?: "before_use" | "within_weeks" | "this_season" | "next_lay_up" | "observe";
            /**
             * Format: date
             * @description The surveyor’s own day; with `within_weeks` only.
             * @example 2027-03-18
             */
            urgentBy?: string;
            /**
             * Format: uuid
             * @description The open survey visit that answers the finding.
             * @example 0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a
             */
            visitId?: string;
            /** @description What was seen; with `not_examined`, why not. */
            words?: string;
        };
        /**
         * @example {
         *       "from": "2026-11-02",
         *       "place": "ashore",
         *       "use": "laid_up"
         *     }
         */
        NewSituation: {
            /** @default false */
            dismantled: boolean;
            /**
             * Format: date
             * @description Holds from this day until the next situation begins.
             * @example 2027-03-18
             */
            from: string;
            /** @enum {string} */
            place: "afloat" | "ashore";
            /** @default false */
            underRepair: boolean;
            /** @enum {string} */
            use: "in_commission" | "laid_up" | "out_of_service";
        };
        /**
         * @example {
         *       "sha256": "9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08",
         *       "bytes": 2481152,
         *       "words": "Crack at the inner radius",
         *       "zone": "mast_and_rigging"
         *     }
         */
        NewUpload: {
            /** @description How long the file is; at most 20 MiB. */
            bytes: number;
            /**
             * @description The survey point, named the same at every visit; with `zone` only.
             * @example port chainplate
             */
            point?: string;
            /**
             * @description SHA-256 of the whole file, in lower-case hexadecimal.
             * @example 9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08
             */
            sha256: string;
            /**
             * Format: date
             * @description Not in the future; without it: today.
             * @example 2027-03-18
             */
            takenOn?: string;
            /**
             * Format: uuid
             * @description The survey visit on which it was taken.
             * @example 0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a
             */
            visitId?: string;
            /**
             * @description What it shows.
             * @example Crack at the inner radius
             */
            words?: string;
            zone?: components["schemas"]["ZoneCode"];
        };
        /**
         * @description Without `timeZone` she keeps the organisation’s.
         * @example {
         *       "name": "Marsh Harrier",
         *       "type": "sloop",
         *       "builtYear": 1998,
         *       "lengthOverallM": 9.6,
         *       "schemes": [
         *         "uk_small_commercial"
         *       ],
         *       "timeZone": "Europe/London"
         *     }
         */
        NewVessel: {
            beamM?: number;
            builtYear?: number;
            displacementKg?: number;
            draughtM?: number;
            homePort?: string;
            /** @example GRP */
            hullMaterial?: string;
            identifiers?: components["schemas"]["Identifiers"];
            /** @example 9.6 */
            lengthOverallM?: number;
            /** @example Marsh Harrier */
            name: string;
            personsMax?: number;
            rig?: string;
            schemes?: components["schemas"]["SchemeCode"][];
            timeZone?: components["schemas"]["TimeZone"];
            /** @example sloop */
            type?: string;
            value?: components["schemas"]["Money"];
            waterlineLengthM?: number;
        };
        /**
         * @example {
         *       "event": "inspection",
         *       "on": "2027-03-18",
         *       "planned": true
         *     }
         */
        NewVesselEvent: {
            /** @enum {string} */
            event: "inspection" | "haul_out" | "liferaft_service" | "race_start" | "grounding" | "collision" | "lightning" | "fire" | "structural_repair" | "change_of_owner" | "gale" | "alteration" | "gas_system_change";
            note?: string;
            on: components["schemas"]["CalendarDay"];
            /**
             * @description Still to come: an inspection booked, a race entered.
             * @default false
             */
            planned: boolean;
        };
        /**
         * @example {
         *       "purpose": "condition",
         *       "water": "ashore",
         *       "startedOn": "2026-11-24",
         *       "place": "Tangle Quay, hard standing",
         *       "persons": [
         *         {
         *           "name": "Ines Vale",
         *           "capacity": "surveyor",
         *           "qualification": "Small craft surveyor, S-311"
         *         }
         *       ]
         *     }
         */
        NewVisit: {
            ashoreSince?: components["schemas"]["CalendarDay"];
            /** @description Who asked for it. */
            client?: string;
            craft?: components["schemas"]["CraftCode"];
            hoursAboard?: number;
            instructions?: string;
            /** @default [] */
            instruments: components["schemas"]["Instrument"][];
            /** @default false */
            ownerAttended: boolean;
            /** @default [] */
            persons: components["schemas"]["VisitPerson"][];
            /** @example Tangle Quay, hard standing */
            place?: string;
            purpose: components["schemas"]["VisitPurposeCode"];
            /**
             * Format: date
             * @description The day it began; not in the future.
             * @example 2027-03-18
             */
            startedOn: string;
            water: components["schemas"]["WaterCode"];
            weather?: string;
        };
        /**
         * @example {
         *       "zone": "papers",
         *       "answer": "sound",
         *       "words": "Number on the transom agrees with the papers."
         *     }
         */
        NewZoneAnswer: {
            answer: components["schemas"]["ZoneAnswerCode"];
            /**
             * @description Asked for with `not_examined`.
             * @enum {string}
             */
            reason?: "no_access_lining" | "no_access_stowed_gear" | "not_dismantled" | "coating_not_removed" | "afloat" | "in_slings_short_time" | "mast_stepped_head_height_only" | "tank_not_opened" | "no_power" | "engine_not_run" | "wet_or_frozen_surface" | "too_recently_lifted" | "ice_or_weather" | "owner_refused" | "item_not_on_board" | "specialist_scope";
            words?: string;
            zone: components["schemas"]["ZoneCode"];
        };
        /** @description A check digit or the form makes it impossible. */
        NotAnIdentifier: {
            /** @enum {string} */
            identifier: "hin" | "imo" | "mmsi" | "callSign" | "officialNumber" | "beaconId";
            /** @description What it says, as a sentence. */
            inWords: string;
            /** @enum {string} */
            kind: "not_one";
            /** @description As it was given. */
            text: string;
            why: string;
        };
        NoticeAction: {
            /** @enum {string} */
            kind: "stop_using" | "inspect" | "return" | "replace";
            /** @example Have the hose replaced by a gas engineer */
            words: string;
        };
        /**
         * @example {
         *       "answer": "done",
         *       "on": "2026-10-01",
         *       "doneBy": {
         *         "name": "Ines Vale",
         *         "capacity": "gas_engineer"
         *       },
         *       "evidence": "certificate",
         *       "reference": "W-118",
         *       "replaced": true,
         *       "serialRead": "AC0001",
         *       "id": "0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d",
         *       "itemId": "0198c5a3-11d2-7f40-8b6e-0c9d3e2f1a4b",
         *       "corrects": null,
         *       "struckOutBy": null,
         *       "recordedAt": "2026-10-02T08:12:00Z",
         *       "recordedBy": "session:0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e"
         *     }
         */
        NoticeAnswer: {
            answer: components["schemas"]["NoticeAnswerCode"];
            corrects: components["schemas"]["Id"] | null;
            /** @description Who did it, looked, or decided. */
            doneBy: {
                /**
                 * @description Asked for with `done`.
                 * @enum {string}
                 */
                capacity?: "owner_or_skipper" | "crew" | "competent_person" | "surveyor" | "marine_inspector" | "rigger" | "gas_engineer" | "marine_engineer" | "electrician" | "sailmaker" | "yard" | "liferaft_service_station" | "lifejacket_service_station" | "hydrostatic_release_service_station" | "shore_based_maintenance_provider" | "radio_surveyor" | "fire_equipment_technician" | "compass_adjuster" | "measurement_surveyor" | "registered_examiner" | "maker";
                certificate?: string;
                name: string;
            };
            /**
             * @description What shows it; asked for with `done`.
             * @enum {string}
             */
            evidence?: "certificate" | "stamped" | "printed" | "record" | "owner_statement" | "unknown";
            id: components["schemas"]["Id"];
            itemId: components["schemas"]["Id"];
            /** @description Why: asked for with `deferred` and `reopened`. */
            note?: string;
            /**
             * Format: date
             * @description The day on which it was done, looked at or decided.
             * @example 2027-03-18
             */
            on: string;
            recordedAt: components["schemas"]["Instant"];
            recordedBy: string;
            /** @description A work order, an invoice, the maker’s own number. */
            reference?: string;
            replaced: boolean;
            /** @description Read on the thing itself, and written on the item. Asked for with `not_affected` where the notice names serial numbers. */
            serialRead?: string;
            /** @description The answer that struck this one out; it stays visible. */
            struckOutBy: components["schemas"]["Id"] | null;
            /**
             * Format: date
             * @description `deferred`: the day on which it is looked at again.
             * @example 2027-03-18
             */
            until?: string;
        };
        /**
         * @description `done`: what the notice asks. `not_affected`: somebody looked. `deferred`: put off by somebody named; it moves no date. `reopened`: the answer it names was a mistake.
         * @enum {string}
         */
        NoticeAnswerCode: "done" | "not_affected" | "deferred" | "reopened";
        /** @description Entries of the vessels’ lists. */
        NoticeCounts: {
            /** @description Covered, and not yet answered. */
            affected: number;
            answered: number;
            /** @description Somebody must look, and nobody has yet. */
            mayBeAffected: number;
        };
        /** @description By when it must be answered. */
        NoticeDeadline: {
            /** @enum {string} */
            kind: "on";
            on: components["schemas"]["CalendarDay"];
        } | {
            days: number;
            /** @enum {string} */
            kind: "days_after_issue";
        } | {
            /** @enum {string} */
            kind: "before_next_use";
        };
        /**
         * @example {
         *       "vessel": {
         *         "id": "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a",
         *         "name": "Marsh Harrier"
         *       },
         *       "item": {
         *         "id": "0198c5a3-11d2-7f40-8b6e-0c9d3e2f1a4b",
         *         "kind": "gas_hose",
         *         "label": "Gas hose, cooker",
         *         "maker": "Quillmere Hose Works",
         *         "model": null,
         *         "serialNumber": null,
         *         "quantity": 1
         *       },
         *       "state": "may_be_affected",
         *       "because": [
         *         "its serial number is not on record"
         *       ],
         *       "answers": []
         *     }
         */
        NoticeItem: {
            /** @description Every answer, struck-out ones too, in the order in which they were given. */
            answers: components["schemas"]["NoticeAnswer"][];
            /** @description What was compared, or what could not be. */
            because: string[];
            item: components["schemas"]["NoticeThing"];
            state: components["schemas"]["NoticeItemStateCode"];
            vessel: {
                id: components["schemas"]["Id"];
                name: string;
            };
        };
        NoticeItemPage: {
            asOf: components["schemas"]["CalendarDay"];
            items: components["schemas"]["NoticeItem"][];
            nextCursor: string | null;
        };
        /**
         * @description `affected` and `may_be_affected` still wait for an answer.
         * @enum {string}
         */
        NoticeItemStateCode: "affected" | "may_be_affected" | "answered";
        /**
         * @description `may_be_affected`: somebody must look at the thing itself.
         * @enum {string}
         */
        NoticeMatchCode: "affected" | "may_be_affected";
        /**
         * @description What the notice would bear on. Nothing is written.
         * @example {
         *       "counts": {
         *         "affected": 0,
         *         "mayBeAffected": 1,
         *         "notAffected": 3,
         *         "vessels": 1
         *       },
         *       "items": [
         *         {
         *           "vessel": {
         *             "id": "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a",
         *             "name": "Marsh Harrier"
         *           },
         *           "item": {
         *             "id": "0198c5a3-11d2-7f40-8b6e-0c9d3e2f1a4b",
         *             "kind": "gas_hose",
         *             "label": "Gas hose, cooker",
         *             "maker": "Quillmere Hose Works",
         *             "model": null,
         *             "serialNumber": null,
         *             "quantity": 1
         *           },
         *           "match": "may_be_affected",
         *           "because": [
         *             "its serial number is not on record"
         *           ],
         *           "missing": [
         *             "serial number"
         *           ]
         *         }
         *       ]
         *     }
         */
        NoticeMatches: {
            counts: {
                affected: number;
                mayBeAffected: number;
                notAffected: number;
                vessels: number;
            };
            /** @description At most 200: what it covers, what it may cover, then others of its kinds with the reason. */
            items: {
                because: string[];
                item: components["schemas"]["NoticeThing"];
                match: components["schemas"]["NoticeMatchCode"] | "not_affected";
                /** @description What is not on record and would settle it. */
                missing: string[];
                vessel: {
                    id: components["schemas"]["Id"];
                    name: string;
                };
            }[];
        };
        /**
         * @description `open`: something is still to be answered. `answered`: nothing is, or nothing aboard is covered.
         * @enum {string}
         */
        NoticeStateCode: "open" | "answered" | "withdrawn";
        NoticeThing: {
            id: components["schemas"]["Id"];
            kind: string;
            label: string;
            maker: string | null;
            model: string | null;
            quantity: number;
            serialNumber: string | null;
        };
        /**
         * @example {
         *       "ruleId": "raft-solas",
         *       "duty": "service",
         *       "scheme": "solas",
         *       "weight": "law",
         *       "action": {
         *         "kind": "service",
         *         "words": "Have the liferaft serviced at an approved station"
         *       },
         *       "dueOn": "2026-11-04",
         *       "overdueAfter": "2026-11-04",
         *       "latestPermittedOn": "2027-04-04",
         *       "windows": [],
         *       "standing": "overdue",
         *       "explanation": {
         *         "sentence": "Serviced on 4 November 2025. An inflatable liferaft is serviced at intervals of not more than 12 months, so it is due by 4 November 2026.",
         *         "source": {
         *           "publication": "SOLAS",
         *           "clause": "III/20.8.1",
         *           "address": "http://imorules.com/Chunk1853486106.html",
         *           "status": "read"
         *         },
         *         "binds": {
         *           "limit": "12 months after the last service",
         *           "on": "2026-11-04",
         *           "factIds": [
         *             "0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d"
         *           ]
         *         },
         *         "alsoCounted": [],
         *         "setAside": [],
         *         "assumed": [],
         *         "doubts": [],
         *         "missing": [],
         *         "wouldChangeIt": [
         *           {
         *             "act": "serviced",
         *             "by": [
         *               "liferaft_service_station"
         *             ],
         *             "plus": "P12M",
         *             "ifDoneOn": "2026-11-25",
         *             "movesTo": "2027-11-25"
         *           }
         *         ]
         *       }
         *     }
         */
        Obligation: {
            action: components["schemas"]["Action"];
            dueOn?: components["schemas"]["CalendarDay"];
            /** @description The rule’s duty; with `.tightened` your own figure beside one that binds. */
            duty: string;
            expiresOn?: components["schemas"]["CalendarDay"];
            explanation: components["schemas"]["Explanation"];
            latestPermittedOn?: components["schemas"]["CalendarDay"];
            /**
             * Format: date
             * @description The last day on which nothing is wrong yet.
             * @example 2027-03-18
             */
            overdueAfter?: string;
            replaceBy?: components["schemas"]["CalendarDay"];
            /** @description An entry of `/v1/rules`; with `notice:` before it the id of a safety notice. */
            ruleId: string;
            scheme: components["schemas"]["SchemeCode"];
            standing: components["schemas"]["StandingCode"];
            /**
             * Format: date
             * @description On the day asked the duty is suspended, as the vessel is laid up in the way its clause says. The clock runs on and the dates are as ever. What is past its day is not overdue meanwhile but due: it must be done before she returns to service.
             * @example 2027-03-18
             */
            suspendedFrom?: string;
            /**
             * Format: date
             * @description The last day of the suspension, where its end is known.
             * @example 2027-03-18
             */
            suspendedUntil?: string;
            weight: components["schemas"]["WeightCode"];
            windows: {
                closes: components["schemas"]["CalendarDay"];
                opens: components["schemas"]["CalendarDay"];
            }[];
        };
        /** @description All of them: an item has few. */
        ObligationList: {
            asOf: components["schemas"]["CalendarDay"];
            items: components["schemas"]["Obligation"][];
            nextCursor: null;
        };
        /** @description Kept as written: each register has a form of its own. */
        OfficialNumber: {
            /** @description What is doubtful about it by itself. */
            doubts: string[];
            /** @enum {string} */
            identifier: "officialNumber";
            /** @description What it says, as a sentence. */
            inWords: string;
            /** @enum {string} */
            kind: "decoded";
            number: string;
            /** @description As it was given. */
            text: string;
        };
        OpenSession: {
            /** @description The one that asks. */
            current: boolean;
            endsAt: components["schemas"]["Instant"];
            id: components["schemas"]["Id"];
            startedAt: components["schemas"]["Instant"];
            /** @description As the browser called itself when signing in. */
            userAgent?: string;
        };
        /**
         * @example {
         *       "id": "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a",
         *       "name": "Curlew Sailing School",
         *       "timeZone": "Europe/Oslo",
         *       "version": 1
         *     }
         */
        Organisation: {
            id: components["schemas"]["Id"];
            name: string;
            timeZone: string;
            /** @description Its `ETag`. */
            version: number;
        };
        /**
         * @description What is absent stays.
         * @example {
         *       "name": "Curlew Sail Training"
         *     }
         */
        OrganisationChange: {
            /** @example Curlew Sailing School */
            name?: string;
            timeZone?: components["schemas"]["TimeZone"];
        };
        /**
         * @example {
         *       "id": "0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d",
         *       "vesselId": "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a",
         *       "ruleId": "lpg-hose",
         *       "duty": "replacement",
         *       "period": "P4Y",
         *       "weight": "maker",
         *       "decidedBy": "Anna Berg",
         *       "reason": "The maker of this hose gives it four years.",
         *       "document": "Data sheet H-88, page 2",
         *       "from": "2026-03-01",
         *       "recordedAt": "2026-03-01T08:12:00Z",
         *       "recordedBy": "person:0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e",
         *       "version": 1
         *     }
         */
        Override: {
            /**
             * @description Who decided it.
             * @example Anna Berg
             */
            decidedBy: string;
            /**
             * @description Where it stands.
             * @example Data sheet H-88, page 2
             */
            document: string;
            /**
             * @description The id of one of the rule’s duties.
             * @example replacement
             */
            duty: string;
            ended?: components["schemas"]["OverrideEnding"];
            /**
             * Format: date
             * @description The first day on which it counts; not in the future.
             * @example 2027-03-18
             */
            from: string;
            id: components["schemas"]["Id"];
            /**
             * Format: uuid
             * @description For this item only. Absent: for everything aboard that the rule bears on.
             * @example 0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a
             */
            itemId?: string;
            /**
             * @description Counted in place of the interval that the duty names first, from whatever it counts; another limit of another length stays as published.
             * @example P42M
             */
            period: string;
            /** @example The maker of this hose gives it four years. */
            reason: string;
            recordedAt: components["schemas"]["Instant"];
            /** @description The credential that set it. */
            recordedBy: string;
            /**
             * @description An entry of `/v1/rules`.
             * @example lpg-hose
             */
            ruleId: string;
            /** @description Its `ETag`: 1 in force, 2 ended. */
            version: number;
            vesselId: components["schemas"]["Id"];
            /**
             * @description What stands behind the figure.
             * @enum {string}
             */
            weight: "maker" | "insurer" | "own";
        };
        OverrideEnding: {
            /**
             * Format: date
             * @description The first day on which it counts no more.
             * @example 2027-03-18
             */
            on: string;
            reason: string;
            recordedAt: components["schemas"]["Instant"];
            recordedBy: string;
        };
        OverridePage: {
            items: components["schemas"]["Override"][];
            /** @description Asks for the next page; `null` at the end. */
            nextCursor: string | null;
        };
        /** @description What somebody must do; `words` as an instruction. */
        OwnAction: {
            /** @enum {string} */
            kind: "service" | "inspect" | "test" | "replace" | "withdraw" | "overhaul";
            words: string;
        };
        /** @description What leads to the date; of several the earliest binds. `before_event`: done no longer than `within` before its start. */
        OwnLimit: {
            /** @enum {string} */
            from: "manufactured" | "installed" | "last_done";
            /** @enum {string} */
            kind: "interval";
            plus: components["schemas"]["Duration"];
        } | {
            /** @enum {string} */
            kind: "printed_expiry";
        } | {
            hours: number;
            /** @enum {string} */
            kind: "running_hours";
        } | {
            /** @enum {string} */
            event: "inspection" | "haul_out" | "liferaft_service" | "race_start" | "grounding" | "collision" | "lightning" | "fire" | "structural_repair" | "change_of_owner" | "gale" | "alteration" | "gas_system_change";
            /** @enum {string} */
            kind: "before_event";
            within: components["schemas"]["Duration"];
        };
        /** @description An act that starts the clock anew. Without `tests`: whichever; `by` empty: anybody. */
        OwnReset: {
            /** @enum {string} */
            act: "inspected" | "serviced" | "tested" | "replaced" | "overhauled";
            by: ("owner_or_skipper" | "crew" | "competent_person" | "surveyor" | "marine_inspector" | "rigger" | "gas_engineer" | "marine_engineer" | "electrician" | "sailmaker" | "yard" | "liferaft_service_station" | "lifejacket_service_station" | "hydrostatic_release_service_station" | "shore_based_maintenance_provider" | "radio_surveyor" | "fire_equipment_technician" | "compass_adjuster" | "measurement_surveyor" | "registered_examiner" | "maker")[];
            tests?: ("visual" | "internal_examination" | "extended_service" | "hydrostatic" | "gas_inflation" | "necessary_additional_pressure" | "working_pressure" | "crack_test" | "valve_examination" | "onboard_check" | "drain" | "self_test" | "function" | "full_function" | "examination" | "weighing" | "inflation_24_hours" | "load_test" | "bolt_drawn" | "compass_swing" | "out_of_water" | "initial_survey" | "annual_survey" | "intermediate_survey" | "renewal_survey" | "tightness" | "acceptance" | "annual_test" | "battery" | "oil_and_filter" | "impeller" | "coolant" | "belts" | "belt_inspection" | "details_confirmed" | "discharge")[];
        };
        /** @description Of a day, what was laid down last among the versions that had taken effect by then counts: a version also stands in for what was planned before for a later day. */
        OwnRule: {
            /** @description The number of the version that counts now. Absent: none yet, or it has ended. */
            inForce?: number;
            /** @description The rule’s `ETag`: another with each version laid down or taken up. */
            version: number;
            versions: components["schemas"]["OwnRuleVersion"][];
        };
        /** @description What a version lays down; a version without it ends the rule. */
        OwnRuleText: {
            action: components["schemas"]["OwnAction"];
            /** @description Counted while it was never done, where the limits alone give no day. */
            first?: {
                /** @enum {string} */
                from: "manufactured" | "installed";
                plus: components["schemas"]["Duration"];
            };
            /** @description The whole rule, in full sentences. */
            inWords: string;
            /** @description The things that it bears on. */
            kinds: components["schemas"]["ItemKindCode"][];
            limits: components["schemas"]["OwnLimit"][];
            resets: components["schemas"]["OwnReset"][];
            vessels: components["schemas"]["OwnRuleVessels"];
            /**
             * @description What stands behind it.
             * @enum {string}
             */
            weight: "own" | "insurer" | "maker" | "common_practice";
            /** @description The span around the due date in which the work counts as done on it. */
            window?: {
                after: components["schemas"]["Duration"];
                before: components["schemas"]["Duration"];
            };
        };
        OwnRuleVersion: {
            /**
             * Format: uuid
             * @description An entry of `/v1/rule-changes`. Absent until its day has come and it was taken up.
             * @example 0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a
             */
            changeId?: string;
            /**
             * @description Who decided it.
             * @example Anna Berg
             */
            decidedBy: string;
            /**
             * @description Where it stands in writing.
             * @example Standing orders, no. 4
             */
            document: string;
            laysDown?: components["schemas"]["OwnRuleText"];
            /** @description From 1, in the order in which they were laid down. */
            number: number;
            reason: string;
            recordedAt: components["schemas"]["Instant"];
            /** @description The credential that laid it down. */
            recordedBy: string;
            /**
             * Format: date
             * @description The first day on which this counts; it may lie in the future.
             * @example 2027-03-18
             */
            takesEffectOn: string;
        };
        OwnRuleVessels: {
            /** @enum {string} */
            which: "all";
        } | {
            scheme: components["schemas"]["SchemeCode"];
            /** @enum {string} */
            which: "under_scheme";
        } | {
            vesselIds: components["schemas"]["Id"][];
            /** @enum {string} */
            which: "chosen";
        };
        /**
         * @example {
         *       "season": {
         *         "from": "04-01",
         *         "to": "10-15"
         *       }
         *     }
         */
        OwnSeason: {
            season: components["schemas"]["Season"] | null;
        };
        Passkey: {
            createdAt?: components["schemas"]["Instant"];
            id: components["schemas"]["Id"];
            name?: string;
        };
        /**
         * @description One thing that a role may or may not do.
         * @enum {string}
         */
        PermissionCode: "read" | "record_facts" | "keep_register" | "answer_findings" | "put_off_findings" | "verify_findings" | "survey" | "take_originals" | "keep_rules" | "manage_people" | "read_audit" | "share" | "keep_keys" | "keep_organisation";
        /**
         * @example {
         *       "id": "5a0c9b2e-0f6b-4a53-9c35-0d8f5b7e2a11",
         *       "name": "Ines Falk",
         *       "email": "ines@curlew.example",
         *       "role": "surveyor",
         *       "joinedAt": "2026-03-01T08:12:00Z",
         *       "version": 1
         *     }
         */
        Person: {
            /** @description Told to whoever may manage people, and to nobody else. */
            email?: string;
            id: components["schemas"]["Id"];
            joinedAt: components["schemas"]["Instant"];
            /** @description Absent for somebody whose account was erased. */
            name?: string;
            role: components["schemas"]["RoleCode"];
            /** @description Its `ETag`. */
            version: number;
            vesselIds?: components["schemas"]["VesselIds"];
        };
        /**
         * @description What is absent stays.
         * @example {
         *       "role": "viewer",
         *       "vesselIds": null
         *     }
         */
        PersonChange: {
            role?: components["schemas"]["RoleCode"];
            /** @description Only these vessels; `null`: the whole fleet. `owner` and `manager` are always for the whole fleet. */
            vesselIds?: components["schemas"]["VesselIds"] | null;
        };
        PersonPage: {
            items: components["schemas"]["Person"][];
            /** @description Asks for the next page; `null` at the end. */
            nextCursor: string | null;
        };
        /**
         * @example {
         *       "reason": "The season is over."
         *     }
         */
        PersonRemoval: {
            reason: string;
        };
        /** @description RFC 9457 problem details. */
        Problem: {
            detail?: string;
            /** @description Every fault at once. */
            errors?: components["schemas"]["Fault"][];
            /**
             * @description The request id, as in `X-Request-Id`.
             * @example 6f1f2a52-7c57-4c3e-9d1b-3a4d5c6e7f80
             */
            instance?: string;
            /** @example 404 */
            status: number;
            /** @example No such thing here */
            title: string;
            /**
             * @description Resolves to a page that says what it means.
             * @example /problems/not-found
             */
            type: string;
        };
        /** @description Told apart by `kind`, `identifier` and, for beacons, `generation`. */
        ReadIdentifier: components["schemas"]["NotAnIdentifier"] | components["schemas"]["HullNumber"] | components["schemas"]["ImoNumber"] | components["schemas"]["Mmsi"] | components["schemas"]["CallSign"] | components["schemas"]["OfficialNumber"] | components["schemas"]["FirstGenerationBeacon"] | components["schemas"]["SecondGenerationBeacon"];
        /**
         * @example {
         *       "identifiers": [
         *         {
         *           "identifier": "imo",
         *           "text": "9074720",
         *           "inWords": "IMO number: 9074720 cannot be one.",
         *           "kind": "not_one",
         *           "why": "Check digit: the first six digits ask for 9 at the end, not 0."
         *         }
         *       ],
         *       "doubts": [
         *         "IMO number 9074720 cannot be one. Check digit: the first six digits ask for 9 at the end, not 0."
         *       ]
         *     }
         */
        ReadIdentifiers: {
            /** @description Sentences: what is doubtful about each, and where one does not agree with another. None refuses. */
            doubts: string[];
            /** @description In the order of a vessel’s papers. */
            identifiers: components["schemas"]["ReadIdentifier"][];
        };
        /**
         * @description Each as it is written; what is absent is not known.
         * @example {
         *       "hin": "GB-QZX00042C898",
         *       "mmsi": "232123456",
         *       "beaconIds": [
         *         "9D09D65028154D1"
         *       ],
         *       "builtYear": 2001
         *     }
         */
        ReadIdentifiersRequest: {
            /**
             * @description Of the 406 MHz beacons aboard: 15 hexadecimal characters, or 23 of the second generation.
             * @default []
             */
            beaconIds: string[];
            /** @description Held against the HIN. */
            builtYear?: number;
            /** @description Call sign of the ship station. */
            callSign?: string;
            /** @description Name of a country, held against the MMSI; a name that is not in our table is not compared. */
            flagCountry?: string;
            /** @description Hull identification number, also with the country before it. */
            hin?: string;
            /** @description IMO ship identification number. */
            imo?: string;
            /** @description Maritime mobile service identity. */
            mmsi?: string;
            /** @description What a national register wrote down. */
            officialNumber?: string;
        };
        /**
         * @example {
         *       "id": "0198c5a6-3b10-7e21-9a3b-4c5d6e7f8093",
         *       "zone": "hull_below_water",
         *       "point": "port, frame 4",
         *       "measure": "moisture",
         *       "value": 18,
         *       "unit": "scale",
         *       "takenOn": "2026-11-24",
         *       "check": "unknown"
         *     }
         */
        Reading: {
            /**
             * @description Of the instrument, on the day. `unknown`: no instrument, or no day of its next check, is on record.
             * @enum {string}
             */
            check: "in_check" | "out_of_check" | "unknown";
            id: components["schemas"]["Id"];
            /** @description The `key` of an instrument of the visit. */
            instrument?: string;
            /** @description What a publication asks of this survey point, and whether the reading keeps it. */
            limit?: {
                atLeast: number;
                inWords: string;
                source: {
                    address: string;
                    clause: string;
                    publication: string;
                    /** @enum {string} */
                    status: "read" | "second_hand" | "memory" | "common_practice";
                };
                within: boolean;
            };
            measure: components["schemas"]["MeasureCode"];
            /**
             * @description The survey point: named the same at every visit.
             * @example port, frame 4, 300 mm below the waterline
             */
            point: string;
            takenOn: components["schemas"]["CalendarDay"];
            unit: string;
            /** @description Absent: not measured, which is a gap and never nought. */
            value?: number;
            words?: string;
            zone: components["schemas"]["ZoneCode"];
        };
        /**
         * @description A date as written down: to the day, the month or the year.
         * @example 2024-03
         */
        RecordedDate: string;
        /**
         * @example {
         *       "fact": {
         *         "id": "0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d",
         *         "itemId": "0198c5a3-11d2-7f40-8b6e-0c9d3e2f1a4b",
         *         "fact": "serviced",
         *         "on": "2025-11-04",
         *         "outcome": "passed",
         *         "doneBy": {
         *           "capacity": "liferaft_service_station"
         *         },
         *         "evidence": "certificate",
         *         "recordedAt": "2026-11-25T08:12:00Z",
         *         "recordedBy": "api_key:0198c5a1-0000-7000-8000-000000000001",
         *         "corrects": null,
         *         "struckOutBy": null
         *       },
         *       "asOf": "2026-11-25",
         *       "obligations": [
         *         {
         *           "ruleId": "raft-solas",
         *           "duty": "service",
         *           "scheme": "solas",
         *           "weight": "law",
         *           "action": {
         *             "kind": "service",
         *             "words": "Have the liferaft serviced at an approved station"
         *           },
         *           "dueOn": "2026-11-04",
         *           "overdueAfter": "2026-11-04",
         *           "latestPermittedOn": "2027-04-04",
         *           "windows": [],
         *           "standing": "overdue",
         *           "explanation": {
         *             "sentence": "Serviced on 4 November 2025. An inflatable liferaft is serviced at intervals of not more than 12 months, so it is due by 4 November 2026.",
         *             "source": {
         *               "publication": "SOLAS",
         *               "clause": "III/20.8.1",
         *               "address": "http://imorules.com/Chunk1853486106.html",
         *               "status": "read"
         *             },
         *             "binds": {
         *               "limit": "12 months after the last service",
         *               "on": "2026-11-04",
         *               "factIds": [
         *                 "0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d"
         *               ]
         *             },
         *             "alsoCounted": [],
         *             "setAside": [],
         *             "assumed": [],
         *             "doubts": [],
         *             "missing": [],
         *             "wouldChangeIt": [
         *               {
         *                 "act": "serviced",
         *                 "by": [
         *                   "liferaft_service_station"
         *                 ],
         *                 "plus": "P12M",
         *                 "ifDoneOn": "2026-11-25",
         *                 "movesTo": "2027-11-25"
         *               }
         *             ]
         *           }
         *         }
         *       ],
         *       "doubts": []
         *     }
         */
        RecordedFact: {
            /**
             * Format: date
             * @description The day it was recorded, in the vessel’s own place.
             * @example 2027-03-18
             */
            asOf: string;
            /** @description What looks odd about the fact although it was accepted. */
            doubts: string[];
            fact: components["schemas"]["Fact"];
            /** @description Every obligation of the item after this fact. */
            obligations: components["schemas"]["Obligation"][];
        };
        /**
         * @example {
         *       "id": "0198c5a6-3b10-7e21-9a3b-4c5d6e7f8095",
         *       "vessel": {
         *         "id": "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a",
         *         "name": "Marsh Harrier"
         *       },
         *       "zone": "mast_and_rigging",
         *       "trade": "rigger",
         *       "what": "Mast aloft and all terminals",
         *       "dueOn": "2027-02-27",
         *       "askedOn": "2026-11-24"
         *     }
         */
        Referral: {
            askedOn: components["schemas"]["CalendarDay"];
            dueOn: components["schemas"]["CalendarDay"];
            findingId?: components["schemas"]["Id"];
            id: components["schemas"]["Id"];
            itemId?: components["schemas"]["Id"];
            /** @description Who sees to it that somebody comes. */
            responsible?: string;
            result?: components["schemas"]["ReferralResult"];
            trade: components["schemas"]["TradeCode"];
            vessel: {
                id: components["schemas"]["Id"];
                name: string;
            };
            visitId?: components["schemas"]["Id"];
            /**
             * @description What the specialist is to look at.
             * @example Mast aloft and all terminals
             */
            what: string;
            zone: components["schemas"]["ZoneCode"];
        };
        ReferralPage: {
            items: components["schemas"]["Referral"][];
            /** @description Asks for the next page; `null` at the end. */
            nextCursor: string | null;
        };
        /**
         * @example {
         *       "on": "2026-11-25",
         *       "by": "Orla Stave",
         *       "words": "Two terminals cracked, port lower and backstay."
         *     }
         */
        ReferralResult: {
            /** @description The specialist, by name. */
            by: string;
            on: components["schemas"]["CalendarDay"];
            qualification?: string;
            /** @description What they found. */
            words: string;
        };
        /** @description The last day that a rule or an authority leaves for it: nothing puts it off past that. */
        RemedialLimit: {
            on: components["schemas"]["CalendarDay"];
            /**
             * @description The publication and clause, or the authority’s own paper.
             * @example SI 2023/1216 reg 20
             */
            source: string;
        };
        Remedy: {
            doneOn?: components["schemas"]["CalendarDay"];
            endedOn?: components["schemas"]["CalendarDay"];
            forDay?: components["schemas"]["CalendarDay"];
            /** @description `false`: closed, not independently checked. */
            independent?: boolean;
            /**
             * Format: uuid
             * @description The finding that it was merged into.
             * @example 0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a
             */
            into?: string;
            responsible?: string;
            reviewOn?: components["schemas"]["CalendarDay"];
            state: components["schemas"]["FindingStateCode"];
        };
        /**
         * @example {
         *       "step": "propose",
         *       "work": "Replace the hose",
         *       "trade": "gas_engineer"
         *     }
         */
        RemedyStep: {
            estimate?: components["schemas"]["Estimate"];
            /** @enum {string} */
            step: "propose";
            trade?: components["schemas"]["TradeCode"];
            /**
             * @description What is to be done, or was.
             * @example Hose replaced and the joint tested
             */
            work: string;
        } | {
            forDay?: components["schemas"]["CalendarDay"];
            responsible?: string;
            /** @enum {string} */
            step: "plan";
            trade?: components["schemas"]["TradeCode"];
            /**
             * @description What is to be done, or was.
             * @example Hose replaced and the joint tested
             */
            work?: string;
        } | {
            /** @enum {string} */
            step: "begin";
            words?: string;
        } | {
            doneBy?: components["schemas"]["WorkDoneBy"];
            doneOn: components["schemas"]["CalendarDay"];
            /** @default [] */
            evidence: components["schemas"]["FindingEvidence"][];
            /**
             * @description What the work did to things aboard: recorded in the same act, so that their dates move.
             * @default []
             */
            facts: {
                fact: components["schemas"]["NewFact"];
                itemId: components["schemas"]["Id"];
            }[];
            /** @enum {string} */
            step: "report_done";
            /**
             * @description What is to be done, or was.
             * @example Hose replaced and the joint tested
             */
            work: string;
        } | {
            /** @description Why. */
            reason: string;
            /** @description The person who answers for it, by name. */
            responsible: string;
            /**
             * Format: date
             * @description When somebody looks at it again; no later than the organisation allows.
             * @example 2027-03-18
             */
            reviewOn: string;
            /** @enum {string} */
            step: "defer";
            until: components["schemas"]["CalendarDay"];
        } | {
            /** @description Why. */
            reason: string;
            /** @description The person who answers for it, by name. */
            responsible: string;
            /**
             * Format: date
             * @description When somebody looks at it again; no later than the organisation allows.
             * @example 2027-03-18
             */
            reviewOn: string;
            /** @enum {string} */
            step: "accept";
        } | {
            /** @description Why. */
            reason: string;
            /** @enum {string} */
            step: "enter_in_error";
        } | {
            /** @description Why. */
            reason: string;
            /** @enum {string} */
            step: "reopen";
        };
        /** @description An act that starts the clock anew, when its outcome is `passed`. Without `tests`: whichever; with them, the fact’s `test` must be one of them; `by` empty: anybody. */
        Reset: {
            /** @enum {string} */
            act: "manufactured" | "installed" | "printed_expiry" | "inspected" | "serviced" | "tested" | "replaced" | "overhauled" | "extended" | "activated" | "moved" | "meter" | "withdrawn";
            by: ("owner_or_skipper" | "crew" | "competent_person" | "surveyor" | "marine_inspector" | "rigger" | "gas_engineer" | "marine_engineer" | "electrician" | "sailmaker" | "yard" | "liferaft_service_station" | "lifejacket_service_station" | "hydrostatic_release_service_station" | "shore_based_maintenance_provider" | "radio_surveyor" | "fire_equipment_technician" | "compass_adjuster" | "measurement_surveyor" | "registered_examiner" | "maker")[];
            tests?: ("visual" | "internal_examination" | "extended_service" | "hydrostatic" | "gas_inflation" | "necessary_additional_pressure" | "working_pressure" | "crack_test" | "valve_examination" | "onboard_check" | "drain" | "self_test" | "function" | "full_function" | "examination" | "weighing" | "inflation_24_hours" | "load_test" | "bolt_drawn" | "compass_swing" | "out_of_water" | "initial_survey" | "annual_survey" | "intermediate_survey" | "renewal_survey" | "tightness" | "acceptance" | "annual_test" | "battery" | "oil_and_filter" | "impeller" | "coolant" | "belts" | "belt_inspection" | "details_confirmed" | "discharge")[];
        };
        /**
         * @description What somebody may do. Every role reads; `viewer` changes nothing. The whole table is in docs/roles.md.
         * @enum {string}
         */
        RoleCode: "owner" | "manager" | "surveyor" | "yard" | "viewer";
        RouteFinding: {
            id: components["schemas"]["Id"];
            number: number;
            reads: string;
            /** @description What this visit saw of it; absent: not answered yet. */
            seen?: "new" | components["schemas"]["SeenCode"];
            urgency: components["schemas"]["UrgencyCode"];
            version: number;
            what: string;
        };
        RouteLimitation: {
            /** @enum {string} */
            answered?: "lifted" | "still" | "new";
            id: components["schemas"]["Id"];
            imposedOn: components["schemas"]["CalendarDay"];
            reason: components["schemas"]["LimitationReasonCode"];
            version: number;
            what: string;
        };
        RouteReferral: {
            dueOn: components["schemas"]["CalendarDay"];
            id: components["schemas"]["Id"];
            trade: components["schemas"]["TradeCode"];
            what: string;
        };
        RouteStop: {
            answer?: components["schemas"]["ZoneAnswer"];
            /** @description Photographs and papers of this visit. */
            evidence: components["schemas"]["EvidenceFile"][];
            findings: components["schemas"]["RouteFinding"][];
            limitations: components["schemas"]["RouteLimitation"][];
            name: string;
            /** @description Survey points of this place: measured on her before, or named by a publication. */
            points: string[];
            readings: components["schemas"]["Reading"][];
            referrals: components["schemas"]["RouteReferral"][];
            zone: components["schemas"]["ZoneCode"];
        };
        RouteZone: {
            name: string;
            zone: components["schemas"]["ZoneCode"];
        };
        /**
         * @example {
         *       "id": "raft-solas",
         *       "scheme": "solas",
         *       "weight": "law",
         *       "kinds": [
         *         "liferaft"
         *       ],
         *       "inWords": "An inflatable liferaft is serviced at intervals of not more than 12 months, at an approved station.",
         *       "source": {
         *         "publication": "SOLAS",
         *         "clause": "III/20.8.1",
         *         "address": "http://imorules.com/Chunk1853486106.html",
         *         "status": "read"
         *       },
         *       "duties": [
         *         {
         *           "id": "service",
         *           "action": {
         *             "kind": "service",
         *             "words": "Have the liferaft serviced at an approved station"
         *           },
         *           "inWords": "An inflatable liferaft is serviced at intervals of not more than 12 months",
         *           "details": [
         *             "Due: 12 months after the last service.",
         *             "An authority may extend it to 17 months: counts only when that is on record."
         *           ],
         *           "resets": [
         *             {
         *               "act": "serviced",
         *               "by": [
         *                 "liferaft_service_station"
         *               ]
         *             }
         *           ]
         *         }
         *       ],
         *       "checks": [],
         *       "alsoAsks": [],
         *       "appliesWhen": [
         *         "Applies where raft type-approved for extended service intervals: no; while that is not on record, it is taken to apply."
         *       ],
         *       "whileNotRecorded": [
         *         "A date known only to the month or year counts from its first day, and that is told.",
         *         "A permission to be late counts only while it is on record as an extension, with the last day that it covers; without one, only how far it could go is told."
         *       ],
         *       "reads": {
         *         "facts": [
         *           "extended",
         *           "serviced"
         *         ],
         *         "tests": [],
         *         "attributes": [],
         *         "events": [],
         *         "situations": [],
         *         "meanings": [
         *           {
         *             "of": "capacity",
         *             "code": "liferaft_service_station",
         *             "words": "a liferaft service station"
         *           }
         *         ]
         *       },
         *       "own": false
         *     }
         */
        Rule: {
            /** @description What the clause asks besides, and is not worked out here. */
            alsoAsks: string[];
            /** @description Conditions for the whole rule; none: it always applies. */
            appliesWhen: string[];
            /** @description No date of their own: they put a doubt on what is recorded. */
            checks: {
                inWords: string;
            }[];
            duties: components["schemas"]["Duty"][];
            id: string;
            inWords: string;
            kinds: components["schemas"]["ItemKindCode"][];
            /** @description Made by your organisation. */
            own: boolean;
            ownRule?: components["schemas"]["OwnRule"];
            reads: components["schemas"]["RuleReads"];
            scheme: components["schemas"]["SchemeCode"];
            source: components["schemas"]["Source"];
            weight: components["schemas"]["WeightCode"];
            /** @description What is assumed or left unknown while something is not on record, or only roughly. */
            whileNotRecorded: string[];
        };
        /**
         * @example {
         *       "id": "0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d",
         *       "ruleId": "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a",
         *       "number": 2,
         *       "state": "running",
         *       "itemsTotal": 164,
         *       "itemsDone": 80,
         *       "obligationsChanged": 80,
         *       "begunAt": "2026-11-25T08:12:00Z"
         *     }
         */
        RuleChange: {
            begunAt: components["schemas"]["Instant"];
            finishedAt?: components["schemas"]["Instant"];
            id: components["schemas"]["Id"];
            itemsDone: number;
            /** @description The things it can touch, counted when it began. */
            itemsTotal: number;
            /** @description The number of the version that makes the change. */
            number: number;
            obligationsChanged: number;
            ruleId: components["schemas"]["Id"];
            /** @enum {string} */
            state: "running" | "done";
        };
        RulePage: {
            items: components["schemas"]["Rule"][];
            /** @description Asks for the next page; `null` at the end. */
            nextCursor: string | null;
        };
        /** @description What the rule reads, so that a request to explain can be written from this page. */
        RuleReads: {
            attributes: components["schemas"]["Attribute"][];
            events: ("inspection" | "haul_out" | "liferaft_service" | "race_start" | "grounding" | "collision" | "lightning" | "fire" | "structural_repair" | "change_of_owner" | "gale" | "alteration" | "gas_system_change")[];
            facts: ("manufactured" | "installed" | "printed_expiry" | "inspected" | "serviced" | "tested" | "replaced" | "overhauled" | "extended" | "activated" | "moved" | "meter" | "withdrawn")[];
            /** @description What each code means that is named above or in `resets`, and what is stated with it. */
            meanings: components["schemas"]["Meaning"][];
            situations: ("place" | "use" | "dismantled" | "underRepair")[];
            tests: ("visual" | "internal_examination" | "extended_service" | "hydrostatic" | "gas_inflation" | "necessary_additional_pressure" | "working_pressure" | "crack_test" | "valve_examination" | "onboard_check" | "drain" | "self_test" | "function" | "full_function" | "examination" | "weighing" | "inflation_24_hours" | "load_test" | "bolt_drawn" | "compass_swing" | "out_of_water" | "initial_survey" | "annual_survey" | "intermediate_survey" | "renewal_survey" | "tightness" | "acceptance" | "annual_test" | "battery" | "oil_and_filter" | "impeller" | "coolant" | "belts" | "belt_inspection" | "details_confirmed" | "discharge")[];
        };
        /**
         * @example {
         *       "id": "0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d",
         *       "title": "Hoses that may come off the tail",
         *       "publisher": "Quillmere Hose Works",
         *       "reference": "QH-2026-09",
         *       "issuedOn": "2026-09-03",
         *       "document": "Letter to owners, 3 September 2026",
         *       "kinds": [
         *         "gas_hose"
         *       ],
         *       "makers": [
         *         "Quillmere Hose Works"
         *       ],
         *       "models": [],
         *       "serials": [
         *         {
         *           "from": "AB1200",
         *           "to": "AB1399"
         *         }
         *       ],
         *       "hazard": "gas can escape below",
         *       "action": {
         *         "kind": "replace",
         *         "words": "Have the hose replaced by a gas engineer"
         *       },
         *       "deadline": {
         *         "kind": "on",
         *         "on": "2026-12-31"
         *       },
         *       "weight": "maker",
         *       "dueOn": "2026-12-31",
         *       "state": "open",
         *       "counts": {
         *         "affected": 2,
         *         "mayBeAffected": 1,
         *         "answered": 4
         *       },
         *       "recordedAt": "2026-09-10T08:12:00Z",
         *       "recordedBy": "session:0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e",
         *       "version": 1
         *     }
         */
        SafetyNotice: {
            action: components["schemas"]["NoticeAction"];
            /**
             * Format: uri
             * @description Where it can be read. An address, a `document` or both.
             */
            address?: string;
            counts: components["schemas"]["NoticeCounts"];
            deadline: components["schemas"]["NoticeDeadline"];
            /** @example Letter to owners, 3 September 2026 */
            document?: string;
            /**
             * Format: date
             * @description The last day on which nothing is wrong yet.
             * @example 2027-03-18
             */
            dueOn: string;
            /**
             * @description What can happen.
             * @example gas can escape below
             */
            hazard: string;
            id: components["schemas"]["Id"];
            /**
             * Format: date
             * @description The day of the notice; not in the future.
             * @example 2027-03-18
             */
            issuedOn: string;
            /** @description The kinds of thing that it is about. */
            kinds: components["schemas"]["ItemKindCode"][];
            makers: string[];
            /** @description Made between these days, both inclusive; an absent end is open. */
            manufactured?: {
                from?: components["schemas"]["CalendarDay"];
                to?: components["schemas"]["CalendarDay"];
            };
            models: string[];
            /**
             * @description The maker, or the authority.
             * @example Quillmere Hose Works
             */
            publisher: string;
            recordedAt: components["schemas"]["Instant"];
            recordedBy: string;
            /** @example QH-2026-09 */
            reference?: string;
            serials: components["schemas"]["SerialRange"][];
            state: components["schemas"]["NoticeStateCode"];
            /** @example Hoses that may come off the tail */
            title: string;
            /** @description Its `ETag`: 1 open, 2 withdrawn. Answers do not change it. */
            version: number;
            /**
             * @description `law` when an authority has ordered it.
             * @enum {string}
             */
            weight: "maker" | "law";
            withdrawn?: {
                /**
                 * Format: date
                 * @description The first day on which it asks nothing more.
                 * @example 2027-03-18
                 */
                on: string;
                reason: string;
                recordedAt: components["schemas"]["Instant"];
                recordedBy: string;
            };
        };
        SafetyNoticePage: {
            items: components["schemas"]["SafetyNotice"][];
            /** @description Asks for the next page; `null` at the end. */
            nextCursor: string | null;
        };
        SampledThing: {
            itemId: components["schemas"]["Id"];
            label: string;
        };
        /**
         * @example {
         *       "id": "0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d",
         *       "name": "Extinguishers before Easter",
         *       "page": "due",
         *       "filters": {
         *         "kind": "portable_extinguisher_dry_powder",
         *         "until": "6-months"
         *       },
         *       "shared": false,
         *       "savedBy": "person:0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e",
         *       "createdAt": "2026-11-25T08:12:00Z",
         *       "version": 1
         *     }
         */
        SavedView: {
            createdAt: components["schemas"]["Instant"];
            /**
             * @description As they stand in the page’s address.
             * @example {
             *       "kind": "portable_extinguisher_dry_powder",
             *       "until": "6-months"
             *     }
             */
            filters: {
                [key: string]: string;
            };
            id: components["schemas"]["Id"];
            /** @example Extinguishers before Easter */
            name: string;
            /**
             * @description Which page it is a view of.
             * @enum {string}
             */
            page: "fleet" | "due";
            /** @description The credential that saved it first. */
            savedBy: string;
            /** @description Whether everybody in the organisation sees it, or only whoever saved it. */
            shared: boolean;
            /** @description Its `ETag`. */
            version: number;
        };
        /**
         * @example {
         *       "name": "Extinguishers before Whitsun"
         *     }
         */
        SavedViewChange: {
            /**
             * @description As they stand in the page’s address.
             * @example {
             *       "kind": "portable_extinguisher_dry_powder",
             *       "until": "6-months"
             *     }
             */
            filters?: {
                [key: string]: string;
            };
            /** @example Extinguishers before Easter */
            name?: string;
            /** @description Whether everybody in the organisation sees it, or only whoever saved it. */
            shared?: boolean;
        };
        SavedViewPage: {
            items: components["schemas"]["SavedView"][];
            /** @description Asks for the next page; `null` at the end. */
            nextCursor: string | null;
        };
        /**
         * @example {
         *       "id": "solas",
         *       "name": "SOLAS",
         *       "weight": "law",
         *       "always": false,
         *       "about": "The Safety of Life at Sea convention with the IMO resolutions and circulars under it."
         *     }
         */
        Scheme: {
            about: string;
            /** @description Applies to every vessel without being chosen. */
            always: boolean;
            id: components["schemas"]["SchemeCode"];
            name: string;
            weight: components["schemas"]["WeightCode"];
        };
        /**
         * @description A body of rules that a vessel is kept under: an entry of `/v1/schemes`.
         * @enum {string}
         */
        SchemeCode: "solas" | "us_recreational" | "us_sailing_school" | "us_small_passenger" | "us_offshore_supply" | "us_documentation" | "canada_lifesaving" | "uk_small_commercial" | "uk_workboat" | "uk_inland" | "eu_inland" | "caribbean_small_commercial" | "harmonised_survey" | "radio_licence" | "offshore_racing" | "bs5306" | "nfpa10" | "insurer" | "maker" | "common_practice" | "own" | "historic";
        SchemePage: {
            items: components["schemas"]["Scheme"][];
            /** @description Asks for the next page; `null` at the end. */
            nextCursor: string | null;
        };
        /**
         * @example {
         *       "sealed": "{\"visit\":{}}",
         *       "hash": "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa",
         *       "addenda": []
         *     }
         */
        SealedCopy: {
            /** @description Corrections that came afterwards; they are not under the hash. */
            addenda: components["schemas"]["Addendum"][];
            /** @description SHA-256 of that text in UTF-8, in hexadecimal. */
            hash: string;
            /** @description What was sealed, as text in the canonical form of RFC 8785. Hash it as it stands. */
            sealed: string;
        };
        /**
         * @description The best of each, at most `limit`.
         * @example {
         *       "vessels": [
         *         {
         *           "id": "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a",
         *           "name": "Marsh Harrier",
         *           "type": "sloop"
         *         }
         *       ],
         *       "things": [
         *         {
         *           "id": "0198c5a3-11d2-7f40-8b6e-0c9d3e2f1a4b",
         *           "kind": "liferaft",
         *           "label": "Liferaft, 6 persons",
         *           "serialNumber": "M-4471",
         *           "withdrawn": false,
         *           "vessel": {
         *             "id": "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a",
         *             "name": "Marsh Harrier"
         *           }
         *         }
         *       ],
         *       "rules": [
         *         {
         *           "id": "raft-solas",
         *           "publication": "SOLAS",
         *           "clause": "III/20.8.1",
         *           "inWords": "An inflatable liferaft is serviced at intervals of not more than 12 months."
         *         }
         *       ]
         *     }
         */
        SearchAnswer: {
            rules: components["schemas"]["FoundRule"][];
            things: components["schemas"]["FoundItem"][];
            vessels: components["schemas"]["FoundVessel"][];
        };
        /**
         * @description The first and the last day, both in it. It may run over the turn of the year.
         * @example {
         *       "from": "04-01",
         *       "to": "10-15"
         *     }
         */
        Season: {
            from: components["schemas"]["MonthDay"];
            to: components["schemas"]["MonthDay"];
        };
        SecondGenerationBeacon: {
            callSign: string | null;
            country: components["schemas"]["IdentifiedCountry"];
            /** @description What is doubtful about it by itself. */
            doubts: string[];
            /** @enum {string} */
            generation: "second";
            hex: string;
            /** @enum {string} */
            identifier: "beaconId";
            /** @description What it says, as a sentence. */
            inWords: string;
            /** @enum {string} */
            kind: "decoded";
            mmsi: string | null;
            serial: number;
            test: boolean;
            /** @description As it was given. */
            text: string;
            typeApproval: number;
        };
        /**
         * @description What somebody saw of it.
         * @enum {string}
         */
        SeenCode: "unchanged" | "worse" | "better" | "gone" | "not_examined";
        /** @description One number alone has both ends the same. Case, spaces and punctuation do not count. */
        SerialRange: {
            /**
             * @description Inclusive; absent: open.
             * @example AB1200
             */
            from?: string;
            /**
             * @description Inclusive; absent: open.
             * @example AB1399
             */
            to?: string;
        };
        /**
         * @example {
         *       "person": {
         *         "id": "5a0c9b2e-0f6b-4a53-9c35-0d8f5b7e2a11",
         *         "name": "Ines Falk",
         *         "email": "ines@curlew.example"
         *       },
         *       "organisation": {
         *         "id": "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a",
         *         "name": "Curlew Sailing School"
         *       },
         *       "role": "surveyor",
         *       "permissions": [
         *         "read",
         *         "record_facts"
         *       ],
         *       "vesselIds": [
         *         "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5c"
         *       ]
         *     }
         */
        Session: {
            /** @description Absent for a person who belongs to none, or not any more to the one they were at. */
            organisation?: {
                id: components["schemas"]["Id"];
                name: string;
            };
            permissions: components["schemas"]["PermissionCode"][];
            person?: components["schemas"]["SessionPerson"];
            /**
             * @description In that organisation.
             * @enum {string}
             */
            role?: "owner" | "manager" | "surveyor" | "yard" | "viewer";
            vesselIds?: components["schemas"]["VesselIds"];
        };
        /** @description Absent for an API key. */
        SessionPerson: {
            email: string;
            id: components["schemas"]["Id"];
            name: string;
        };
        /**
         * @example {
         *       "token": "gbs_…",
         *       "number": 3,
         *       "yes": true,
         *       "name": "Maren Holt",
         *       "offer": "Gas hose cracked: renew it, about 180.00 EUR, says Ines Vale."
         *     }
         */
        SharedAnswer: {
            /** @description Who says so: the owner. */
            name: string;
            number: number;
            /** @description The very words that were shown. */
            offer: string;
            /** @description What the address ends with. */
            token: string;
            words?: string;
            yes: boolean;
        };
        /**
         * @example {
         *       "reads": "Reported done on 2026-11-24; nobody else has looked yet"
         *     }
         */
        SharedDone: {
            /** @description How it stands now. */
            reads: string;
        };
        /** @description A line of the due list, without the ids of the house. */
        SharedDue: {
            action: components["schemas"]["Action"];
            /** @description Whole days to `overdueAfter`; negative when overdue. */
            days?: number;
            dueOn?: components["schemas"]["CalendarDay"];
            overdueAfter?: components["schemas"]["CalendarDay"];
            quantity: number;
            reference: components["schemas"]["Source"];
            sentence: string;
            standing: components["schemas"]["StandingCode"];
            suspendedFrom?: components["schemas"]["CalendarDay"];
            thing: string;
            vessel: string;
            weight: components["schemas"]["WeightCode"];
            zone?: string;
        };
        SharedOffer: {
            /** @description What was last said, and to which words. */
            answered?: {
                name: string;
                offer: string;
                on: components["schemas"]["CalendarDay"];
                yes: boolean;
            };
            number: number;
            /** @description What is to be said yes or no to. */
            offer: string;
            zone: string;
        };
        /**
         * @example {
         *       "token": "gbs_…",
         *       "at": 0,
         *       "work": "Hose renewed and tested",
         *       "doneOn": "2026-11-24",
         *       "name": "Ines Vale"
         *     }
         */
        SharedReport: {
            /** @description Which work of the link. */
            at: number;
            doneOn: components["schemas"]["CalendarDay"];
            /** @description Who did it. */
            name: string;
            /** @description A picture of it, in base64: JPEG, PNG, WebP or AVIF of at most 180 kB. */
            photograph?: string;
            /** @description What the address ends with. */
            token: string;
            /** @description What was done. */
            work: string;
        };
        /**
         * @example {
         *       "token": "gbs_…"
         *     }
         */
        SharedToken: {
            /** @description What the address ends with. */
            token: string;
        };
        /**
         * @example {
         *       "name": "Marsh Harrier",
         *       "builtYear": 1998,
         *       "schemes": [
         *         "solas"
         *       ]
         *     }
         */
        SharedVessel: {
            builtYear?: number;
            homePort?: string;
            hullMaterial?: string;
            lengthOverallM?: number;
            name: string;
            rig?: string;
            schemes: string[];
            type?: string;
            /**
             * @description Only where whoever made the link chose to show it.
             * @example {
             *       "amount": "1234.50",
             *       "currency": "EUR"
             *     }
             */
            value?: {
                amount: string;
                currency: string;
            };
        };
        /**
         * @example {
         *       "organisation": "Curlew Sailing School",
         *       "label": "the insurer, for the renewal",
         *       "asOf": "2026-11-25",
         *       "expiresAt": "2026-12-25T08:12:00Z",
         *       "purpose": "look",
         *       "wholeFleet": false,
         *       "work": [],
         *       "offers": [],
         *       "vessels": [
         *         {
         *           "name": "Marsh Harrier",
         *           "builtYear": 1998,
         *           "schemes": [
         *             "solas"
         *           ]
         *         }
         *       ],
         *       "due": [],
         *       "isCut": false
         *     }
         */
        SharedView: {
            asOf: components["schemas"]["CalendarDay"];
            /** @description What has a date first, then what is suspended, then what has none. */
            due: components["schemas"]["SharedDue"][];
            expiresAt: components["schemas"]["Instant"];
            /** @description There is more than a link shows: 200 of each. */
            isCut: boolean;
            label: string;
            /** @description Of an owner’s link: what waits for a yes or a no. */
            offers: components["schemas"]["SharedOffer"][];
            organisation: string;
            purpose: components["schemas"]["SharePurposeCode"];
            vessels: components["schemas"]["SharedVessel"][];
            wholeFleet: boolean;
            /** @description Of a yard’s link: the work that it was given. */
            work: components["schemas"]["SharedWork"][];
        };
        SharedWork: {
            /** @description By which it is reported. */
            at: number;
            canBeReported: boolean;
            /** @description Of the finding aboard, so that people can name it. */
            number: number;
            reads: string;
            vessel: string;
            what: string;
            work?: string;
            zone: string;
        };
        /**
         * @example {
         *       "id": "0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e",
         *       "label": "the insurer, for the renewal",
         *       "vesselIds": [
         *         "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a"
         *       ],
         *       "showsValue": false,
         *       "purpose": "look",
         *       "madeBy": "person:5a0c9b2e-0f6b-4a53-9c35-0d8f5b7e2a11",
         *       "createdAt": "2026-11-25T08:12:00Z",
         *       "expiresAt": "2026-12-25T08:12:00Z",
         *       "views": 0,
         *       "version": 1
         *     }
         */
        ShareLink: {
            createdAt: components["schemas"]["Instant"];
            expiresAt: components["schemas"]["Instant"];
            findingIds?: components["schemas"]["Id"][];
            id: components["schemas"]["Id"];
            label: string;
            lastViewedAt?: components["schemas"]["Instant"];
            /** @description The credential that made it. */
            madeBy: string;
            purpose: components["schemas"]["SharePurposeCode"];
            revokedAt?: components["schemas"]["Instant"];
            showsValue: boolean;
            /** @description Its `ETag`. */
            version: number;
            vesselIds?: components["schemas"]["VesselIds"];
            /** @description How often it was looked at. */
            views: number;
        };
        ShareLinkPage: {
            items: components["schemas"]["ShareLink"][];
            /** @description Asks for the next page; `null` at the end. */
            nextCursor: string | null;
        };
        /**
         * @example {
         *       "reason": "The renewal is through."
         *     }
         */
        ShareLinkRevocation: {
            reason?: string;
        };
        /**
         * @example {
         *       "id": "0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e",
         *       "label": "the insurer, for the renewal",
         *       "vesselIds": [
         *         "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a"
         *       ],
         *       "showsValue": false,
         *       "purpose": "look",
         *       "madeBy": "person:5a0c9b2e-0f6b-4a53-9c35-0d8f5b7e2a11",
         *       "createdAt": "2026-11-25T08:12:00Z",
         *       "expiresAt": "2026-12-25T08:12:00Z",
         *       "views": 0,
         *       "version": 1,
         *       "token": "gbs_…"
         *     }
         */
        ShareLinkWithText: {
            createdAt: components["schemas"]["Instant"];
            expiresAt: components["schemas"]["Instant"];
            findingIds?: components["schemas"]["Id"][];
            id: components["schemas"]["Id"];
            label: string;
            lastViewedAt?: components["schemas"]["Instant"];
            /** @description The credential that made it. */
            madeBy: string;
            purpose: components["schemas"]["SharePurposeCode"];
            revokedAt?: components["schemas"]["Instant"];
            showsValue: boolean;
            /** @description What the address ends with: `/shared#…`, after the mark so that no server and no referrer gets to see it. Told only this once: a repeat does not have it. */
            token?: string;
            /** @description Its `ETag`. */
            version: number;
            vesselIds?: components["schemas"]["VesselIds"];
            /** @description How often it was looked at. */
            views: number;
        };
        /**
         * @description `look`: nothing but look. `yard`: report the work that it is given, and nothing else. `owner`: see one vessel, and say yes or no to an estimate.
         * @enum {string}
         */
        SharePurposeCode: "look" | "yard" | "owner";
        /**
         * @example {
         *       "id": "0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d",
         *       "from": "2026-11-02",
         *       "place": "ashore",
         *       "use": "laid_up",
         *       "dismantled": false,
         *       "underRepair": false,
         *       "recordedAt": "2026-11-25T08:12:00Z"
         *     }
         */
        Situation: {
            dismantled: boolean;
            /**
             * Format: date
             * @description Holds from this day until the next situation begins.
             * @example 2027-03-18
             */
            from: string;
            id: components["schemas"]["Id"];
            /** @enum {string} */
            place: "afloat" | "ashore";
            recordedAt: components["schemas"]["Instant"];
            underRepair: boolean;
            /** @enum {string} */
            use: "in_commission" | "laid_up" | "out_of_service";
        };
        SituationPage: {
            items: components["schemas"]["Situation"][];
            /** @description Asks for the next page; `null` at the end. */
            nextCursor: string | null;
        };
        /** @description Where the figure stands, and how far it was checked. */
        Source: {
            address: string | null;
            clause: string | null;
            /** @description Which part of a text that was read is nevertheless from memory. */
            fromMemory?: string;
            publication: string | null;
            /** @enum {string} */
            status: "read" | "second_hand" | "memory" | "common_practice";
        };
        /**
         * @description `overdue` after `overdueAfter`; `due` from 30 days before `dueOn`, or for the last third of an interval that is shorter than 90 days, and while it is past its day but suspended; `unknown` while a date is missing.
         * @enum {string}
         */
        StandingCode: "overdue" | "due" | "in_date" | "unknown";
        /** @description Each obligation is counted once. */
        StandingCounts: {
            due: components["schemas"]["WeightCounts"];
            in_date: components["schemas"]["WeightCounts"];
            overdue: components["schemas"]["WeightCounts"];
            /** @description Suspended on the day, as the vessel is laid up in the way the clause says: counted here alone, whatever the date. What is due of it must be done before she returns to service. */
            suspended: {
                certificate: number;
                common_practice: number;
                insurer: number;
                law: number;
                maker: number;
                own: number;
            };
            unknown: components["schemas"]["WeightCounts"];
        };
        /**
         * @description A route of an organisation’s own, or the house route where it has none.
         * @example {
         *       "zones": [
         *         {
         *           "zone": "papers",
         *           "name": "Papers and identity"
         *         }
         *       ]
         *     }
         */
        SurveyRoute: {
            zones: components["schemas"]["RouteZone"][];
        };
        /**
         * @example {
         *       "organisationId": "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a"
         *     }
         */
        SwitchTo: {
            organisationId: components["schemas"]["Id"];
        };
        /** @description A row as `POST /v1/vessels/{vesselId}/items/batch` takes it. */
        TemplateItem: {
            kind: components["schemas"]["ItemKindCode"];
            label: string;
            quantity: number;
            zone: string;
        };
        /**
         * @description IANA zone of the vessel’s own place; decides what day it is there.
         * @example Europe/Oslo
         */
        TimeZone: string;
        /**
         * @description Whom the work is for.
         * @enum {string}
         */
        TradeCode: "rigger" | "gas_engineer" | "marine_engineer" | "electrician" | "sailmaker" | "liferaft_service_station" | "boatbuilder" | "painter" | "compass_adjuster" | "electronics_technician" | "own_crew";
        Unanswered: {
            id: string;
            /** @enum {string} */
            what: "zone" | "finding" | "limitation";
            words: string;
            zone: string;
        };
        UnstoredFact: {
            /** @description The `id` of the fact in this request that it strikes out. */
            corrects?: string;
            doneBy?: components["schemas"]["DoneBy"];
            /**
             * @default unknown
             * @enum {string}
             */
            evidence: "certificate" | "stamped" | "printed" | "record" | "owner_statement" | "unknown";
            /** @enum {string} */
            fact: "manufactured" | "installed" | "printed_expiry" | "inspected" | "serviced" | "tested" | "replaced" | "overhauled" | "extended" | "activated" | "moved" | "meter" | "withdrawn";
            /** @description How the answer and `corrects` refer to it; its place in the list where absent. */
            id?: string;
            note?: string;
            on: components["schemas"]["RecordedDate"];
            /**
             * @default passed
             * @enum {string}
             */
            outcome: "passed" | "failed" | "partly";
            /** @description `meter` only: what the meter read. */
            reading?: {
                /** @enum {string} */
                unit: "hours" | "sea_miles";
                value: number;
            };
            /**
             * Format: date
             * @description `manufactured` and `printed_expiry`: the day it was read on the thing aboard. Absent: taken from the other facts. The last of several plates is on the last unit; one alone on what was first worked on after it was made; of several printed dates the last is on what a replacement, a battery change or a renewal survey left aboard. Else the date on the plate itself places it.
             * @example 2027-03-18
             */
            readOn?: string;
            recordedAt?: components["schemas"]["Instant"];
            /**
             * @description With `corrects`: strikes out and puts nothing in its place, as of a fact entered on the wrong thing. `fact` and `on` repeat what is struck out; say why in `note`.
             * @enum {boolean}
             */
            retracts?: true;
            /**
             * @description Which test, service or examination, where a rule tells them apart.
             * @enum {string}
             */
            test?: "visual" | "internal_examination" | "extended_service" | "hydrostatic" | "gas_inflation" | "necessary_additional_pressure" | "working_pressure" | "crack_test" | "valve_examination" | "onboard_check" | "drain" | "self_test" | "function" | "full_function" | "examination" | "weighing" | "inflation_24_hours" | "load_test" | "bolt_drawn" | "compass_swing" | "out_of_water" | "initial_survey" | "annual_survey" | "intermediate_survey" | "renewal_survey" | "tightness" | "acceptance" | "annual_test" | "battery" | "oil_and_filter" | "impeller" | "coolant" | "belts" | "belt_inspection" | "details_confirmed" | "discharge";
            /**
             * Format: date
             * @description `extended`: the last day the permission covers. An inspection or test that did not pass: the day by which whoever did it wants it put right.
             * @example 2027-03-18
             */
            until?: string;
        };
        UnstoredOverride: {
            /**
             * @description Who decided it.
             * @example Anna Berg
             */
            decidedBy: string;
            /**
             * @description Where it stands.
             * @example Data sheet H-88, page 2
             */
            document: string;
            /**
             * @description The id of one of the rule’s duties.
             * @example replacement
             */
            duty: string;
            /** @description The first day on which it counts no more. */
            ended?: {
                on: components["schemas"]["CalendarDay"];
                /**
                 * Format: date-time
                 * @description When it was learned, for `knownAt`. Absent: always known.
                 * @example 2026-11-25T08:12:00Z
                 */
                recordedAt?: string;
            };
            /**
             * Format: date
             * @description The first day on which it counts; not in the future.
             * @example 2027-03-18
             */
            from: string;
            /** @description What `overrideId` calls it; its place in the list where absent. */
            id?: string;
            /**
             * @description Counted in place of the interval that the duty names first, from whatever it counts; another limit of another length stays as published.
             * @example P42M
             */
            period: string;
            /** @example The maker of this hose gives it four years. */
            reason: string;
            /**
             * Format: date-time
             * @description When it was learned, for `knownAt`. Absent: always known.
             * @example 2026-11-25T08:12:00Z
             */
            recordedAt?: string;
            /**
             * @description An entry of `/v1/rules`.
             * @example lpg-hose
             */
            ruleId: string;
            /**
             * @description What stands behind the figure.
             * @enum {string}
             */
            weight: "maker" | "insurer" | "own";
        };
        UnstoredOwnRule: {
            action: components["schemas"]["OwnAction"];
            /**
             * @description Who decided it.
             * @example Anna Berg
             */
            decidedBy: string;
            /**
             * @description Where it stands in writing.
             * @example Standing orders, no. 4
             */
            document: string;
            /** @description Counted while it was never done, where the limits alone give no day. */
            first?: {
                /** @enum {string} */
                from: "manufactured" | "installed";
                plus: components["schemas"]["Duration"];
            };
            /** @description What `ruleId` calls it; `own-0`, `own-1`, … by its place in the list where absent. */
            id?: string;
            /** @description The whole rule, in full sentences. */
            inWords: string;
            /** @description The things that it bears on. */
            kinds: components["schemas"]["ItemKindCode"][];
            limits: components["schemas"]["OwnLimit"][];
            reason: string;
            /**
             * Format: date-time
             * @description When it was learned, for `knownAt`. Absent: always known.
             * @example 2026-11-25T08:12:00Z
             */
            recordedAt?: string;
            resets: components["schemas"]["OwnReset"][];
            /**
             * Format: date
             * @description The first day on which this counts; it may lie in the future.
             * @example 2027-03-18
             */
            takesEffectOn: string;
            /**
             * @description What stands behind it.
             * @enum {string}
             */
            weight: "own" | "insurer" | "maker" | "common_practice";
            /** @description The span around the due date in which the work counts as done on it. */
            window?: {
                after: components["schemas"]["Duration"];
                before: components["schemas"]["Duration"];
            };
        };
        /**
         * @example {
         *       "id": "0198c5a7-4c10-7e21-9a3b-4c5d6e7f8091",
         *       "vesselId": "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a",
         *       "sha256": "9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08",
         *       "bytes": 2481152,
         *       "received": 1048576,
         *       "state": "receiving"
         *     }
         */
        Upload: {
            bytes: number;
            /**
             * Format: uuid
             * @description What it was kept as.
             * @example 0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a
             */
            evidenceId?: string;
            id: components["schemas"]["Id"];
            /** @description So many bytes are safe here; the next piece begins there. */
            received: number;
            /** @description Why it was; completes “the file …”. */
            refused?: string;
            /**
             * @description SHA-256 of the whole file, in lower-case hexadecimal.
             * @example 9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08
             */
            sha256: string;
            /**
             * @description `kept`: the file with this hash is in the store and on record. `refused`: it never will be.
             * @enum {string}
             */
            state: "receiving" | "kept" | "refused";
            vesselId: components["schemas"]["Id"];
        };
        /**
         * @description When it must be dealt with. It gives the finding its date.
         * @enum {string}
         */
        UrgencyCode: "before_use" | "within_weeks" | "this_season" | "next_lay_up" | "observe";
        /**
         * @example {
         *       "right": true,
         *       "evidence": [
         *         {
         *           "kind": "looked",
         *           "words": "New hose, dated 2026, both clips tight"
         *         }
         *       ]
         *     }
         */
        Verification: {
            /**
             * @description Asked for where it is right.
             * @default []
             */
            evidence: components["schemas"]["FindingEvidence"][];
            /** @description `false` sends it back to be done again. */
            right: boolean;
            /** @description Asked for where it is not right. */
            words?: string;
        };
        /**
         * @example {
         *       "id": "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a",
         *       "name": "Marsh Harrier",
         *       "type": "sloop",
         *       "builtYear": 1998,
         *       "lengthOverallM": 9.6,
         *       "identifiers": {
         *         "callSign": "MABC2"
         *       },
         *       "identifierNotes": {
         *         "inWords": [
         *           "Call sign: MABC2, of a series of United Kingdom."
         *         ],
         *         "doubts": []
         *       },
         *       "value": {
         *         "amount": "18500.00",
         *         "currency": "GBP"
         *       },
         *       "schemes": [
         *         "uk_small_commercial"
         *       ],
         *       "timeZone": "Europe/London",
         *       "createdAt": "2026-11-25T08:12:00Z",
         *       "version": 3
         *     }
         */
        Vessel: {
            beamM?: number;
            builtYear?: number;
            createdAt: components["schemas"]["Instant"];
            displacementKg?: number;
            draughtM?: number;
            homePort?: string;
            /** @example GRP */
            hullMaterial?: string;
            id: components["schemas"]["Id"];
            identifierNotes?: components["schemas"]["IdentifierNotes"];
            identifiers?: components["schemas"]["Identifiers"];
            /** @example 9.6 */
            lengthOverallM?: number;
            /** @example Marsh Harrier */
            name: string;
            personsMax?: number;
            rig?: string;
            schemes: components["schemas"]["SchemeCode"][];
            timeZone: components["schemas"]["TimeZone"];
            /** @example sloop */
            type?: string;
            value?: components["schemas"]["Money"];
            version: number;
            waterlineLengthM?: number;
        };
        /**
         * @description What is absent stays; `null` takes it away. `identifiers` and `schemes` are replaced whole.
         * @example {
         *       "homePort": "Lymington",
         *       "rig": null
         *     }
         */
        VesselChange: {
            beamM?: number | null;
            builtYear?: number | null;
            displacementKg?: number | null;
            draughtM?: number | null;
            homePort?: string | null;
            hullMaterial?: string | null;
            identifiers?: components["schemas"]["Identifiers"] | null;
            lengthOverallM?: number | null;
            /** @example Marsh Harrier */
            name?: string;
            personsMax?: number | null;
            rig?: string | null;
            schemes?: components["schemas"]["SchemeCode"][];
            timeZone?: components["schemas"]["TimeZone"];
            type?: string | null;
            value?: components["schemas"]["Money"] | null;
            waterlineLengthM?: number | null;
        };
        /**
         * @example {
         *       "id": "0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d",
         *       "event": "inspection",
         *       "on": "2027-03-18",
         *       "planned": true,
         *       "recordedAt": "2026-11-25T08:12:00Z"
         *     }
         */
        VesselEvent: {
            /** @enum {string} */
            event: "inspection" | "haul_out" | "liferaft_service" | "race_start" | "grounding" | "collision" | "lightning" | "fire" | "structural_repair" | "change_of_owner" | "gale" | "alteration" | "gas_system_change";
            id: components["schemas"]["Id"];
            note?: string;
            on: components["schemas"]["CalendarDay"];
            planned: boolean;
            recordedAt: components["schemas"]["Instant"];
        };
        VesselEventPage: {
            items: components["schemas"]["VesselEvent"][];
            /** @description Asks for the next page; `null` at the end. */
            nextCursor: string | null;
        };
        /** @description The only vessels it is for. Absent: the whole fleet. */
        VesselIds: components["schemas"]["Id"][];
        VesselPage: {
            items: components["schemas"]["Vessel"][];
            /** @description Asks for the next page; `null` at the end. */
            nextCursor: string | null;
        };
        /**
         * @example {
         *       "id": "safety_boat",
         *       "name": "Safety boat",
         *       "forWhom": "A rigid inflatable or open launch with an outboard engine that looks after dinghies.",
         *       "items": [
         *         {
         *           "kind": "steering_cable",
         *           "label": "Steering cable",
         *           "zone": "cockpit",
         *           "quantity": 1
         *         }
         *       ]
         *     }
         */
        VesselTemplate: {
            /** @description What sort of boat it is meant for. */
            forWhom: string;
            id: string;
            items: components["schemas"]["TemplateItem"][];
            name: string;
        };
        VesselTemplatePage: {
            items: components["schemas"]["VesselTemplate"][];
            /** @description Asks for the next page; `null` at the end. */
            nextCursor: string | null;
        };
        /**
         * @example {
         *       "id": "0198c5a6-3b10-7e21-9a3b-4c5d6e7f8091",
         *       "vessel": {
         *         "id": "0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a",
         *         "name": "Marsh Harrier"
         *       },
         *       "craft": "sailing_yacht",
         *       "purpose": "condition",
         *       "water": "ashore",
         *       "startedOn": "2026-11-24",
         *       "place": "Tangle Quay, hard standing",
         *       "persons": [
         *         {
         *           "name": "Ines Vale",
         *           "capacity": "surveyor",
         *           "qualification": "Small craft surveyor, S-311"
         *         }
         *       ],
         *       "ownerAttended": false,
         *       "instruments": [],
         *       "state": "open",
         *       "route": [
         *         {
         *           "zone": "papers",
         *           "name": "Papers and identity"
         *         }
         *       ]
         *     }
         */
        Visit: {
            ashoreSince?: components["schemas"]["CalendarDay"];
            /** @description Who asked for it. */
            client?: string;
            completedOn?: components["schemas"]["CalendarDay"];
            craft: components["schemas"]["CraftCode"];
            hoursAboard?: number;
            id: components["schemas"]["Id"];
            instructions?: string;
            instruments: components["schemas"]["Instrument"][];
            ownerAttended: boolean;
            persons: components["schemas"]["VisitPerson"][];
            /** @example Tangle Quay, hard standing */
            place?: string;
            purpose: components["schemas"]["VisitPurposeCode"];
            /** @description The places in the order in which they are walked, as they were when the visit began. */
            route: components["schemas"]["RouteZone"][];
            /** @description SHA-256 of the sealed copy, in hexadecimal. */
            sealedHash?: string;
            startedOn: components["schemas"]["CalendarDay"];
            /** @enum {string} */
            state: "open" | "completed";
            vessel: {
                id: components["schemas"]["Id"];
                name: string;
            };
            water: components["schemas"]["WaterCode"];
            weather?: string;
        };
        /**
         * @description What is absent stays; `null` takes it away.
         * @example {
         *       "hoursAboard": 4.5,
         *       "weather": "dry, 6 °C"
         *     }
         */
        VisitChange: {
            ashoreSince?: components["schemas"]["CalendarDay"] | null;
            client?: string | null;
            hoursAboard?: number | null;
            instructions?: string | null;
            instruments?: components["schemas"]["Instrument"][];
            ownerAttended?: boolean;
            persons?: components["schemas"]["VisitPerson"][];
            place?: string | null;
            purpose?: components["schemas"]["VisitPurposeCode"];
            water?: components["schemas"]["WaterCode"];
            weather?: string | null;
        };
        /**
         * @example {
         *       "completedOn": "2026-11-25"
         *     }
         */
        VisitCompletion: {
            completedOn: components["schemas"]["CalendarDay"];
        };
        VisitPage: {
            items: components["schemas"]["Visit"][];
            /** @description Asks for the next page; `null` at the end. */
            nextCursor: string | null;
        };
        /**
         * @example {
         *       "name": "Ines Vale",
         *       "capacity": "surveyor",
         *       "qualification": "Small craft surveyor, S-311"
         *     }
         */
        VisitPerson: {
            /** @enum {string} */
            capacity: "surveyor" | "owner" | "skipper" | "yard" | "crew" | "authority" | "other";
            name: string;
            qualification?: string;
        };
        /**
         * @description What somebody asked for. `deficiency_list`: an authority’s own list, entered as a visit.
         * @enum {string}
         */
        VisitPurposeCode: "pre_purchase" | "condition" | "insurance" | "damage" | "out_of_water" | "statutory" | "deficiency_list" | "house_check";
        /**
         * @example {
         *       "stops": [
         *         {
         *           "zone": "papers",
         *           "name": "Papers and identity",
         *           "findings": [],
         *           "limitations": [],
         *           "referrals": [],
         *           "readings": [],
         *           "points": [],
         *           "evidence": []
         *         }
         *       ],
         *       "unanswered": [
         *         {
         *           "what": "zone",
         *           "id": "papers",
         *           "zone": "papers",
         *           "words": "Papers and identity"
         *         }
         *       ]
         *     }
         */
        Walk: {
            /** @description The places in walking order, with what the last visits left open there. */
            stops: components["schemas"]["RouteStop"][];
            /** @description What keeps the visit from being completed. */
            unanswered: components["schemas"]["Unanswered"][];
        };
        /** @enum {string} */
        WaterCode: "afloat" | "ashore" | "in_slings";
        /**
         * @description What stands behind it.
         * @enum {string}
         */
        WeightCode: "law" | "certificate" | "insurer" | "maker" | "common_practice" | "own";
        /** @description Advice is never mixed into the count of legal lapses. */
        WeightCounts: {
            certificate: number;
            common_practice: number;
            insurer: number;
            law: number;
            maker: number;
            own: number;
        };
        /**
         * @description Who did the work; absent: whoever reports it.
         * @example {
         *       "name": "Ines Vale",
         *       "capacity": "gas_engineer",
         *       "certificate": "G-2041"
         *     }
         */
        WorkDoneBy: {
            /** @enum {string} */
            capacity: "owner_or_skipper" | "crew" | "competent_person" | "surveyor" | "marine_inspector" | "rigger" | "gas_engineer" | "marine_engineer" | "electrician" | "sailmaker" | "yard" | "liferaft_service_station" | "lifejacket_service_station" | "hydrostatic_release_service_station" | "shore_based_maintenance_provider" | "radio_surveyor" | "fire_equipment_technician" | "compass_adjuster" | "measurement_surveyor" | "registered_examiner" | "maker";
            certificate?: string;
            name: string;
        };
        WouldChangeIt: {
            /** @enum {string} */
            act: "manufactured" | "installed" | "printed_expiry" | "inspected" | "serviced" | "tested" | "replaced" | "overhauled" | "extended" | "activated" | "moved" | "meter" | "withdrawn";
            by: ("owner_or_skipper" | "crew" | "competent_person" | "surveyor" | "marine_inspector" | "rigger" | "gas_engineer" | "marine_engineer" | "electrician" | "sailmaker" | "yard" | "liferaft_service_station" | "lifejacket_service_station" | "hydrostatic_release_service_station" | "shore_based_maintenance_provider" | "radio_surveyor" | "fire_equipment_technician" | "compass_adjuster" | "measurement_surveyor" | "registered_examiner" | "maker")[];
            /**
             * Format: date
             * @description The day the answer is asked as at.
             * @example 2027-03-18
             */
            ifDoneOn: string;
            movesTo: components["schemas"]["CalendarDay"] | null;
            plus: components["schemas"]["Duration"] | null;
            /** @enum {string} */
            test?: "visual" | "internal_examination" | "extended_service" | "hydrostatic" | "gas_inflation" | "necessary_additional_pressure" | "working_pressure" | "crack_test" | "valve_examination" | "onboard_check" | "drain" | "self_test" | "function" | "full_function" | "examination" | "weighing" | "inflation_24_hours" | "load_test" | "bolt_drawn" | "compass_swing" | "out_of_water" | "initial_survey" | "annual_survey" | "intermediate_survey" | "renewal_survey" | "tightness" | "acceptance" | "annual_test" | "battery" | "oil_and_filter" | "impeller" | "coolant" | "belts" | "belt_inspection" | "details_confirmed" | "discharge";
        };
        /**
         * @example {
         *       "id": "0198c5a6-3b10-7e21-9a3b-4c5d6e7f8092",
         *       "zone": "papers",
         *       "answer": "sound",
         *       "recordedAt": "2026-11-24T10:00:00Z",
         *       "recordedBy": "person:0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e"
         *     }
         */
        ZoneAnswer: {
            answer: components["schemas"]["ZoneAnswerCode"];
            id: components["schemas"]["Id"];
            /**
             * @description Asked for with `not_examined`.
             * @enum {string}
             */
            reason?: "no_access_lining" | "no_access_stowed_gear" | "not_dismantled" | "coating_not_removed" | "afloat" | "in_slings_short_time" | "mast_stepped_head_height_only" | "tank_not_opened" | "no_power" | "engine_not_run" | "wet_or_frozen_surface" | "too_recently_lifted" | "ice_or_weather" | "owner_refused" | "item_not_on_board" | "specialist_scope";
            recordedAt: components["schemas"]["Instant"];
            recordedBy: string;
            words?: string;
            zone: components["schemas"]["ZoneCode"];
        };
        /**
         * @description `sighting`: something was seen there, and it is entered as a finding.
         * @enum {string}
         */
        ZoneAnswerCode: "sound" | "sighting" | "not_examined";
        /**
         * @description The place aboard, as a route names it.
         * @example gas_locker
         */
        ZoneCode: string;
    };
    responses: never;
    parameters: never;
    requestBodies: never;
    headers: never;
    pathItems: never;
}
export type $defs = Record<string, never>;
export interface operations {
    getHealth: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description It runs. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Health"];
                };
            };
        };
    };
    getReadiness: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description It is ready. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Health"];
                };
            };
            /** @description Not ready yet (`/problems/not-ready`). */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getAccount: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Your account. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Account"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    eraseAccount: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["AccountErasure"];
            };
        };
        responses: {
            /** @description Erased. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    endOtherSessions: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Only this session is left. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    endOneSession: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description UUIDv7. */
                sessionId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description It is over. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listApiKeys: {
        parameters: {
            query?: {
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of keys. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ApiKeyPage"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    makeApiKey: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewApiKey"];
            };
        };
        responses: {
            /** @description The key, with its text. */
            201: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    /** @description Where it can be read. */
                    Location: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ApiKeyWithText"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getApiKey: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description UUIDv7. */
                keyId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The key. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ApiKey"];
                };
            };
            /** @description The reader has this version already (`If-None-Match`). */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    renewApiKey: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description UUIDv7. */
                keyId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["ApiKeyRenewal"];
            };
        };
        responses: {
            /** @description The key, with its new text. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ApiKeyWithText"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    revokeApiKey: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description UUIDv7. */
                keyId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["ApiKeyRevocation"];
            };
        };
        responses: {
            /** @description The key as revoked. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ApiKey"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listAudit: {
        parameters: {
            query?: {
                /** @description Only what this person or key did, `kind:id` as in `actor`. */
                actor?: string;
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description From this day on, in the organisation’s time zone. */
                from?: string;
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
                /** @description Only changes of such things: `vessel`, `item`, `fact`, … */
                subject?: string;
                /** @description Only changes of this one thing. */
                subjectId?: string;
                /** @description Up to this day and with it, in the organisation’s time zone. */
                to?: string;
                /** @description Only what was done in this way. */
                verb?: string;
                /** @description Only changes of this vessel and of what is aboard. */
                vesselId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of changes. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AuditPage"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    exportAudit: {
        parameters: {
            query?: {
                /** @description Only rows after this `sequence`; 0 if not given. */
                after?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The chain, a row a line. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/x-ndjson": string;
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listDue: {
        parameters: {
            query?: {
                /** @description The day asked about. Default: today in the vessel’s place. */
                asOf?: string;
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description Only what is overdue after at most so many days. It does not bear on `unknown`. */
                horizonDays?: number;
                /** @description An entry of `/v1/item-kinds`. */
                kind?: string;
                /** @description Only what was on record at this instant. Default: everything. */
                knownAt?: string;
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
                /** @description A body of rules that a vessel is kept under: an entry of `/v1/schemes`. */
                scheme?: components["schemas"]["SchemeCode"];
                /** @description What kind of thing is due: what a rule or a safety notice asks, or what was found and waits for somebody. */
                source?: "obligation" | "safety_notice" | "finding" | "deferral" | "referral" | "limitation";
                /** @description Without it: everything that has a date. `unknown` asks for the group of things that have none. */
                standing?: "overdue" | "due" | "in_date" | "unknown";
                /** @description The group of what is suspended on the day, as the vessel is laid up. Without it none of that is listed; it does not go with `standing`. */
                suspended?: "true";
                /** @description UUIDv7. */
                vesselId?: components["schemas"]["Id"];
                /** @description What stands behind it. */
                weight?: components["schemas"]["WeightCode"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the due list, and the counts of what the filters mean. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DueList"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    explainDueDates: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["ExplainRequest"];
            };
        };
        responses: {
            /** @description What the rules make of these facts. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Explained"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getEvidence: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description UUIDv7. */
                evidenceId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What is known of it. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["EvidenceFile"];
                };
            };
            /** @description The reader has this version already (`If-None-Match`). */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    takeOriginal: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description UUIDv7. */
                evidenceId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The file. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": string;
                    "image/avif": string;
                    "image/heic": string;
                    "image/jpeg": string;
                    "image/png": string;
                    "image/webp": string;
                };
            };
            /** @description The reader has this version already (`If-None-Match`). */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). The file is not in the store (`/problems/file-missing`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    showEvidence: {
        parameters: {
            query?: {
                /** @description At most 1600 or 360 pixels on the longer side. */
                size?: "large" | "small";
            };
            header?: never;
            path: {
                /** @description UUIDv7. */
                evidenceId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The picture. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "image/jpeg": string;
                };
            };
            /** @description The reader has this version already (`If-None-Match`). */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). The file is not in the store (`/problems/file-missing`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    recordFacts: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewFacts"];
            };
        };
        responses: {
            /** @description What became of each. */
            200: {
                headers: {
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FactOutcomes"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getFindingTerms: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The terms. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FindingTerms"];
                };
            };
            /** @description The reader has this version already (`If-None-Match`). */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    setFindingTerms: {
        parameters: {
            query?: never;
            header?: {
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path?: never;
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["FindingTerms"];
            };
        };
        responses: {
            /** @description The terms as set. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FindingTerms"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listFindings: {
        parameters: {
            query?: {
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description Only work that can be done until this day: in hand, or due or planned by then, and neither reported done nor put off. */
                doBy?: string;
                /** @description What it threatens. */
                hazard?: components["schemas"]["HazardCode"];
                /** @description UUIDv7. */
                itemId?: components["schemas"]["Id"];
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
                /** @description Only those that have not ended, or only those that have. Without it: both. */
                open?: "true" | "false";
                /** @description `urgency`: the most urgent first, and of these the worst hazard. `age`: the longest known first. */
                order?: "urgency" | "age";
                /** @description How it stands with the work. The last three have ended. */
                state?: components["schemas"]["FindingStateCode"];
                /** @description Whom the work is for. */
                trade?: components["schemas"]["TradeCode"];
                /** @description When it must be dealt with. It gives the finding its date. */
                urgency?: components["schemas"]["UrgencyCode"];
                /** @description UUIDv7. */
                vesselId?: components["schemas"]["Id"];
                /** @description The place aboard, as a route names it. */
                zone?: components["schemas"]["ZoneCode"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of findings. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FindingPage"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getFinding: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description UUIDv7. */
                findingId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The finding. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Finding"];
                };
            };
            /** @description The reader has this version already (`If-None-Match`). */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    changeFinding: {
        parameters: {
            query?: never;
            header?: {
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description UUIDv7. */
                findingId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["FindingChange"];
            };
        };
        responses: {
            /** @description The finding as it stands now. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Finding"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listFindingEntries: {
        parameters: {
            query?: {
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
            };
            header?: never;
            path: {
                /** @description UUIDv7. */
                findingId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of entries. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FindingEntryPage"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    mergeFinding: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description UUIDv7. */
                findingId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["FindingMerge"];
            };
        };
        responses: {
            /** @description The finding as it stands now. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Finding"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    takeRemedyStep: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description UUIDv7. */
                findingId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["RemedyStep"];
            };
        };
        responses: {
            /** @description The finding as it stands now. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Finding"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    sightFinding: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description UUIDv7. */
                findingId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewSighting"];
            };
        };
        responses: {
            /** @description The finding as it stands now. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Finding"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    splitFinding: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description UUIDv7. */
                findingId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["FindingSplit"];
            };
        };
        responses: {
            /** @description The new finding. */
            201: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    /** @description Where it can be read. */
                    Location: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Finding"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    verifyFinding: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description UUIDv7. */
                findingId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["Verification"];
            };
        };
        responses: {
            /** @description The finding as it stands now. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Finding"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listFleet: {
        parameters: {
            query?: {
                /** @description The day asked about. Default: today in the vessel’s place. */
                asOf?: string;
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description How far the horizon reaches, in days; 365 if not given. */
                horizonDays?: number;
                /** @description Only what was on record at this instant. Default: everything. */
                knownAt?: string;
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of the fleet. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Fleet"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listFleetSamples: {
        parameters: {
            query?: {
                /** @description The day asked about. Default: today in the vessel’s place. */
                asOf?: string;
                /** @description Only what was on record at this instant. Default: everything. */
                knownAt?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Every sample, the earliest first. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FleetSampleList"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readIdentifiers: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["ReadIdentifiersRequest"];
            };
        };
        responses: {
            /** @description What they say. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReadIdentifiers"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listInvitations: {
        parameters: {
            query?: {
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of invitations. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["InvitationPage"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    invitePerson: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewInvitation"];
            };
        };
        responses: {
            /** @description The invitation. */
            201: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    /** @description Where it can be read. */
                    Location: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Invitation"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    withdrawInvitation: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description UUIDv7. */
                invitationId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["InvitationWithdrawal"];
            };
        };
        responses: {
            /** @description The invitation as withdrawn. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Invitation"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    acceptInvitation: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["InvitationToken"];
            };
        };
        responses: {
            /** @description The organisation you belong to now. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Organisation"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    previewInvitation: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["InvitationToken"];
            };
        };
        responses: {
            /** @description What is offered. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["InvitationPreview"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listItemKinds: {
        parameters: {
            query?: {
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of kinds. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ItemKindPage"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getItem: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description UUIDv7. */
                itemId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The item. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Item"];
                };
            };
            /** @description The reader has this version already (`If-None-Match`). */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    changeItem: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description UUIDv7. */
                itemId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["ItemChange"];
            };
        };
        responses: {
            /** @description The item as changed. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Item"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listFacts: {
        parameters: {
            query?: {
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
            };
            header?: never;
            path: {
                /** @description UUIDv7. */
                itemId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of facts. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FactPage"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    recordFact: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description UUIDv7. */
                itemId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewFact"];
            };
        };
        responses: {
            /** @description The fact as recorded, and what follows from it. */
            201: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    /** @description Where it can be read. */
                    Location: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecordedFact"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listObligations: {
        parameters: {
            query?: {
                /** @description The day asked about. Default: today in the vessel’s place. */
                asOf?: string;
                /** @description Only what was on record at this instant. Default: everything. */
                knownAt?: string;
            };
            header?: never;
            path: {
                /** @description UUIDv7. */
                itemId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Every obligation of the item. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ObligationList"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listLimitations: {
        parameters: {
            query?: {
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description Without it: both. */
                lifted?: "true" | "false";
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
                /** @description UUIDv7. */
                vesselId?: components["schemas"]["Id"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of limitations. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LimitationPage"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getLimitation: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description UUIDv7. */
                limitationId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The limitation. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Limitation"];
                };
            };
            /** @description The reader has this version already (`If-None-Match`). */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    answerLimitation: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description UUIDv7. */
                limitationId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewLimitationAnswer"];
            };
        };
        responses: {
            /** @description As it stands now. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Limitation"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getOrganisation: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The organisation. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Organisation"];
                };
            };
            /** @description The reader has this version already (`If-None-Match`). */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    changeOrganisation: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path?: never;
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["OrganisationChange"];
            };
        };
        responses: {
            /** @description The organisation as changed. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Organisation"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    leaveOrganisation: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description You do not belong to it any more. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listOrganisations: {
        parameters: {
            query?: {
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of organisations. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BelongingPage"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    createOrganisation: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewOrganisation"];
            };
        };
        responses: {
            /** @description The organisation. */
            201: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    /** @description Where it can be read. */
                    Location: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Organisation"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getOverride: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description UUIDv7. */
                overrideId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The figure. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Override"];
                };
            };
            /** @description The reader has this version already (`If-None-Match`). */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    endOverride: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description UUIDv7. */
                overrideId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewOverrideEnding"];
            };
        };
        responses: {
            /** @description The figure as ended. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Override"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listPeople: {
        parameters: {
            query?: {
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of people. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PersonPage"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getPerson: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description UUIDv7. */
                personId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The person. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Person"];
                };
            };
            /** @description The reader has this version already (`If-None-Match`). */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    changePerson: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description UUIDv7. */
                personId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["PersonChange"];
            };
        };
        responses: {
            /** @description The person as changed. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Person"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    removePerson: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description UUIDv7. */
                personId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["PersonRemoval"];
            };
        };
        responses: {
            /** @description Removed. */
            204: {
                headers: {
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listReferrals: {
        parameters: {
            query?: {
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
                /** @description Without it: both. */
                open?: "true" | "false";
                /** @description UUIDv7. */
                vesselId?: components["schemas"]["Id"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of referrals. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReferralPage"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getReferral: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description UUIDv7. */
                referralId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The referral. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Referral"];
                };
            };
            /** @description The reader has this version already (`If-None-Match`). */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    reportReferral: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description UUIDv7. */
                referralId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["ReferralResult"];
            };
        };
        responses: {
            /** @description As it stands now. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Referral"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getRuleChange: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description UUIDv7. */
                changeId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The change. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RuleChange"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listRules: {
        parameters: {
            query?: {
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description An entry of `/v1/item-kinds`. */
                kind?: string;
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
                /** @description `true`: only your own. `false`: only those that are published. */
                own?: "true" | "false";
                /** @description A body of rules that a vessel is kept under: an entry of `/v1/schemes`. */
                scheme?: components["schemas"]["SchemeCode"];
                /** @description What stands behind it. */
                weight?: components["schemas"]["WeightCode"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of rules. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RulePage"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    addRule: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewOwnRule"];
            };
        };
        responses: {
            /** @description The rule, with its first version. */
            201: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    /** @description Where it can be read. */
                    Location: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Rule"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getRule: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description An `id` of `/v1/rules`. */
                ruleId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The rule. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Rule"];
                };
            };
            /** @description The reader has this version already (`If-None-Match`). */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    changeRule: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description An `id` of `/v1/rules`. */
                ruleId: string;
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewOwnRule"];
            };
        };
        responses: {
            /** @description The rule with its versions. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Rule"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    endRule: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description An `id` of `/v1/rules`. */
                ruleId: string;
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewOwnRuleEnding"];
            };
        };
        responses: {
            /** @description The rule with its versions, the last of which ends it. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Rule"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listSafetyNotices: {
        parameters: {
            query?: {
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
                /** @description `open`: something is still to be answered. `answered`: nothing is, or nothing aboard is covered. */
                state?: components["schemas"]["NoticeStateCode"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of notices. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SafetyNoticePage"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    enterSafetyNotice: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewSafetyNotice"];
            };
        };
        responses: {
            /** @description The notice, with what it found. */
            201: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    /** @description Where it can be read. */
                    Location: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SafetyNotice"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getSafetyNotice: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description UUIDv7. */
                noticeId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The notice. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SafetyNotice"];
                };
            };
            /** @description The reader has this version already (`If-None-Match`). */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listNoticeItems: {
        parameters: {
            query?: {
                /** @description The day asked about. Default: today in the vessel’s place. */
                asOf?: string;
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description Only what was on record at this instant. Default: everything. */
                knownAt?: string;
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
            };
            header?: never;
            path: {
                /** @description UUIDv7. */
                noticeId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of things. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["NoticeItemPage"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    answerSafetyNotice: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path: {
                /** @description UUIDv7. */
                itemId: components["schemas"]["Id"];
                /** @description UUIDv7. */
                noticeId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewNoticeAnswer"];
            };
        };
        responses: {
            /** @description The answer, and what the item still owes. */
            201: {
                headers: {
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    /** @description Where it can be read. */
                    Location: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AnsweredNotice"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    withdrawSafetyNotice: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description UUIDv7. */
                noticeId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewNoticeWithdrawal"];
            };
        };
        responses: {
            /** @description The notice as withdrawn. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SafetyNotice"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    matchSafetyNotice: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewSafetyNotice"];
            };
        };
        responses: {
            /** @description What it covers, may cover and does not cover. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["NoticeMatches"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listSavedViews: {
        parameters: {
            query?: {
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of views. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SavedViewPage"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    saveView: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewSavedView"];
            };
        };
        responses: {
            /** @description The view as saved. */
            201: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    /** @description Where it can be read. */
                    Location: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SavedView"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getSavedView: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description UUIDv7. */
                viewId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The view. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SavedView"];
                };
            };
            /** @description The reader has this version already (`If-None-Match`). */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    removeView: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description UUIDv7. */
                viewId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The view as it was; its `ETag` is what a restoration needs. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SavedView"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    changeView: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description UUIDv7. */
                viewId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["SavedViewChange"];
            };
        };
        responses: {
            /** @description The view as changed. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SavedView"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    restoreView: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description UUIDv7. */
                viewId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The view as it is again. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SavedView"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listSchemes: {
        parameters: {
            query?: {
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of schemes. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SchemePage"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    searchRegister: {
        parameters: {
            query: {
                /** @description How many of each, 1 to 20; 6 if not given. */
                limit?: number;
                /** @description Words, or the beginnings of words: each must be answered to. Numbers also without their strokes. */
                q: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What answers to the words. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SearchAnswer"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getSeason: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The season. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OwnSeason"];
                };
            };
            /** @description The reader has this version already (`If-None-Match`). */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    setSeason: {
        parameters: {
            query?: never;
            header?: {
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path?: never;
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["OwnSeason"];
            };
        };
        responses: {
            /** @description The season as set. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OwnSeason"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getSession: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Who it is. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Session"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    endSession: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Signed out. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    switchOrganisation: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["SwitchTo"];
            };
        };
        responses: {
            /** @description The organisation you are at now. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Organisation"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listShareLinks: {
        parameters: {
            query?: {
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of links. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ShareLinkPage"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    makeShareLink: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewShareLink"];
            };
        };
        responses: {
            /** @description The link, with its text. */
            201: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    /** @description Where it can be read. */
                    Location: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ShareLinkWithText"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getShareLink: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description UUIDv7. */
                linkId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The link. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ShareLink"];
                };
            };
            /** @description The reader has this version already (`If-None-Match`). */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listLooksAtLink: {
        parameters: {
            query?: {
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
            };
            header?: never;
            path: {
                /** @description UUIDv7. */
                linkId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of looks. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LookAtLinkPage"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    revokeShareLink: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description UUIDv7. */
                linkId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["ShareLinkRevocation"];
            };
        };
        responses: {
            /** @description The link as revoked. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ShareLink"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    answerByLink: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["SharedAnswer"];
            };
        };
        responses: {
            /** @description How it stands now. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SharedDone"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    lookAtShared: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["SharedToken"];
            };
        };
        responses: {
            /** @description What it shows, as it stands now. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SharedView"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    reportByLink: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["SharedReport"];
            };
        };
        responses: {
            /** @description How it stands now. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SharedDone"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getSurveyRoute: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Which sort of boat: it decides the places of the route. */
                craft: components["schemas"]["CraftCode"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The route. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SurveyRoute"];
                };
            };
            /** @description The reader has this version already (`If-None-Match`). */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    setSurveyRoute: {
        parameters: {
            query?: never;
            header?: {
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description Which sort of boat: it decides the places of the route. */
                craft: components["schemas"]["CraftCode"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["SurveyRoute"];
            };
        };
        responses: {
            /** @description The route as set. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SurveyRoute"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getUpload: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description UUIDv7. */
                uploadId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The upload. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Upload"];
                };
            };
            /** @description The reader has this version already (`If-None-Match`). */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    addPiece: {
        parameters: {
            query?: never;
            header?: {
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description UUIDv7. */
                uploadId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description The bytes as they are: at most 1024 kB. */
        requestBody: {
            content: {
                "application/octet-stream": string;
            };
        };
        responses: {
            /** @description How far it has come. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Upload"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listVesselTemplates: {
        parameters: {
            query?: {
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of templates. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["VesselTemplatePage"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listVessels: {
        parameters: {
            query?: {
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of vessels. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["VesselPage"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    createVessel: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewVessel"];
            };
        };
        responses: {
            /** @description The vessel as registered. */
            201: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    /** @description Where it can be read. */
                    Location: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Vessel"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getVessel: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description UUIDv7. */
                vesselId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The vessel. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Vessel"];
                };
            };
            /** @description The reader has this version already (`If-None-Match`). */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    changeVessel: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description UUIDv7. */
                vesselId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["VesselChange"];
            };
        };
        responses: {
            /** @description The vessel as changed. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Vessel"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listEvents: {
        parameters: {
            query?: {
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
            };
            header?: never;
            path: {
                /** @description UUIDv7. */
                vesselId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of events. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["VesselEventPage"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    recordEvent: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path: {
                /** @description UUIDv7. */
                vesselId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewVesselEvent"];
            };
        };
        responses: {
            /** @description The event as recorded. */
            201: {
                headers: {
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    /** @description Where it can be read. */
                    Location: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["VesselEvent"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listEvidence: {
        parameters: {
            query?: {
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
                /** @description Of one survey point only, over the visits. */
                point?: string;
                /** @description Of one survey visit only. */
                visitId?: string;
                /** @description Of one place only. */
                zone?: string;
            };
            header?: never;
            path: {
                /** @description UUIDv7. */
                vesselId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of photographs and papers. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["EvidenceFilePage"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    enterFinding: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path: {
                /** @description UUIDv7. */
                vesselId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewFinding"];
            };
        };
        responses: {
            /** @description The finding. */
            201: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    /** @description Where it can be read. */
                    Location: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Finding"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listAlikeFindings: {
        parameters: {
            query: {
                /** @description UUIDv7. */
                itemId?: components["schemas"]["Id"];
                /** @description What was found. */
                what: string;
                /** @description The place aboard, as a route names it. */
                zone: components["schemas"]["ZoneCode"];
            };
            header?: never;
            path: {
                /** @description UUIDv7. */
                vesselId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What is alike. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AlikeFindings"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listItems: {
        parameters: {
            query?: {
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
            };
            header?: never;
            path: {
                /** @description UUIDv7. */
                vesselId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of items. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ItemPage"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    addItem: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path: {
                /** @description UUIDv7. */
                vesselId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewItem"];
            };
        };
        responses: {
            /** @description The item as added. */
            201: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    /** @description Where it can be read. */
                    Location: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Item"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    addItems: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path: {
                /** @description UUIDv7. */
                vesselId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewItems"];
            };
        };
        responses: {
            /** @description The items as added. */
            201: {
                headers: {
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    /** @description Where it can be read. */
                    Location: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AddedItems"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listOverrides: {
        parameters: {
            query?: {
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
            };
            header?: never;
            path: {
                /** @description UUIDv7. */
                vesselId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of figures. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OverridePage"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    setOverride: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path: {
                /** @description UUIDv7. */
                vesselId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewOverride"];
            };
        };
        responses: {
            /** @description The figure as set. */
            201: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    /** @description Where it can be read. */
                    Location: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Override"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listSituations: {
        parameters: {
            query?: {
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
            };
            header?: never;
            path: {
                /** @description UUIDv7. */
                vesselId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of situations. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SituationPage"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    recordSituation: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path: {
                /** @description UUIDv7. */
                vesselId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewSituation"];
            };
        };
        responses: {
            /** @description The situation as recorded. */
            201: {
                headers: {
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    /** @description Where it can be read. */
                    Location: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Situation"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    startUpload: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path: {
                /** @description UUIDv7. */
                vesselId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewUpload"];
            };
        };
        responses: {
            /** @description Where its bytes are sent. */
            201: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    /** @description Where it can be read. */
                    Location: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Upload"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    startVisit: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path: {
                /** @description UUIDv7. */
                vesselId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewVisit"];
            };
        };
        responses: {
            /** @description The visit. */
            201: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    /** @description Where it can be read. */
                    Location: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Visit"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listVisits: {
        parameters: {
            query?: {
                /** @description `nextCursor` of the page before, with the same filters. */
                cursor?: string;
                /** @description Rows a page, 1 to 200; 50 if not given. */
                limit?: number;
                /** @description Without it: both. */
                state?: "open" | "completed";
                /** @description UUIDv7. */
                vesselId?: components["schemas"]["Id"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of visits. */
            200: {
                headers: {
                    /** @description RFC 8288: the next page, `rel="next"`. */
                    Link?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["VisitPage"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getVisit: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description UUIDv7. */
                visitId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The visit. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Visit"];
                };
            };
            /** @description The reader has this version already (`If-None-Match`). */
            304: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    changeVisit: {
        parameters: {
            query?: never;
            header?: {
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description UUIDv7. */
                visitId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["VisitChange"];
            };
        };
        responses: {
            /** @description As it stands now. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Visit"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    addAddendum: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path: {
                /** @description UUIDv7. */
                visitId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewAddendum"];
            };
        };
        responses: {
            /** @description As written. */
            201: {
                headers: {
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    /** @description Where it can be read. */
                    Location: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Addendum"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    completeVisit: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
                /** @description The `ETag` of the version that was read. */
                "If-Match"?: string;
            };
            path: {
                /** @description UUIDv7. */
                visitId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["VisitCompletion"];
            };
        };
        responses: {
            /** @description As it stands now. */
            200: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Visit"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Somebody changed it in between (`/problems/stale`). */
            412: {
                headers: {
                    /** @description The version, for `If-None-Match` and `If-Match`. */
                    ETag: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Say which version you read (`/problems/if-match-required`). */
            428: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    imposeLimitation: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path: {
                /** @description UUIDv7. */
                visitId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewLimitation"];
            };
        };
        responses: {
            /** @description As written. */
            201: {
                headers: {
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    /** @description Where it can be read. */
                    Location: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Limitation"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    takeReading: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path: {
                /** @description UUIDv7. */
                visitId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewReading"];
            };
        };
        responses: {
            /** @description As written. */
            201: {
                headers: {
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    /** @description Where it can be read. */
                    Location: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Reading"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    askSpecialist: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path: {
                /** @description UUIDv7. */
                visitId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewReferral"];
            };
        };
        responses: {
            /** @description As written. */
            201: {
                headers: {
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    /** @description Where it can be read. */
                    Location: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Referral"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getSealedCopy: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description UUIDv7. */
                visitId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The sealed copy. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SealedCopy"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getWalk: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description UUIDv7. */
                visitId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The route. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Walk"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    answerZone: {
        parameters: {
            query?: never;
            header?: {
                /** @description A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer. */
                "Idempotency-Key"?: string;
            };
            path: {
                /** @description UUIDv7. */
                visitId: components["schemas"]["Id"];
            };
            cookie?: never;
        };
        /** @description JSON in UTF-8: at most 256 kB, nested at most 32 deep, no name twice in an object, nothing that is not named here. */
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewZoneAnswer"];
            };
        };
        responses: {
            /** @description As written. */
            201: {
                headers: {
                    /** @description `true` when an earlier request with this `Idempotency-Key` had this answer. */
                    "Idempotency-Replayed"?: string;
                    /** @description Where it can be read. */
                    Location: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ZoneAnswer"];
                };
            };
            /** @description The body is not readable JSON (`/problems/malformed-json`). */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Who is asking is not known (`/problems/unauthenticated`). */
            401: {
                headers: {
                    "WWW-Authenticate": string;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Not allowed with this credential (`/problems/forbidden`). A browser sent this from another site (`/problems/foreign-origin`). */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description No such thing here (`/problems/not-found`). */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The request came too slowly (`/problems/came-too-slowly`). */
            408: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It does not go with what is on record (`/problems/conflict`). */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description The body is too large (`/problems/too-large`). */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description This kind of body is not read here (`/problems/unsupported-media-type`). */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Something in the request is not right (`/problems/invalid`). This Idempotency-Key stood for another request (`/problems/idempotency-key-reused`). */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Too many requests (`/problems/too-many-requests`). */
            429: {
                headers: {
                    /**
                     * @description What is left, and after how many seconds it begins anew; on every answer. A structured field.
                     * @example "credential";r=0;t=21
                     */
                    RateLimit?: string;
                    /**
                     * @description How many requests in how many seconds; on every answer. A structured field.
                     * @example "credential";q=1200;w=60, "address";q=2400;w=60
                     */
                    "RateLimit-Policy"?: string;
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description A fault of ours (`/problems/fault`). */
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description It took too long (`/problems/timed-out`). */
            503: {
                headers: {
                    /**
                     * @description After so many seconds it may work.
                     * @example 5
                     */
                    "Retry-After"?: number;
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
}
