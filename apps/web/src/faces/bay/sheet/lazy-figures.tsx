import { lazy } from 'react'

/** A sheet is seldom born: what does it is loaded when a figure is missing. */
export const EnterFigure = lazy(async () => {
  const { EnterFigure } = await import('./enter-figure.tsx')
  return { default: EnterFigure }
})

export const VerifyFigure = lazy(async () => {
  const { VerifyFigure } = await import('./verify-figure.tsx')
  return { default: VerifyFigure }
})

export const FiguresScreen = lazy(async () => {
  const { FiguresScreen } = await import('./figures-screen.tsx')
  return { default: FiguresScreen }
})
