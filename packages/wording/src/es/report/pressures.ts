import type { TemperatureQuality } from '@bayledger/reckoning/sheet'
import type { ReportPressuresWording } from '../../report/pressures.ts'
import { listed } from './listed.ts'
import { sourceWords } from './source-words.ts'

const quality: Readonly<Record<TemperatureQuality, string>> = {
  measured: 'medido',
  estimated: 'estimado',
  assumed: 'supuesto',
}

/** Tires that are alike to a tenth are named together. */
const nearest = (wheels: readonly string[], all: number): string => {
  if (wheels.length === all && all > 1) return `Las ${all} llantas que ruedan están iguales, cada una`
  return wheels.length > 1
    ? `Las más cercanas a la luz de advertencia son: ${listed(wheels)},`
    : `La más cercana a la luz de advertencia es la ${listed(wheels)},`
}

export const reportPressures: ReportPressuresWording = {
  title: 'Presiones',
  noneSet: 'En esta orden no se ajustó ninguna presión.',
  labelFrom: (source) => `Origen de los datos de la etiqueta: ${sourceWords(source)}.`,
  howDerived:
    'El objetivo es la cifra de la etiqueta llevada de la temperatura exterior a la de la llanta (ley de los gases a la altitud del taller), redondeada a un décimo, nunca menor que la etiqueta ni mayor que el límite. Manda la etiqueta del fabricante del vehículo.',
  set: {
    caption: 'Ajustado',
    columns: {
      wheel: 'Rueda',
      label: 'Etiqueta',
      outdoors: 'Afuera',
      tire: 'Llanta',
      computed: 'Cálculo',
      target: 'Objetivo',
      asLeft: 'Al salir',
      onceCold: 'En frío',
      gauge: 'Medidor y hora',
    },
  },
  asTheLabel: 'como la etiqueta',
  atItsLimit: (pressure) => `${pressure}, en su límite; ajustar otra vez en frío`,
  coldNotKnown: 'no se sabe',
  tireAir: ({ air, quality: how, asOthers }) =>
    air === null ? quality[how] : `${air} ${asOthers ? 'como las otras llantas' : quality[how]}`,
  gaugeCorrected: (code, offset) =>
    `Medidor ${code}: marca ${offset} psi contra el medidor patrón; las cifras de aquí son presiones corregidas.`,
  gauge: (code, correction) =>
    `Medidor ${code}: marca ${correction} psi contra el medidor patrón; las cifras de aquí son como se leyeron.`,
  margin: {
    nearest: ({ wheels, all, psi, byMaker }) =>
      `${nearest(wheels, all)} en frío, como queda, ${psi} psi arriba ${byMaker ? 'del punto de advertencia del fabricante' : 'del punto de advertencia de la regla; el del fabricante puede ser más alto'}.`,
    coldLightsIt: (fahrenheit) => `Sin fuga, el frío solo la encendería a unos ${fahrenheit} °F.`,
    noColdLightsIt: (fahrenheit) => `Sin fuga, ningún frío hasta ${fahrenheit} °F la encendería.`,
  },
}
