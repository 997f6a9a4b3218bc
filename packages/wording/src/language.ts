import type { WheelsWording } from './wheels.ts'

/**
 * Everything that one language says, subject by subject. A language that lacks a subject, or a subject that lacks a
 * sentence, does not compile. Functions of a subject take that subject's words and never the whole language, so that
 * a browser downloads only what it shows.
 */
export type Language = {
  readonly code: 'en'
  readonly wheels: WheelsWording
}
