import type { FixedVerdict } from '@bayledger/ledger/questions/verdicts'
import type { VerdictsWording } from '../verdicts.ts'
import { wheels } from './wheels.ts'

const off = (minutes: number): string => `la luz estaba apagada al final de ${minutes} minutos de manejo`

const failures = {
  'light-on-drive': 'la luz de advertencia no se quedó apagada cuando manejamos',
  'light-on-at-closing': 'la luz de advertencia seguía encendida en nuestra última revisión',
  'lamp-dark': 'la luz de advertencia no se enciende al encender el auto',
  'relearn-refused': 'el vehículo no aceptó sus sensores',
  'nothing-authorized': 'la causa se encontró, y nadie dijo Sí a trabajar en ella',
  'danger-left': 'no se reparó lo que lo hace inseguro',
} as const

const notFixed = (verdict: Extract<FixedVerdict, { verdict: 'not-fixed' }>): string => {
  switch (verdict.why) {
    case 'sensor-silent':
      return `el sensor de la rueda ${wheels.names[verdict.wheel]} no contestó en nuestra última revisión`
    case 'id-misplaced':
      return `el vehículo tiene guardado para la rueda ${wheels.names[verdict.wheel]} otro ID que el que transmite el sensor de esa rueda`
    default:
      return failures[verdict.why]
  }
}

const notYetProven = (verdict: Extract<FixedVerdict, { verdict: 'not-yet-proven' }>): string => {
  switch (verdict.why) {
    case 'relearn-set-aside':
      return 'aquí no se conectaron los sensores con el auto ni se reinició su sistema de llantas'
    case 'not-driven-enough':
      return verdict.minutes > 0
        ? `se manejó ${verdict.minutes} de los ${verdict.needed} minutos que puede tardar una advertencia`
        : `maneje ${verdict.needed} minutos para asegurarse; una advertencia puede tardar eso en aparecer`
    case 'drive-doubtful':
      return 'los minutos que se anotaron del manejo y los del reloj no coinciden'
    case 'no-findings':
      return 'todavía no hemos dicho qué encontramos'
    case 'nothing-found':
      return 'hoy no se encontró nada que reparar'
    case 'sensors-unrecognized':
      return `${off(verdict.minutes)}, pero solo se muestra que el auto reconoce ${verdict.recognized} de ${verdict.sensors} sensores`
  }
}

export const verdicts: VerdictsWording = {
  driveNotYetKnown: 'Todavía estamos revisando su auto. Por favor, espérenos.',
  drive: {
    'drive-normally': 'Sí, maneje normalmente.',
    'check-weekly': 'Sí; mida el aire cada semana.',
    'check-each-trip': 'Sí; mida el aire antes de cada viaje.',
    'on-the-spare': 'Sí, con la llanta de repuesto: respete los límites marcados en el costado.',
    'do-not-drive': 'No. Por favor, no lo maneje. Llámenos.',
  },
  fixed: {
    proven: 'Comprobado',
    'not-yet-proven': 'Falta comprobarlo',
    'not-fixed': 'No está arreglado',
  },
  because: (verdict) => {
    switch (verdict.verdict) {
      case 'proven':
        return verdict.sensors === null
          ? off(verdict.minutes)
          : `el auto reconoce los ${verdict.sensors} sensores y ${off(verdict.minutes)}`
      case 'not-yet-proven':
        return notYetProven(verdict)
      case 'not-fixed':
        return notFixed(verdict)
    }
  },
}
