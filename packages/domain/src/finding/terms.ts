/** What an organisation agrees about its findings. House conventions, no source. */
export type FindingTerms = {
  /** What `within_weeks` leaves where the surveyor named no day. */
  readonly withinWeeksDays: number;
  /** How far ahead the review of what is put off or accepted may lie. */
  readonly putOffAtMostDays: number;
  /** Whether somebody other than whoever did the work must verify it. */
  readonly secondPairOfEyes: boolean;
};

export const HOUSE_TERMS: FindingTerms = { withinWeeksDays: 28, putOffAtMostDays: 365, secondPairOfEyes: true };
