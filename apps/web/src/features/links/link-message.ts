import { typedOrNull } from '../../lib/typed-text.ts'

/** The shop's message with a customer's link, filled in; `null` where the shop has written none. */
export const linkMessage = (
  settings: readonly { readonly kind: string; readonly body: unknown }[],
  of: { readonly name: string; readonly vehicle: string; readonly link: string },
): string | null => {
  const body = settings.find(({ kind }) => kind === 'report-head')?.body as
    | { readonly linkMessage?: string | null }
    | undefined
  const template = typedOrNull(body?.linkMessage ?? '')
  return (
    template?.replaceAll(/\{(name|vehicle|link)\}/g, (_, key: 'name' | 'vehicle' | 'link') => of[key]) ?? null
  )
}
