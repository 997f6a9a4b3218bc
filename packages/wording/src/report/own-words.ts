/** The part of a report that the shop wrote itself. */
export type ReportOwnWordsWording = { readonly title: (shop: string) => string }
