import type { Bundle } from '@bayledger/reckoning/estimate'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { newestBundles } from '../../questions/answers.ts'
import { namedBundle } from '../../questions/named.ts'
import type { IssuedBundle, OrderState } from '../../state.ts'

/**
 * Bundles for safety that the present version offers and a new one leaves out, although the findings still need them.
 * Only the customer answers such a bundle, and after a No it stays too, so that the No and its caution stay in sight.
 * Another bundle for the same finding on the same wheels takes the place of one; an alternative may go, because what it
 * replaces stays.
 */
export const droppedSafety = (state: OrderState, next: readonly Bundle[]): IssuedBundle[] =>
  newestBundles(state).filter(
    (bundle) =>
      bundle.safety &&
      bundle.alternativeTo === null &&
      bundle.findings.some((code) => leavesOut(state, bundle, code, next)),
  )

const leavesOut = (state: OrderState, bundle: IssuedBundle, code: string, next: readonly Bundle[]): boolean =>
  (state.diagnosis?.diagnosis.findings ?? [])
    .filter((finding) => finding.code === code && finding.offers.length > 0)
    .some((finding) => {
      const works = wheelsIn(bundle)
      const wheels = works.filter((wheel) => finding.wheels.includes(wheel))
      const named = next.filter(({ findings }) => findings.includes(code))
      if (works.length === 0) return named.length === 0
      return wheels.some((wheel) => !named.some((other) => wheelsIn(other).includes(wheel)))
    })

const wheelsIn = (bundle: Bundle): readonly WheelPosition[] => namedBundle(bundle).wheels
