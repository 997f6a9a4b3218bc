import type { EstimateLinesWording } from '../estimate-lines.ts'

export const estimateLines: EstimateLinesWording = {
  names: {
    look: 'Check of every wheel sensor and the vehicle',
    'look-waived': 'Check of every wheel sensor and the vehicle, waived',
    'look-waived-with-work': 'Check of every wheel sensor and the vehicle, waived if you say Yes to any work',
    'wheel-service': 'Demount, mount and balance',
    'wheel-service-low': 'Demount, mount and balance, low profile',
    'program-and-relearn': 'Program the sensor, make the vehicle learn it',
    relearn: 'Make the vehicle learn its sensors',
    reset: 'Reset the tire pressure system',
    'repair-labor': 'Find the leak, demount, repair from the inside, mount, balance',
    'repair-unit': 'Combined plug and patch',
    'kit-clamp-in': 'Stem service kit, clamp-in',
    'kit-rubber': 'Rubber stem and core',
    'fastener-labor': 'Renew a damaged stud, wheel off',
    'fastener-parts': 'Stud with its nut, or bolt',
    'sensor-disposal': 'Disposal of the old sensor',
    tire: 'New tire in the size of the vehicle’s sheet',
    'tire-disposal': 'Disposal of the old tire',
    pressures: 'All pressures set for the day',
    'pressures-alone': 'All pressures set for the day, no charge',
    supplies: 'Shop supplies',
  },
  sensor: (megahertz, stem) => `Wheel sensor, ${megahertz} MHz, ${stem}, with its stem parts`,
}
