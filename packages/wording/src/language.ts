import type { BundlesWording } from './bundles.ts'
import type { ChecksWording } from './checks.ts'
import type { ConfidenceWording } from './confidence.ts'
import type { ConflictsWording } from './conflicts.ts'
import type { ContradictionsWording } from './contradictions.ts'
import type { ControlsWording } from './controls.ts'
import type { CustomerCautionsWording } from './customer-cautions.ts'
import type { CustomerEstimateWording, CustomerPageWording, ReportCheckWording } from './customer-page.ts'
import type { DoubtsWording } from './doubts.ts'
import type { EstimateLinesWording } from './estimate-lines.ts'
import type { FieldsWording } from './fields.ts'
import type { FindingActions, FindingSentences, FindingTitles } from './findings.ts'
import type { GatesWording } from './gates.ts'
import type { LightsWording } from './lights.ts'
import type { MovesWording } from './moves.ts'
import type { NextStepsWording } from './next-steps.ts'
import type { ObservationsWording } from './observations.ts'
import type { PartRefusalsWording } from './part-refusals.ts'
import type { PhotosWording } from './photos.ts'
import type { PressureTargetsWording } from './pressure-targets.ts'
import type { ProblemsWording } from './problems.ts'
import type { ReasonsWording } from './reasons.ts'
import type { RefusalsWording } from './refusals.ts'
import type { RelearnWording } from './relearn.ts'
import type { ReportWording } from './report/report.ts'
import type { ReportsWording } from './reports.ts'
import type { ScreensWording } from './screens.ts'
import type { SeveritiesWording } from './severities.ts'
import type { StepsWording } from './steps.ts'
import type { TirePrintsWording } from './tire-prints.ts'
import type { UnsoldOffersWording } from './unsold-offers.ts'
import type { VerdictsWording } from './verdicts.ts'
import type { WheelsWording } from './wheels.ts'
import type { WorkCautionsWording } from './work-cautions.ts'

/**
 * Everything that one language says, subject by subject. A language that lacks a subject, or a subject that lacks a
 * sentence, does not compile. Functions of a subject take that subject's words and never the whole language, so that
 * a browser downloads only what it shows.
 */
export type Language = {
  readonly code: 'en'
  readonly checks: ChecksWording
  readonly confidence: ConfidenceWording
  readonly conflicts: ConflictsWording
  readonly tirePrints: TirePrintsWording
  readonly contradictions: ContradictionsWording
  readonly controls: ControlsWording
  readonly doubts: DoubtsWording
  readonly fields: FieldsWording
  readonly findingActions: FindingActions
  readonly findingSentences: FindingSentences
  readonly findingTitles: FindingTitles
  readonly gates: GatesWording
  readonly lights: LightsWording
  readonly moves: MovesWording
  readonly nextSteps: NextStepsWording
  readonly observations: ObservationsWording
  readonly partRefusals: PartRefusalsWording
  readonly photos: PhotosWording
  readonly pressureTargets: PressureTargetsWording
  readonly problems: ProblemsWording
  readonly reasons: ReasonsWording
  readonly refusals: RefusalsWording
  readonly relearn: RelearnWording
  readonly report: ReportWording
  readonly reportCheck: ReportCheckWording
  readonly reports: ReportsWording
  readonly screens: ScreensWording
  readonly severities: SeveritiesWording
  readonly steps: StepsWording
  readonly bundles: BundlesWording
  readonly customerCautions: CustomerCautionsWording
  readonly customerEstimate: CustomerEstimateWording
  readonly customerPage: CustomerPageWording
  readonly estimateLines: EstimateLinesWording
  readonly unsoldOffers: UnsoldOffersWording
  readonly verdicts: VerdictsWording
  readonly wheels: WheelsWording
  readonly workCautions: WorkCautionsWording
}
