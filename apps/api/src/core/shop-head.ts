import { type OwnMessages, ownMessagesIn } from '@bayledger/ledger/message-template'
import { usualWarranty, WarrantyTerms } from '@bayledger/reckoning/money/warranty'
import * as z from 'zod/mini'

const text = z._default(z.nullable(z.string()), null)

/**
 * The hours between which US law lets nobody advertise by telephone (47 CFR 64.1200(c)(1): before 8 a.m. or after 9 p.m.);
 * every message keeps to them until the shop says otherwise.
 */
const usualQuietHours = '21:00-08:00'

const Stored = z.object({
  lines: z.array(z.string()),
  telephone: z.nullable(z.string()),
  reportFooter: text,
  cautions: text,
  quietHours: z._default(z.nullable(z.string()), usualQuietHours),
  warranty: z._default(WarrantyTerms, usualWarranty),
})

/** The setting `report-head`: the shop's own words on paper and in messages. */
export type ShopHead = z.infer<typeof Stored> & { readonly messages: OwnMessages }

/** What is stored of it; a shop that has written nothing says nothing. */
export const readShopHead = (body: unknown): ShopHead => {
  const read = Stored.safeParse(body)
  const head = read.success ? read.data : Stored.parse({ lines: [], telephone: null })
  return { ...head, messages: ownMessagesIn(body) }
}
