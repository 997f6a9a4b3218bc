import type { Page } from 'playwright-core'

/** Nobody's PIN. */
export const wrongPin = '000000'

type Proving = { readonly staffId: string; readonly agreesTo: { readonly entryId: string } }

/** While `work` runs, the page asks for another proof than it means to; what the server makes of that is its own answer. */
const withOtherProof = async (
  page: Page,
  other: (asked: Proving) => Proving,
  answeredAt: RegExp,
  work: () => Promise<void>,
): Promise<void> => {
  const path = '**/api/second-person'
  await page.route(path, (route) =>
    route.continue({ postData: JSON.stringify(other(route.request().postDataJSON())) }),
  )
  const answered = page.waitForResponse((response) => answeredAt.test(response.url()))
  await work()
  await answered
  await page.unroute(path)
}

/** The PIN that is typed earns the token of another step, and the page sends its entry with that. */
export const withOtherToken = (page: Page, work: () => Promise<void>): Promise<void> =>
  withOtherProof(
    page,
    (asked) => ({ ...asked, agreesTo: { ...asked.agreesTo, entryId: crypto.randomUUID() } }),
    // The desk's way to write, and a tablet's.
    /\/api\/(entries|bay\/parcels)$/,
    work,
  )

/** The PIN is typed by the very person who writes, as on a screen that offers their own name. */
export const asDoer = (page: Page, staffId: string, work: () => Promise<void>): Promise<void> =>
  withOtherProof(page, (asked) => ({ ...asked, staffId }), /\/api\/second-person$/, work)
