/** What a message to a customer is about. */
export type MessageAbout = 'estimate' | 'report' | 'retorque' | 'deferred'

export const messagesAbout = [
  'estimate',
  'report',
  'retorque',
  'deferred',
] as const satisfies readonly MessageAbout[]

type MessagePlace = 'name' | 'vehicle' | 'shop' | 'link' | 'when' | 'work'

/** What a shop's own message may have filled in, by what it is about. The last one it must have: the message is sent for it. */
const placesOf: Readonly<
  Record<MessageAbout, readonly [MessagePlace, MessagePlace, MessagePlace, MessagePlace]>
> = {
  estimate: ['name', 'vehicle', 'shop', 'link'],
  report: ['name', 'vehicle', 'shop', 'link'],
  retorque: ['name', 'vehicle', 'shop', 'when'],
  deferred: ['name', 'vehicle', 'shop', 'work'],
}

/** The places as they are typed, `{name}` for one. */
export const placesIn = (about: MessageAbout): readonly string[] =>
  placesOf[about].map((place) => `{${place}}`)

/** The place that a message must have. */
export const neededPlace = (about: MessageAbout): string => `{${placesOf[about][3]}}`

/** What is wrong with a shop's own message: a place that nothing fills, or the one that is missing. */
export type TemplateFault =
  | { readonly why: 'unknown-place'; readonly found: string; readonly places: readonly string[] }
  | { readonly why: 'missing-place'; readonly place: string }

/** The first fault of a shop's own message; `null` where it can be sent. A brace alone is a place that was mistyped. */
export const templateFault = (about: MessageAbout, template: string): TemplateFault | null => {
  const places = placesIn(about)
  for (const [found] of template.matchAll(/\{[^{}\n]*\}|\{\S*|\S*\}/g))
    if (!places.includes(found)) return { why: 'unknown-place', found, places }
  const place = neededPlace(about)
  return template.includes(place) ? null : { why: 'missing-place', place }
}

/** What goes into the places of a message. */
export type TemplateValues = Readonly<Record<MessagePlace, string>>

/** A message with its places filled in, once: a name that looks like a place stays a name. */
export const filledIn = (template: string, values: TemplateValues): string =>
  template.replaceAll(
    /\{(name|vehicle|shop|link|when|work)\}(\.?)/g,
    (_, place: MessagePlace, period: string) => {
      const value = values[place]
      // One period is enough where the value ends in its own, as in "8:41 p.m."
      return value.endsWith('.') ? value : `${value}${period}`
    },
  )

/** A shop's own messages, by what they are about and the language; `null` where the program's own words go out. */
export type OwnMessages = Readonly<
  Record<MessageAbout, { readonly en: string | null; readonly es: string | null }>
>

const textIn = (from: unknown, key: string): string | null => {
  const value = typeof from === 'object' && from !== null ? (from as Record<string, unknown>)[key] : undefined
  return typeof value === 'string' && value.trim() !== '' ? value : null
}

/**
 * The own messages in a stored version of a shop's texts. Versions from before each kind had its own hold one English text
 * for the link, which was sent with estimates.
 */
export const ownMessagesIn = (body: unknown): OwnMessages => {
  const { messages, linkMessage } = (body ?? {}) as {
    readonly messages?: unknown
    readonly linkMessage?: unknown
  }
  const of = (about: MessageAbout) => {
    const stored = (messages as Record<string, unknown> | undefined)?.[about]
    return { en: textIn(stored, 'en'), es: textIn(stored, 'es') }
  }
  const estimate = of('estimate')
  return {
    estimate: messages === undefined ? { en: textIn({ linkMessage }, 'linkMessage'), es: null } : estimate,
    report: of('report'),
    retorque: of('retorque'),
    deferred: of('deferred'),
  }
}
