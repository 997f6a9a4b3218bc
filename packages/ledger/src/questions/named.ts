import type { Bundle } from '@bayledger/reckoning/estimate'
import type { Step } from '@bayledger/reckoning/step'
import type { WheelPosition } from '@bayledger/reckoning/wheels'

/** What names a step of the job plan in a refusal or a gate's reason. */
export type StepNamed = {
  readonly stepKey: string
  readonly does: string
  readonly wheel: WheelPosition | null
}
export const namedStep = ({ stepKey, does, wheel }: Step): StepNamed => ({ stepKey, does, wheel })

/** What names a bundle of the estimate in a refusal or a gate's reason. */
export type BundleNamed = { readonly bundleKey: string; readonly title: string }
export const namedBundle = ({ bundleKey, title }: Bundle): BundleNamed => ({ bundleKey, title })
