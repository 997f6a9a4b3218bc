import type { CustomerWords } from '../customer-words.ts'
import { controls } from './controls.ts'
import { customerEstimate } from './customer-estimate.ts'
import { customerPage } from './customer-page.ts'
import { photos } from './photos.ts'
import { reportCheck } from './report-check.ts'
import { reports } from './reports.ts'
import { screens } from './screens.ts'
import { wheels } from './wheels.ts'

export const customerWords: CustomerWords = {
  code: 'en',
  locale: 'en-US',
  controls,
  customerEstimate,
  customerPage,
  photos,
  reportCheck,
  reports,
  screens,
  wheels,
  customerProblems: null,
}
