import { expect, it } from 'vitest'
import { bay, before } from '../test-support/refusals/setting.ts'
import { closingOf } from '../test-support/step-payload.ts'
import { parseDraft } from './draft.ts'
import { type Kind, versionOf } from './registry.ts'
import { upcast } from './upcast.ts'

it.each([
  ['RR.studs.torque-full', 'studs.torqued'],
  ['RR.studs.second-check', 'torque.checked'],
  ['vehicle.relearn.done', 'relearn.done'],
  ['vehicle.proof.drive', 'drive.done'],
  ['vehicle.closing.light', 'telltale.observed'],
] as const)('%s of the first version of %s is read as one that nobody timed', (stepKey, kind: Kind) => {
  const pen = before(stepKey)
  const step = pen.state().plan?.plan.steps.find((one) => one.stepKey === stepKey)
  if (!step) throw new RangeError(stepKey)
  const { timed, checkedBy, odometerConfirmed, ...first } = closingOf(pen.state(), step).payload as {
    timed: unknown
    checkedBy?: unknown
    odometerConfirmed?: boolean
  }
  const unknownThen = {
    timed: null,
    ...(checkedBy === undefined ? {} : { checkedBy: null }),
    ...(odometerConfirmed === undefined ? {} : { odometerConfirmed: false }),
  }
  expect(timed).toMatchObject({ seconds: expect.any(Number) })
  const { shopId, writtenBy, deviceId, ...envelope } = pen.draft(
    kind,
    { ...first, ...unknownThen } as never,
    bay,
  )
  const read = parseDraft({ ...envelope, version: 1, payload: first }, { shopId, writtenBy, deviceId })
  expect(read).toMatchObject({ ok: true })
  expect(read.ok && upcast(read.draft)).toMatchObject({
    version: versionOf(kind),
    payload: { ...first, ...unknownThen },
  })
  expect(versionOf(kind)).toBe(kind === 'torque.checked' || kind === 'drive.done' ? 3 : 2)
})
