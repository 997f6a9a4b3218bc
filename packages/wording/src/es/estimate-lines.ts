import type { EstimateLinesWording } from '../estimate-lines.ts'

const look = 'Revisión de los sensores de todas las ruedas y del vehículo'

export const estimateLines: EstimateLinesWording = {
  names: {
    look,
    'look-waived': `${look}, sin cobro`,
    'look-waived-with-work': `${look}, sin cobro si dice Sí a algún trabajo`,
    'wheel-service': 'Quitar la llanta, volver a ponerla, balancearla',
    'wheel-service-low': 'Quitar la llanta, volver a ponerla, balancearla: perfil bajo',
    'program-and-relearn': 'Conectar el sensor con el vehículo',
    relearn: 'Conectar los sensores con el vehículo',
    reset: 'Reiniciar el sistema de presión de llantas',
    'repair-labor':
      'Encontrar la fuga, quitar la llanta, repararla por dentro, volver a ponerla, balancearla',
    'leak-search': 'Encontrar la fuga, quitar la llanta, mirar por dentro, volver a ponerla, balancearla',
    'repair-after-look':
      'Un agujero, si lo hay: el precio de su reparación se da después de mirar por dentro',
    'puncture-labor': 'Reparar un agujero por dentro',
    'repair-unit': 'Tapón y parche en una pieza',
    'kit-clamp-in': 'Juego de piezas para válvula atornillada',
    'kit-rubber': 'Válvula de hule y su núcleo',
    'fastener-labor': 'Cambiar un birlo dañado, con la rueda quitada',
    'fastener-parts': 'Birlo con su tuerca, o perno',
    'sensor-disposal': 'Desecho del sensor viejo',
    tire: 'Llanta nueva de la medida de este vehículo',
    'tire-disposal': 'Desecho de la llanta vieja',
    pressures: 'Todas las presiones ajustadas para el día',
    'pressures-alone': 'Todas las presiones ajustadas para el día, sin cobro',
    'pressures-labor': 'Ajustar todas las presiones para el día',
    'rotation-labor': 'Quitar las ruedas, rotarlas, apretarlas',
    'season-labor': 'Poner las ruedas de la otra temporada, apretarlas',
    'torque-again': 'Revisar otra vez que cada rueda esté apretada, sin cobro',
    'torque-again-labor': 'Revisar otra vez que cada rueda esté apretada',
    'spare-labor': 'Sacar la rueda de repuesto, cambiar su válvula, guardarla',
    deposit: 'Depósito: se le devuelve cuando tengamos la pieza vieja',
    'deposit-returned': 'Depósito devuelto: ya tenemos la pieza vieja',
    supplies: 'Materiales pequeños',
  },
  sensor: (megahertz, stem) =>
    `Sensor de rueda, ${megahertz} MHz, ${stem === 'snap-in' ? 'válvula a presión' : 'válvula atornillada'}, con las piezas de su válvula`,
}
