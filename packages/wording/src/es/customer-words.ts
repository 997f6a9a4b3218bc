import type { CustomerWords } from '../customer-words.ts'
import { controls } from './controls.ts'
import { customerEstimate } from './customer-estimate.ts'
import { customerPage } from './customer-page.ts'
import { customerProblems } from './customer-problems.ts'
import { photos } from './photos.ts'
import { reportCheck } from './report-check.ts'
import { reports } from './reports.ts'
import { screens } from './screens.ts'
import { wheels } from './wheels.ts'

export const customerWords: CustomerWords = {
  code: 'es',
  locale: 'es-US',
  controls,
  customerEstimate,
  customerPage,
  customerProblems,
  photos,
  reportCheck,
  reports,
  screens,
  wheels,
}
