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
    'earlier-repair': 'earlier repair',
    'foreign-body': 'foreign body',
  },
  leak: { stem: 'stem', core: 'core', bead: 'bead', tread: 'tread', sidewall: 'sidewall', rim: 'rim' },
  codes: observations,
  sources: {
    'placard-photo': 'placard photo',
    'maker-manual': 'maker manual',
    'sensor-maker-sheet': 'sensor maker sheet',
    'own-measurement': 'own measurement',
    memory: 'from memory, no source',
  },
}
