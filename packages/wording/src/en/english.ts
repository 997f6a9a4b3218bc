import type { Language } from '../language.ts'
import { wheels } from './wheels.ts'

export const english: Language = { code: 'en', wheels }
