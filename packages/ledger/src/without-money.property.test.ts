import fc from 'fast-check'
import { expect, it } from 'vitest'
import { keptMoney } from '../test-support/money.ts'
import { oneSensorJob } from '../test-support/one-sensor-job.ts'
import { orderPen } from '../test-support/order-pen.ts'
import { commands, tryCommand } from '../test-support/random-order.ts'
import { sha256Hex } from './digests.ts'
import type { Entry } from './entry.ts'
import { fold } from './fold.ts'
import { unansweredBundles } from './questions/answers.ts'
import {
  authorizedBundles,
  handBackGate,
  missingOnArrival,
  openSteps,
  proofOf,
  readySteps,
  roadGate,
  sealGate,
} from './questions/gates.ts'
import { handleWithCare } from './questions/handle-with-care.ts'
import { nextMoves } from './questions/moves.ts'
import { nextSteps } from './questions/next-steps.ts'
import { severityOf } from './questions/severity.ts'
import { gaugingDue, isFixed, mayDrive } from './questions/verdicts.ts'
import { whyNot } from './questions/why-not.ts'

/**
 * The same entries with another digest in the place of each money side: what a reader has who cannot look behind one.
 * Equal money keeps an equal digest, since that much a digest says.
 */
const withoutMoney = (entries: readonly Entry[]): Entry[] =>
  JSON.parse(
    JSON.stringify(entries).replace(/[0-9a-f]{64}/g, (digest) =>
      keptMoney.has(digest) ? sha256Hex(`withheld/${digest}`) : digest,
    ),
  )

const answersTo = (entries: readonly Entry[], now: string) => {
  const state = fold(entries)
  return {
    arrival: missingOnArrival(state),
    road: roadGate(state),
    seal: sealGate(state),
    handBack: handBackGate(state),
    plan: state.plan,
    ready: readySteps(state),
    open: openSteps(state),
    authorized: authorizedBundles(state).map(({ bundleKey }) => bundleKey),
    unanswered: unansweredBundles(state).map(({ bundleKey }) => bundleKey),
    proof: proofOf(state),
    moves: nextMoves(state, now),
    shut: (state.plan?.plan.steps ?? []).map((step) => whyNot(state, step)),
    severity: (state.diagnosis?.diagnosis.findings ?? []).map((finding) =>
      severityOf(finding, state.diagnosis?.diagnosis.primary ?? null),
    ),
    care: handleWithCare(state),
    mayDrive: mayDrive(state),
    isFixed: isFixed(state),
    gauging: gaugingDue(state),
    next: nextSteps(state, now.slice(0, 10)),
  }
}

it('gates, plan, proof, moves and verdicts are the same for a reader from whom all money is withheld', () => {
  const job = oneSensorJob('handed-back', 'withheld').entries()
  fc.assert(
    fc.property(fc.integer({ min: 1, max: job.length }), commands, (begun, tries) => {
      const pen = orderPen('withheld', job.slice(0, begun))
      for (const command of tries) tryCommand(pen, command)
      const bare = withoutMoney(pen.entries())
      expect(answersTo(bare, pen.now())).toEqual(answersTo(pen.entries(), pen.now()))
    }),
    { seed: 20_260_112, numRuns: 60 },
  )
}, 120_000)
