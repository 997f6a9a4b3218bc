import type { LightsWording } from '../lights.ts'

/** Said where nobody can name a cause, on the report and on the customer's page. */
export const lightWasOff = 'It was off when we looked, so there is no cause of a light to name.'

export const lights: LightsWording = {
  does: {
    off: 'stays off',
    solid: 'stays on',
    'flash-then-solid': 'flashes for about a minute, then stays on',
    'intermittent-cold': 'comes on only on cold mornings',
    'intermittent-other': 'comes and goes',
    'flash-continuous': 'never stops flashing',
  },
  choice: {
    off: { label: 'Off', detail: 'after the lamp check' },
    solid: { label: 'Solid', detail: 'stays lit' },
    'flash-then-solid': { label: 'Flashes, then solid', detail: 'about a minute' },
    'intermittent-cold': { label: 'Only when cold', detail: 'seen to go out' },
    'intermittent-other': { label: 'Comes and goes' },
    'flash-continuous': { label: 'Never stops flashing' },
  },
}
