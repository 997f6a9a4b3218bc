import type { ReportTorqueWording } from '../../report/torque.ts'
import { listed } from './listed.ts'
import { sourceWords } from './source-words.ts'

const stale = { 'came-off-again': 'la rueda se quitó otra vez', overtaken: 'ya no vale' } as const
const fasteners = {
  nut: { one: 'tuerca', many: 'tuercas' },
  bolt: { one: 'perno', many: 'pernos' },
} as const

export const reportTorque: ReportTorqueWording = {
  title: 'Apriete de las ruedas',
  noWheelOff: 'No se quitó ninguna rueda.',
  figure: (source) =>
    `Origen del valor: ${sourceWords(source)}. Una llave de clic muestra que se alcanzó el valor; no mide nada más allá. Manda el valor del fabricante del vehículo.`,
  rounds: {
    caption: 'Vueltas',
    columns: {
      wheel: 'Rueda',
      round: 'Vuelta',
      setTo: 'Ajustada a',
      clicked: 'Hicieron clic',
      moved: 'Se movieron',
      wrench: 'Llave',
      who: 'Quién y cuándo',
    },
  },
  round: {
    half: 'como la mitad',
    full: 'valor completo',
    again: 'vuelta de revisión',
    check: 'segunda persona',
    'own-check': 'revisión propia',
    'after-miles': 'después de las millas',
  },
  stale: (round, why) => `${round}; ${stale[why]}`,
  notDone: 'no se hizo',
  clicked: (clicked, total, fastener) => `${clicked} de ${total} ${fasteners[fastener].many}`,
  moved: (places, fastener) =>
    places.length === 0 ? 'ninguno' : `${fasteners[fastener].one} ${listed(places.map(String))}`,
  clock: ({ took, checkedAfterMinutes: minutes }) =>
    [
      ...(took === null ? [] : [`apriete en ${took}`]),
      ...(minutes === null
        ? []
        : [`revisado ${minutes === 0 ? 'en menos de un minuto' : `${minutes} min después`}`]),
    ].join(', '),
  byTheClock: (wheel, clock) => `Según el reloj de la tableta, ${wheel}: ${clock}.`,
  checkedAlone: (wheels) =>
    `No había una segunda persona: quien apretó ${wheels.length === 1 ? 'la rueda' : 'las ruedas'} ${listed(wheels)} revisó el apriete otra vez.`,
  wrench: ({ code, dueOn, clicks, low, high, unit }) =>
    `Llave ${code}: calibración a más tardar ${dueOn}, ${clicks} clics antes de este uso, rango de ${low} a ${high} ${unit}.`,
}
