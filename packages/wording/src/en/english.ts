import type { Language } from '../language.ts'
import { bundles } from './bundles.ts'
import { checks } from './checks.ts'
import { confidence } from './confidence.ts'
import { conflicts } from './conflicts.ts'
import { contradictions } from './contradictions.ts'
import { customerCautions } from './customer-cautions.ts'
import { doubts } from './doubts.ts'
import { estimateLines } from './estimate-lines.ts'
import { fields } from './fields.ts'
import { findingActions } from './finding-actions.ts'
import { findingSentences } from './finding-sentences.ts'
import { findingTitles } from './finding-titles.ts'
import { gates } from './gates.ts'
import { lights } from './lights.ts'
import { moves } from './moves.ts'
import { nextSteps } from './next-steps.ts'
import { partRefusals } from './part-refusals.ts'
import { pressureTargets } from './pressure-targets.ts'
import { problems } from './problems.ts'
import { reasons } from './reasons.ts'
import { refusals } from './refusals.ts'
import { relearn } from './relearn.ts'
import { reports } from './reports.ts'
import { severities } from './severities.ts'
import { steps } from './steps.ts'
import { tirePrints } from './tire-prints.ts'
import { unsoldOffers } from './unsold-offers.ts'
import { verdicts } from './verdicts.ts'
import { wheels } from './wheels.ts'
import { workCautions } from './work-cautions.ts'

export const english: Language = {
  code: 'en',
  checks,
  confidence,
  conflicts,
  contradictions,
  doubts,
  fields,
  findingActions,
  findingSentences,
  findingTitles,
  gates,
  lights,
  moves,
  nextSteps,
  partRefusals,
  pressureTargets,
  problems,
  reasons,
  refusals,
  relearn,
  reports,
  severities,
  steps,
  bundles,
  customerCautions,
  estimateLines,
  unsoldOffers,
  tirePrints,
  verdicts,
  wheels,
  workCautions,
}
