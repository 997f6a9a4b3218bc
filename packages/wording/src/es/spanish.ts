import type { CustomerLanguage } from '../language.ts'
import { bundles } from './bundles.ts'
import { confidence } from './confidence.ts'
import { consentScript } from './consent-script.ts'
import { contradictions } from './contradictions.ts'
import { controls } from './controls.ts'
import { customerCautions } from './customer-cautions.ts'
import { customerEstimate } from './customer-estimate.ts'
import { customerPage } from './customer-page.ts'
import { customerProblems } from './customer-problems.ts'
import { estimateLines } from './estimate-lines.ts'
import { fields } from './fields.ts'
import { findingActions } from './finding-actions.ts'
import { findingSentences } from './finding-sentences.ts'
import { findingTitles } from './finding-titles.ts'
import { lights } from './lights.ts'
import { lineCovers } from './line-covers.ts'
import { messages } from './messages.ts'
import { nextSteps } from './next-steps.ts'
import { observations } from './observations.ts'
import { ownData } from './own-data.ts'
import { photos } from './photos.ts'
import { ready } from './ready.ts'
import { reasons } from './reasons.ts'
import { receipt } from './receipt.ts'
import { report } from './report/report.ts'
import { reportCheck } from './report-check.ts'
import { reports } from './reports.ts'
import { screens } from './screens.ts'
import { severities } from './severities.ts'
import { shortfalls } from './shortfalls.ts'
import { steps } from './steps.ts'
import { tirePrints } from './tire-prints.ts'
import { verdicts } from './verdicts.ts'
import { wheels } from './wheels.ts'

/** Spanish as it is spoken in the United States, with "usted". */
export const spanish: CustomerLanguage = {
  code: 'es',
  locale: 'es-US',
  bundles,
  confidence,
  consentScript,
  contradictions,
  controls,
  customerCautions,
  customerEstimate,
  customerPage,
  customerProblems,
  estimateLines,
  fields,
  findingActions,
  findingSentences,
  findingTitles,
  lights,
  lineCovers,
  messages,
  receipt,
  ownData,
  nextSteps,
  observations,
  photos,
  ready,
  reasons,
  report,
  reportCheck,
  reports,
  screens,
  severities,
  shortfalls,
  steps,
  tirePrints,
  verdicts,
  wheels,
}
