import { english } from './en/english.ts'
import { spanish } from './es/spanish.ts'
import type { CustomerLanguage, LanguageCode } from './language.ts'

/** Every language that a customer can be served in, whole: for the server and for paper. A page loads only its own words. */
export const customerLanguages: Readonly<Record<LanguageCode, CustomerLanguage>> = {
  en: english,
  es: spanish,
}
