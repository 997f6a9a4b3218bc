import type { SeenWording } from '../../report/seen.ts'
import { observations } from '../observations.ts'

export const seen: SeenWording = {
  tires: observations,
  valve: observations,
  stem: observations,
  tireDamage: observations,
  fastenerDamage: observations,
  inside: {
    ...observations,
    'earlier-repair': 'reparación anterior',
    'foreign-body': 'objeto extraño',
  },
  leak: {
    stem: 'válvula',
    core: 'núcleo',
    bead: 'ceja',
    tread: 'banda',
    sidewall: 'costado',
    rim: 'rin',
  },
  codes: observations,
  sources: {
    'placard-photo': 'foto de la etiqueta',
    'maker-manual': 'manual del fabricante',
    'sensor-maker-sheet': 'hoja del fabricante del sensor',
    'own-measurement': 'medición propia',
    memory: 'de memoria, sin fuente',
  },
}
