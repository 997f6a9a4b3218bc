import { unansweredBundles } from '../src/questions/answers.ts'
import { answersOf, decisionOf, issuePlan, stageWriters } from './one-sensor-job.ts'
import type { OrderPen } from './order-pen.ts'
import { desk } from './refusals/setting.ts'
import { wordsOf } from './seeded-ids.ts'
import { agreedBy, lead } from './shop.ts'

/** The findings are made and confirmed again, from what was found since. */
export const judgeAgain = (pen: OrderPen): void => stageWriters.confirmed(pen)

/** What they offer then becomes the next version of the estimate. */
export const offer = (pen: OrderPen): void => {
  judgeAgain(pen)
  stageWriters.estimated(pen)
}

/** One answer to whatever still waits for one. */
export const answerRest = (pen: OrderPen, answer: 'authorized' | 'declined'): void => {
  const open = unansweredBundles(pen.state()).map(({ bundleKey }) => bundleKey)
  const answers = answersOf(pen, answer).filter(({ bundleKey }) => open.includes(bundleKey))
  issuePlan(pen, pen.write('estimate.decided', decisionOf(pen, answers), desk).id)
}

/** That version is shown, and the customer agrees to all that is new. */
export const offerAndAgree = (pen: OrderPen): void => {
  offer(pen)
  stageWriters.shown(pen)
  answerRest(pen, 'authorized')
}

/** The customer is told of a danger and refuses, before a witness, to have it put right. */
export const refuse = (pen: OrderPen, leaves: 'towed' | 'sound-spare' | 'as-it-is', code: string): void => {
  const { diagnosis } = pen.state()
  const stops = diagnosis?.diagnosis.findings.some((one) => one.code === code && one.kind === 'stop')
  if (stops)
    pen.write(
      'stop.told',
      {
        diagnosisId: diagnosis?.written.entryId ?? '',
        codes: [code],
        channel: 'in-person',
        answer: wordsOf('no'),
      },
      desk,
    )
  pen.write(
    'refusal.recorded',
    {
      codes: [code],
      cautionShown: { number: 'CT-13', version: 1 },
      proof: { kind: 'refused-to-sign', witness: agreedBy(lead) },
      leaves,
    },
    desk,
  )
}
