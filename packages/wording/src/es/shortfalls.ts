import type { ShortfallsWording } from '../shortfalls.ts'

export const shortfalls: ShortfallsWording = {
  lacks: (psi) => `En frío, esta llanta tiene ${psi} psi menos de lo que debe tener.`,
  colder: (psi) => `El aire más frío le quitó ${psi} psi.`,
  warmer: (psi) => `Hace más calor que cuando se ajustó la llanta, y eso le sumó ${psi} psi.`,
  lower: (psi) => `La menor altitud le quitó ${psi} psi.`,
  higher: (psi) => `La mayor altitud le sumó ${psi} psi.`,
  lost: (psi) =>
    `Se salieron ${psi} psi de aire, si la llanta se ajustó a lo que dice la etiqueta de la puerta.`,
  setHigher: (psi) =>
    `La llanta se ajustó por encima de la etiqueta de la puerta, o se le agregó aire: ${psi} psi.`,
  withinError: (most) =>
    `El resto es menos de lo que pueden fallar los medidores (${most} psi), así que esto no muestra que se haya salido aire.`,
  notKnown: {
    'outdoor-not-known': 'No se sabe cuánto de eso se debe al frío: no se anotó la temperatura exterior.',
    'setting-not-known':
      'No se sabe cuánto de eso se debe al frío: nadie supo decir qué temperatura había cuando se ajustó la llanta por última vez.',
  },
}
