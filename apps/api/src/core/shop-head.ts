import * as z from 'zod/mini'

const text = z._default(z.nullable(z.string()), null)

const Stored = z.object({
  lines: z.array(z.string()),
  telephone: z.nullable(z.string()),
  reportFooter: text,
  cautions: text,
  linkMessage: text,
})

/** The setting `report-head`: the shop's own words on paper and in messages. */
export type ShopHead = z.infer<typeof Stored>

/** What is stored of it; a shop that has written nothing says nothing. */
export const readShopHead = (body: unknown): ShopHead => {
  const read = Stored.safeParse(body)
  return read.success
    ? read.data
    : { lines: [], telephone: null, reportFooter: null, cautions: null, linkMessage: null }
}
