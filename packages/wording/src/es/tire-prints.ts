import type { OtherTire, TirePrintsWording, UnevenTread, WornAround } from '../tire-prints.ts'
import { wheels } from './wheels.ts'

const differences = ({ differs: { isOtherSize, loadIndexApart, isSlower } }: OtherTire): string[] => [
  ...(isOtherSize ? ['otra medida'] : []),
  ...(loadIndexApart !== null && loadIndexApart < 0 ? ['un índice de carga menor'] : []),
  ...(isSlower ? ['un símbolo de velocidad menor'] : []),
]

const governs =
  'la etiqueta del fabricante del vehículo dice qué medidas son las correctas, y para cualquier otra decide la tabla de carga del fabricante de la llanta'

const across: Readonly<Record<UnevenTread['hint'], string>> = {
  middle:
    'el centro está más gastado que los dos hombros. A menudo lo causa demasiada presión: revise la presión en frío contra la etiqueta.',
  'both-shoulders':
    'los dos hombros están más gastados que el centro. A menudo lo causa muy poca presión: revise la presión en frío contra la etiqueta y busque una fuga.',
  'inner-shoulder':
    'el hombro de adentro está más gastado que el de afuera. A menudo lo causa una rueda desalineada: pida que revisen la alineación.',
  'outer-shoulder':
    'el hombro de afuera está más gastado que el de adentro. A menudo lo causa una rueda desalineada: pida que revisen la alineación.',
}

const around: Readonly<Record<WornAround['seen'], string>> = {
  cups: 'está gastada en hondonadas alrededor. A menudo lo causa una rueda sin balancear o un amortiguador gastado: revise los dos.',
  feathers:
    'tiene bloques del dibujo con un borde filoso. A menudo lo causa una rueda desalineada: pida que revisen la alineación.',
}

const perhaps = 'Es un indicio y no un hallazgo: puede haber empezado cuando la llanta estaba en otra rueda.'

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
  wornAcross: ({ wheel, across: { inner, middle, outer }, hint }) =>
    `La llanta ${wheels.names[wheel]} tiene ${inner}/32, ${middle}/32 y ${outer}/32 in de dibujo de su lado de adentro a su lado de afuera: ${across[hint]} ${perhaps}`,
  wornAround: ({ wheel, seen }) => `La llanta ${wheels.names[wheel]} ${around[seen]} ${perhaps}`,
}
