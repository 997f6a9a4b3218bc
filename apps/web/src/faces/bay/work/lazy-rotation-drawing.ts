import { lazy } from 'react'

/** Where each wheel goes. Few jobs are a rotation: it is loaded when one is. */
export const RotationDrawing = lazy(async () => {
  const { RotationDrawing } = await import('../../../features/plan/rotation-drawing.tsx')
  return { default: RotationDrawing }
})
