import type { SpareHelp } from '@bayledger/ledger/questions/dangers'
import type { WarmTires } from '@bayledger/ledger/questions/next-steps'
import type { Gauging, GaugingReason } from '@bayledger/ledger/questions/verdicts'
import type { Temperature } from '@bayledger/reckoning/quantity'
import { capitalized } from '../capitalized.ts'
import type { Contact, NextStepsWording } from '../next-steps.ts'
import { telephoneWords } from '../telephone.ts'
import { wheelList } from '../wheels.ts'
import { wheels as wheelNames } from './wheels.ts'

/** No digit that was entered is dropped, up to three decimals. */
const number = (value: number): string => value.toLocaleString('es-US', { maximumFractionDigits: 3 })

const tenth = (psi: number): string =>
  psi.toLocaleString('es-US', { minimumFractionDigits: 1, maximumFractionDigits: 1 })

const degrees = ({ value, unit }: Temperature): string => `${number(value).replace('-', '−')} °${unit}`

const dayWords = (day: string): string =>
  new Intl.DateTimeFormat('es-US', {
    timeZone: 'UTC',
    year: 'numeric',
    month: 'long',
    day: 'numeric',
  }).format(new Date(`${day}T00:00:00.000Z`))

const callUs = ({ telephone }: Contact): string =>
  telephone === null ? 'llámenos' : `llámenos al ${telephoneWords(telephone)}`

const tow = 'Haga que se lo lleve una grúa'

const towOrSpare = (help: SpareHelp): string => {
  switch (help.spare) {
    case 'full-size':
      return `${tow}, o pídanos que pongamos en su lugar la llanta de repuesto: de tamaño completo, ${tenth(help.psi)} psi, sin daño visible.`
    case 'temporary':
      return `${tow}, o pídanos que pongamos la llanta de repuesto temporal (${tenth(help.psi)} psi). Respete los límites de velocidad y distancia que tiene en el costado.`
    case 'low':
      return `${tow}. La llanta de repuesto no se puede usar como está: tiene ${tenth(help.psi)} psi de ${number(help.label)}.`
    case 'damaged':
      return `${tow}. La llanta de repuesto no se puede usar: está dañada.`
    case 'not-checked':
      return `${tow}. No revisamos la llanta de repuesto; no cuente con ella.`
    case 'none':
      return `${tow}. No tiene llanta de repuesto.`
    case 'no-help':
      return `${tow}. La llanta de repuesto no ayuda en este caso.`
  }
}

const warmTires = ({ wheels, psi, labelPsi, outdoor, coldPsi, tonight, afterADrive }: WarmTires): string => {
  const cold =
    coldPsi === null
      ? ''
      : `: en frío, espere ${tenth(coldPsi)} psi a ${degrees(outdoor)}${tonight ? `, ${tenth(tonight.psi)} a ${degrees(tonight.low)} esta noche` : ''}${afterADrive ? `; después de manejar (aire a ${degrees(afterADrive.air)}), hasta ${tenth(afterADrive.psi)}` : ''}`
  const names = wheelList(wheelNames, wheels)
  const of = names === wheelNames.allFour ? 'La' : `${capitalized(names)}: la`
  return `${of} etiqueta dice ${number(labelPsi)} y ajustamos a ${tenth(psi)}, porque las llantas estaban calientes${cold}. No le saque aire a una llanta caliente.`
}

const often: Readonly<Record<Gauging['every'], string>> = {
  trip: 'antes de cada viaje',
  week: 'una vez por semana',
  month: 'una vez al mes',
}

const because: Readonly<Record<GaugingReason, string>> = {
  'tire-low': 'porque una llanta tiene menos aire del que debe',
  'cannot-warn': 'porque ahora la luz no puede avisarle',
  'safety-left': 'porque no se hizo un trabajo de seguridad',
  'work-left': 'porque hay trabajo que no se hizo',
  'not-gauged': 'porque no se pudieron medir todas las llantas',
  'cause-not-found': 'porque no hemos encontrado la causa de la luz',
  'not-proven': 'porque todavía falta comprobar la reparación',
}

export const nextSteps: NextStepsWording = {
  'call-before-moving': (_, contact) =>
    `Antes de moverlo, ${callUs(contact)}${contact.person === null ? '' : `, o pregunte por ${contact.person} en el mostrador`}.`,
  'tow-or-spare': towOrSpare,
  'on-the-spare': ({ wheel, spare }) =>
    spare === 'temporary'
      ? `La llanta de repuesto temporal está puesta en lugar de la rueda ${wheelNames.names[wheel]}. Respete los límites de velocidad y distancia que tiene en el costado, y haga arreglar la llanta pronto. La luz de advertencia puede quedar encendida hasta entonces.`
      : `La llanta de repuesto está puesta en lugar de la rueda ${wheelNames.names[wheel]}. Haga arreglar pronto la llanta que se quitó: hasta entonces no tiene repuesto, y la luz de advertencia puede quedar encendida.`,
  retorque: ({ miles, at }) => {
    const readings = at
      ? ` (${number(Math.round(at.from.value))} a ${number(Math.round(at.to.value))} ${at.to.unit})`
      : ''
    return `Después de ${number(miles.from)} a ${number(miles.to)} millas${readings}: regrese sin cita y revisamos gratis el apriete de las ruedas.`
  },
  'report-the-light': ({ minutes }, contact) =>
    `Maneje ${minutes} minutos para asegurarse. Si entonces la luz de advertencia está encendida, mida el aire de las llantas con un medidor y ${callUs(contact)}.`,
  'if-light-returns': (_, contact) =>
    `Si la luz vuelve, revise en frío, con un medidor, la presión de todas las llantas y ${callUs(contact)}.`,
  'light-stays-on': () =>
    'La luz de advertencia sigue encendida hasta que se repare su causa. Mientras está encendida, no puede avisarle de otra llanta baja.',
  'warm-tires': warmTires,
  'set-again-cold': ({ wheels, psi, coldPsi }) =>
    `${capitalized(wheelList(wheelNames, wheels))}: presión ajustada al límite, ${tenth(psi)} psi${coldPsi === null ? '' : `, que son ${tenth(coldPsi)} en frío`}. Haga que se ajuste otra vez en frío.`,
  'check-pressures': ({ every, why, firstBy }) =>
    `Revise con un medidor la presión de cada llanta ${often[every]}${every === 'trip' ? '' : `, la primera a más tardar el ${dayWords(firstBy)}`}${why === null ? '' : `, ${because[why]}`}. Mídala en frío (3 horas parado, o menos de una milla manejada): debe ser la de la etiqueta de la puerta. Saque aire solo de una llanta fría que tenga más.`,
  'deferred-work': ({ day }) => `Lo que contestó con “Hoy no” queda pendiente para el ${dayWords(day)}.`,
}
