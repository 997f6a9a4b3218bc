import type { Language } from '../language.ts'
import { bundles } from './bundles.ts'
import { checks } from './checks.ts'
import { confidence } from './confidence.ts'
import { conflicts } from './conflicts.ts'
import { consentScript } from './consent-script.ts'
import { contradictions } from './contradictions.ts'
import { controls } from './controls.ts'
import { customerCautions } from './customer-cautions.ts'
import { customerEstimate } from './customer-estimate.ts'
import { customerPage } from './customer-page.ts'
import { doubts } from './doubts.ts'
import { estimateLines } from './estimate-lines.ts'
import { fields } from './fields.ts'
import { findingActions } from './finding-actions.ts'
import { findingSentences } from './finding-sentences.ts'
import { findingTitles } from './finding-titles.ts'
import { gates } from './gates.ts'
import { lights } from './lights.ts'
import { lineCovers } from './line-covers.ts'
import { messages } from './messages.ts'
import { moves } from './moves.ts'
import { nextSteps } from './next-steps.ts'
import { observations } from './observations.ts'
import { ownData } from './own-data.ts'
import { partRefusals } from './part-refusals.ts'
import { photos } from './photos.ts'
import { pressureTargets } from './pressure-targets.ts'
import { problems } from './problems.ts'
import { ready } from './ready.ts'
import { reasons } from './reasons.ts'
import { receipt } from './receipt.ts'
import { refusals } from './refusals.ts'
import { relearn } from './relearn.ts'
import { report } from './report/report.ts'
import { reportCheck } from './report-check.ts'
import { reports } from './reports.ts'
import { screens } from './screens.ts'
import { severities } from './severities.ts'
import { shortfalls } from './shortfalls.ts'
import { steps } from './steps.ts'
import { tirePrints } from './tire-prints.ts'
import { unsoldOffers } from './unsold-offers.ts'
import { verdicts } from './verdicts.ts'
import { wheels } from './wheels.ts'
import { workCautions } from './work-cautions.ts'

export const english: Language = {
  code: 'en',
  locale: 'en-US',
  checks,
  confidence,
  conflicts,
  consentScript,
  customerProblems: null,
  contradictions,
  controls,
  doubts,
  fields,
  findingActions,
  findingSentences,
  findingTitles,
  gates,
  lights,
  lineCovers,
  messages,
  receipt,
  ownData,
  moves,
  nextSteps,
  observations,
  partRefusals,
  photos,
  pressureTargets,
  problems,
  ready,
  reasons,
  refusals,
  relearn,
  report,
  reportCheck,
  reports,
  screens,
  severities,
  shortfalls,
  steps,
  bundles,
  customerCautions,
  customerEstimate,
  customerPage,
  estimateLines,
  unsoldOffers,
  tirePrints,
  verdicts,
  wheels,
  workCautions,
}
