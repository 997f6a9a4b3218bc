import type { CustomerLanguage } from '@bayledger/wording/language'

/** In which language something is said. */
export type Spoken = { readonly language: CustomerLanguage }
