import type { BundlesWording } from '../bundles.ts'

export const bundles: BundlesWording = {
  titles: {
    look: () => 'Inspección',
    sensor: (wheels) => `Sensor nuevo: ${wheels}`,
    'set-of-four': () => 'Sensores nuevos en todas las ruedas',
    stem: (wheels) => `Cambiar la válvula: ${wheels}`,
    leak: (wheels) => `Encontrar y reparar la fuga: ${wheels}`,
    'leak-search': (wheels) => `Encontrar la fuga y mirar por dentro: ${wheels}`,
    puncture: (wheels) => `Reparar la ponchadura: ${wheels}`,
    tire: (wheels) => `Llanta nueva: ${wheels}`,
    fastener: (wheels) => `Cambiar birlos o tuercas dañados: ${wheels}`,
    season: () => 'Cambiar a las ruedas de la otra temporada',
    rotation: () => 'Rotar las llantas',
    'torque-again': (wheels) => `Revisar otra vez que cada rueda esté apretada: ${wheels}`,
    pressures: () => 'Ajustar todas las presiones para el día',
    relearn: () => 'Conectar los sensores con el vehículo',
    reset: () => 'Ajustar las presiones y reiniciar el sistema',
    tires: (wheels) => `Llantas nuevas, se quedan los sensores: ${wheels}`,
    spare: () => 'Rueda de repuesto: válvula nueva, presión ajustada',
    'outside-work': () => 'Trabajo que hace otro taller',
    'if-stem-breaks': () => 'Solo si se rompe una válvula: sensor nuevo para esa rueda',
    'by-hand': () => 'Agregado por nuestro asesor',
  },
  nothingToSell: 'Revisamos cada rueda y el vehículo.',
  asked: 'Usted lo pidió.',
  ifStemBreaks:
    'Una válvula con corrosión se puede romper al aflojarla. Entonces hay que cambiar su sensor. Sí: seguimos, hasta este precio por cada válvula que se rompa. No: paramos y se lo mostramos primero. No paga nada de esto si no se rompe ninguna.',
  byHand: 'Nuestro asesor lo agregó para usted.',
}
