import { lazy } from 'react'

/** Few jobs are a rotation: where each wheel goes, and what its tire says to that, is loaded when one is. */
export const RotationStep = lazy(async () => {
  const { RotationStep } = await import('./rotation-step.tsx')
  return { default: RotationStep }
})
