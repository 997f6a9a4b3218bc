import { lazy } from 'react'

/** Few jobs are a rotation: where each wheel goes is loaded when one is. */
export const RotationLook = lazy(async () => {
  const { RotationLook } = await import('./rotation-look.tsx')
  return { default: RotationLook }
})
