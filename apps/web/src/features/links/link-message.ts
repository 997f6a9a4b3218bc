import { filledIn, type LinkMessage, type LinkMessageWording } from '@bayledger/wording/link-message'
import { typedOrNull } from '../../lib/typed-text.ts'

/**
 * The message with a customer's link, filled in: the shop's own, or `own` of a language in which the shop writes none.
 * `null` where there is neither.
 */
export const linkMessage = (
  settings: readonly { readonly kind: string; readonly body: unknown }[],
  of: LinkMessage,
  own: LinkMessageWording = null,
): string | null => {
  if (own !== null) return own(of)
  const body = settings.find(({ kind }) => kind === 'report-head')?.body as
    | { readonly linkMessage?: string | null }
    | undefined
  const template = typedOrNull(body?.linkMessage ?? '')
  return template === null ? null : filledIn(template, of)
}
