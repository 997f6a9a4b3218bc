import type { Language } from '../language.ts'
import { confidence } from './confidence.ts'
import { fields } from './fields.ts'
import { findingTitles } from './finding-titles.ts'
import { lights } from './lights.ts'
import { wheels } from './wheels.ts'

export const english: Language = { code: 'en', confidence, fields, findingTitles, lights, wheels }
