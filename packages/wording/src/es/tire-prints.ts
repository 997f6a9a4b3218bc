import type { OtherTire, TirePrintsWording } from '../tire-prints.ts'
import { wheels } from './wheels.ts'

const differences = ({ differs: { isOtherSize, loadIndexApart, isSlower } }: OtherTire): string[] => [
  ...(isOtherSize ? ['otra medida'] : []),
  ...(loadIndexApart !== null && loadIndexApart < 0 ? ['un índice de carga menor'] : []),
  ...(isSlower ? ['un símbolo de velocidad menor'] : []),
]

const governs =
  'la etiqueta del fabricante del vehículo dice qué medidas son las correctas, y para cualquier otra decide la tabla de carga del fabricante de la llanta'

export const tirePrints: TirePrintsWording = {
  unread: {
    'worn-off': 'borrado por el uso',
    'on-the-inner-side': 'en el lado de adentro',
    covered: 'tapado',
    'not-printed': 'no está en la llanta',
  },
  otherTire: (of) =>
    `La llanta ${wheels.names[of.wheel]} dice ${of.onTire}; la hoja tiene ${of.bySheet}: ${differences(of).join(', ')}. Aquí no se decidió si puede quedarse: ${governs}.`,
  age: ({ fullYears, atLeast }) => {
    const years = fullYears === 0 ? 'menos de un año' : fullYears === 1 ? '1 año' : `${fullYears} años`
    return atLeast ? `al menos ${years}, década desconocida` : years
  },
}
