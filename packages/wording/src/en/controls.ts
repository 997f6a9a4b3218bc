import type { ControlsWording } from '../controls.ts'

export const controls: ControlsWording = {
  problem: {
    tryAgain: 'Try again',
    field: (found, allowed) => `: found ${found}; allowed: ${allowed}`,
    reference: 'For whoever looks into it:',
  },
  signature: {
    typed: (label) => `${label}: your full name, typed`,
    type: 'Type your name instead',
    draw: 'Draw instead',
    clear: 'Clear',
  },
}
