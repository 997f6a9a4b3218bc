import type { ConfidenceWording } from '../confidence.ts'

export const confidence: ConfidenceWording = {
  firm: { word: 'Demostrado', means: 'Se midió o se vio aquí; lo que se anotó lo demuestra.' },
  likely: {
    word: 'Probable',
    means: 'Las lecturas lo indican; confírmelo antes de poner una pieza o de basar un trabajo en ello.',
  },
  possible: {
    word: 'Posible',
    means: 'Puede ser; nada aquí lo demuestra todavía. Revise más antes de cualquier trabajo.',
  },
}
