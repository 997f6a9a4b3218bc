import type { LanguageCode } from './language.ts'

/** Each language by its own name, so that whoever reads only that one finds it. */
export const languageNames: Readonly<Record<LanguageCode, string>> = { en: 'English', es: 'Español' }
