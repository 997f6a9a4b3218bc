import type { ConfidenceWording } from './confidence.ts'
import type { FieldsWording } from './fields.ts'
import type { FindingTitles } from './findings.ts'
import type { LightsWording } from './lights.ts'
import type { WheelsWording } from './wheels.ts'

/**
 * Everything that one language says, subject by subject. A language that lacks a subject, or a subject that lacks a
 * sentence, does not compile. Functions of a subject take that subject's words and never the whole language, so that
 * a browser downloads only what it shows.
 */
export type Language = {
  readonly code: 'en'
  readonly confidence: ConfidenceWording
  readonly fields: FieldsWording
  readonly findingTitles: FindingTitles
  readonly lights: LightsWording
  readonly wheels: WheelsWording
}
