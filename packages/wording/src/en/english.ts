import type { Language } from '../language.ts'
import { confidence } from './confidence.ts'
import { conflicts } from './conflicts.ts'
import { fields } from './fields.ts'
import { findingTitles } from './finding-titles.ts'
import { gates } from './gates.ts'
import { lights } from './lights.ts'
import { partRefusals } from './part-refusals.ts'
import { refusals } from './refusals.ts'
import { relearn } from './relearn.ts'
import { steps } from './steps.ts'
import { wheels } from './wheels.ts'
import { workCautions } from './work-cautions.ts'

export const english: Language = {
  code: 'en',
  confidence,
  conflicts,
  fields,
  findingTitles,
  gates,
  lights,
  partRefusals,
  refusals,
  relearn,
  steps,
  wheels,
  workCautions,
}
