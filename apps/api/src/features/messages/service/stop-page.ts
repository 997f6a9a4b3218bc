import type { ChoicePurpose } from '@bayledger/contract/messages'
import { customerLanguages } from '@bayledger/wording/customer-languages'
import type { CustomerLanguage } from '@bayledger/wording/language'

/** What the page behind a link that ends messages says. */
export type StopPage =
  | {
      readonly does: 'ask' | 'done'
      readonly purpose: ChoicePurpose
      readonly shop: string
      readonly language: CustomerLanguage
    }
  | { readonly does: 'unknown' }

/** The page as HTML, without a script. */
export const stopPage = (page: StopPage): Uint8Array => {
  if (page.does === 'unknown') {
    const all = Object.values(customerLanguages)
    return html(
      all[0] as CustomerLanguage,
      all.map(({ code, messages }) => `<p lang="${code}">${safe(messages.stop.unknown)}</p>`).join(''),
    )
  }
  const { stop } = page.language.messages
  const sentence = safe(stop[page.does][page.purpose](page.shop))
  const button = `<form method="post"><button>${safe(stop.button)}</button></form>`
  return html(page.language, `<p>${sentence}</p>${page.does === 'ask' ? button : ''}`)
}

const html = ({ code, messages }: CustomerLanguage, body: string): Uint8Array => {
  const title = safe(messages.stop.title)
  return new TextEncoder().encode(
    `<!doctype html><html lang="${code}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>${title}</title></head><body><main><h1>${title}</h1>${body}</main></body></html>`,
  )
}

const safe = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')
