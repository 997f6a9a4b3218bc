import type { FigureWorth } from '@bayledger/reckoning/sheet'

/** What a figure is worth, wherever it is used on paper. */
export const figureWorthWords: Readonly<Record<FigureWorth, string>> = {
  verified: 'verificado por una segunda persona',
  entered: 'anotado, sin verificar',
  label: 'leído de la etiqueta, sin verificar',
  memory: 'de memoria, sin verificar',
  missing: 'todavía no anotado',
}
