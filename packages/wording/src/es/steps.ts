import type { StepsWording } from '../steps.ts'

/** The titles of steps; how a step is done is read in the bay only. */
export const steps: Pick<StepsWording, 'does'> = {
  does: {
    'confirm-placard': 'Confirmar las presiones de la etiqueta de la puerta',
    'confirm-stud-torque': 'Confirmar el apriete de las ruedas',
    'confirm-frequency': 'Confirmar la frecuencia de los sensores',
    'lift-vehicle': 'Levantar el vehículo',
    'lower-to-touching': 'Bajarlo hasta que las llantas apenas agarren',
    'lower-fully': 'Bajarlo sobre sus ruedas',
    'find-leak': 'Encontrar por dónde se va el aire',
    'find-leak-after-look': 'Bien por dentro: encontrar por dónde se va el aire',
    'match-tire': 'Comparar la llanta nueva, leer su número',
    'match-sensor': 'Sacar el sensor del almacén, compararlo con el lector',
    'program-sensor': ({ values }) =>
      values.identity === 'copy' ? 'Programar con el ID del sensor viejo' : 'Programar con un ID nuevo',
    'read-other-wheel': 'Leer la rueda del otro juego',
    'check-tires-for-rotation': 'Ver que las llantas permitan la rotación',
    'take-spare-out': 'Sacar la llanta de repuesto',
    'take-sound-spare-out': 'Sacar la llanta de repuesto, ver que esté en buen estado',
    'stow-spare': 'Guardar la llanta de repuesto nueva',
    'put-spare-back': 'Guardar otra vez la llanta de repuesto',
    'take-wheel-off': 'Quitar la rueda',
    'repair-fastener': 'Cambiar los birlos o tuercas dañados',
    'purge-sealant': 'Al aire libre: sacar el gas del sellador, cuatro veces',
    'purge-in-restraint': 'Al aire libre, en jaula: sacar el gas, cuatro veces',
    'open-tire': 'Sacar el aire, despegar la ceja',
    'look-inside': 'Mirar dentro de la llanta',
    'judge-leak': 'Decir qué cierra la fuga',
    'repair-leak': 'Reparar lo que pierde aire',
    'fit-sensor': 'Quitar el sensor viejo, poner el nuevo',
    'renew-stem': 'Cambiar las piezas de la válvula',
    'read-in-rim': 'Leer el sensor antes de poner la llanta',
    'seat-tire': 'Montar la llanta, asentar las cejas',
    'seat-in-restraint': 'Montarla, asentar las cejas en jaula',
    'torque-core': 'Apretar el núcleo nuevo de la válvula',
    'put-core-back': 'Poner otra vez el núcleo de la válvula, apretarlo',
    'inflate-tire': 'Inflar a la presión de trabajo',
    'inflate-in-restraint': 'En jaula: inflar a la presión de trabajo',
    'check-leaks': 'Revisar válvula, núcleo y cejas en busca de fugas',
    'balance-wheel': 'Balancear la rueda',
    'put-wheel-on': ({ values }) => `Poner la rueda, ${byHand[values.fastener]}`,
    'torque-studs': ({ round }) => {
      if (round === 'half') return 'Vuelta a la mitad del valor'
      return round === 'full' ? 'Vuelta al valor completo' : 'Otra vuelta al valor completo'
    },
    'torque-after-miles': 'Revisar el apriete después de las millas',
    'check-torque': 'Una segunda persona revisa el apriete',
    'set-pressure': 'Ajustar la presión',
    relearn: ({ values }) => relearnTitles[values.method],
    'learning-drive': 'Un manejo: el vehículo reconoce, la luz queda comprobada',
    'confirm-learned': 'Ver que el vehículo reconoció sus sensores',
    'read-sensor': 'Leer el sensor otra vez',
    'compare-stored': 'Comparar lo que guardó el vehículo',
    'proof-drive': 'Manejo de comprobación',
    'see-light': 'Ver que la luz se enciende y se apaga',
    'last-look': 'Última mirada alrededor del vehículo',
  },
}

const byHand = {
  nut: 'todas las tuercas a mano',
  bolt: 'todos los pernos a mano',
  missing: 'todas las tuercas o pernos a mano',
} as const

const relearnTitles = {
  automatic: 'Dejar que el vehículo reconozca sus sensores',
  stationary: 'Hacer que el vehículo reconozca sus sensores',
  connector: 'Enviar los ID de los sensores al vehículo',
  reset: 'Indicarle al vehículo que sus llantas están bien',
} as const
