import * as z from 'zod/mini'

/** The languages in which a customer is served: what they decided on, and what their report says. */
export const CustomerLanguageCode = z.enum(['en', 'es'])
export type CustomerLanguageCode = z.infer<typeof CustomerLanguageCode>
