import type { CustomerLanguageCode } from '@bayledger/ledger/customer-language-code'
import type { BundlesWording } from './bundles.ts'
import type { ChecksWording } from './checks.ts'
import type { ConfidenceWording } from './confidence.ts'
import type { ConflictsWording } from './conflicts.ts'
import type { ConsentScriptWording } from './consent-script.ts'
import type { ContradictionsWording } from './contradictions.ts'
import type { ControlsWording } from './controls.ts'
import type { CustomerCautionsWording } from './customer-cautions.ts'
import type { CustomerEstimateWording, CustomerPageWording, ReportCheckWording } from './customer-page.ts'
import type { CustomerProblemsWording } from './customer-problems.ts'
import type { DoubtsWording } from './doubts.ts'
import type { EstimateLinesWording } from './estimate-lines.ts'
import type { FieldsWording } from './fields.ts'
import type { FindingActions, FindingSentences, FindingTitles } from './findings.ts'
import type { GatesWording } from './gates.ts'
import type { LightsWording } from './lights.ts'
import type { LineCoversWording } from './line-covers.ts'
import type { MessagesWording } from './messages.ts'
import type { MovesWording } from './moves.ts'
import type { NextStepsWording } from './next-steps.ts'
import type { ObservationsWording } from './observations.ts'
import type { OwnDataWording } from './own-data.ts'
import type { PartRefusalsWording } from './part-refusals.ts'
import type { PhotosWording } from './photos.ts'
import type { PressureTargetsWording } from './pressure-targets.ts'
import type { ProblemsWording } from './problems.ts'
import type { ReadyWording } from './ready.ts'
import type { ReasonsWording } from './reasons.ts'
import type { ReceiptWording } from './receipt.ts'
import type { RefusalsWording } from './refusals.ts'
import type { RelearnWording } from './relearn.ts'
import type { ReportWording } from './report/report.ts'
import type { ReportsWording } from './reports.ts'
import type { ScreensWording } from './screens.ts'
import type { SeveritiesWording } from './severities.ts'
import type { ShortfallsWording } from './shortfalls.ts'
import type { StepsWording } from './steps.ts'
import type { TirePrintsWording } from './tire-prints.ts'
import type { UnsoldOffersWording } from './unsold-offers.ts'
import type { VerdictsWording } from './verdicts.ts'
import type { WheelsWording } from './wheels.ts'
import type { WorkCautionsWording } from './work-cautions.ts'

/** A language that a customer can be served in. */
export type LanguageCode = CustomerLanguageCode

/**
 * Everything that a customer sees, hears read out or receives, in one language, subject by subject. A language that lacks
 * a subject, or a subject that lacks a sentence, does not compile. Functions of a subject take that subject's words and
 * never the whole language, so that a browser downloads only what it shows.
 */
export type CustomerLanguage = {
  readonly code: LanguageCode
  /** For numbers, days and times: the language as it is spoken in the United States. */
  readonly locale: 'en-US' | 'es-US'
  readonly bundles: BundlesWording
  readonly confidence: ConfidenceWording
  readonly consentScript: ConsentScriptWording
  readonly contradictions: ContradictionsWording
  readonly controls: ControlsWording
  readonly customerCautions: CustomerCautionsWording
  readonly customerEstimate: CustomerEstimateWording
  readonly customerPage: CustomerPageWording
  readonly customerProblems: CustomerProblemsWording
  readonly estimateLines: EstimateLinesWording
  readonly fields: FieldsWording
  readonly findingActions: FindingActions
  readonly findingSentences: FindingSentences
  readonly findingTitles: FindingTitles
  readonly lights: Pick<LightsWording, 'does'>
  readonly lineCovers: LineCoversWording
  readonly messages: MessagesWording
  readonly ownData: OwnDataWording
  readonly nextSteps: NextStepsWording
  readonly observations: ObservationsWording
  readonly photos: PhotosWording
  readonly ready: ReadyWording
  readonly reasons: ReasonsWording
  readonly receipt: ReceiptWording
  readonly report: ReportWording
  readonly reportCheck: ReportCheckWording
  readonly reports: ReportsWording
  readonly screens: ScreensWording
  readonly severities: SeveritiesWording
  readonly shortfalls: ShortfallsWording
  readonly steps: Pick<StepsWording, 'does'>
  readonly tirePrints: TirePrintsWording
  readonly verdicts: VerdictsWording
  readonly wheels: WheelsWording
}

/** A language in which the shop works too: what only its staff reads needs no other. */
export type Language = CustomerLanguage & {
  readonly checks: ChecksWording
  readonly conflicts: ConflictsWording
  readonly doubts: DoubtsWording
  readonly gates: GatesWording
  readonly lights: LightsWording
  readonly moves: MovesWording
  readonly partRefusals: PartRefusalsWording
  readonly pressureTargets: PressureTargetsWording
  readonly problems: ProblemsWording
  readonly refusals: RefusalsWording
  readonly relearn: RelearnWording
  readonly steps: StepsWording
  readonly unsoldOffers: UnsoldOffersWording
  readonly workCautions: WorkCautionsWording
}
