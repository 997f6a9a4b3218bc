import { expect, it } from 'vitest'
import { oneSensorJob } from '../../test-support/one-sensor-job.ts'
import type { OrderState } from '../state.ts'
import { isReplaced } from './answers.ts'

/** The order with a second bundle that may be had in place of the first. */
const withAlternative = (state: OrderState) => {
  const [issued] = state.estimates
  const [first] = issued?.scope.bundles ?? []
  if (issued === undefined || first === undefined) throw new RangeError('the job has an estimate')
  const four = { ...first, bundleKey: 'sensor.set-of-four', alternativeTo: first.bundleKey }
  const scope = { ...issued.scope, bundles: [...issued.scope.bundles, four] }
  return { first, four, state: { ...state, estimates: [{ ...issued, scope }] } }
}

it('asks about an alternative until work on what it replaces was begun', () => {
  const agreed = withAlternative(oneSensorJob('decided').state())
  expect(isReplaced(agreed.state, agreed.four)).toBe(false)
  const worked = withAlternative(oneSensorJob('worked').state())
  expect(isReplaced(worked.state, worked.four)).toBe(true)
  expect(isReplaced(worked.state, worked.first)).toBe(false)
})
