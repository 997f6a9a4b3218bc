import type { LightsWording } from '../lights.ts'

/** Said where nobody can name a cause, on the report and on the customer's page. */
export const lightWasOff =
  'Estaba apagada cuando la revisamos, así que no se puede nombrar una causa de la luz.'

export const lights: Pick<LightsWording, 'does'> = {
  does: {
    off: 'se queda apagada',
    solid: 'se queda encendida',
    'flash-then-solid': 'parpadea como un minuto y luego se queda encendida',
    'intermittent-cold': 'se enciende solo en mañanas frías',
    'intermittent-other': 'se enciende y se apaga por momentos',
    'flash-continuous': 'nunca deja de parpadear',
  },
}
