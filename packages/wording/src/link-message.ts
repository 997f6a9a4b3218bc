/** What is sent with a customer's link: their name, their vehicle and the address. */
export type LinkMessage = { readonly name: string; readonly vehicle: string; readonly link: string }

/** `null` for the language in which the shop writes its own message. */
export type LinkMessageWording = ((of: LinkMessage) => string) | null
