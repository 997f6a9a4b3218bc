/** What is sent with a customer's link: their name, their vehicle and the address. */
export type LinkMessage = { readonly name: string; readonly vehicle: string; readonly link: string }

/** The shop's own message with its places filled in, once: a name that looks like a place stays a name. */
export const filledIn = (template: string, of: LinkMessage): string =>
  template.replaceAll(/\{(name|vehicle|link)\}/g, (_, key: keyof LinkMessage) => of[key])

/** `null` for the language in which the shop writes its own message. */
export type LinkMessageWording = ((of: LinkMessage) => string) | null
