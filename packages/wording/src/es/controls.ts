import type { ControlsWording } from '../controls.ts'

export const controls: ControlsWording = {
  problem: {
    tryAgain: 'Intentar otra vez',
    field: (found, allowed) => `: se encontró ${found}; se permite: ${allowed}`,
    reference: 'Para quien lo investigue:',
  },
  signature: {
    typed: (label) => `${label}: su nombre completo, escrito`,
    type: 'Mejor escribir su nombre',
    draw: 'Mejor firmar con el dedo',
    clear: 'Borrar',
  },
}
