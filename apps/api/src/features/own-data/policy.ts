/** A file that goes along: a report, or the copy of a photo that is shown. */
export type CopiedFile = {
  readonly path: string
  readonly orderId: string
  readonly of:
    | { readonly kind: 'report'; readonly number: string }
    | { readonly kind: 'photo'; readonly digest: string }
}

/** A photo's copy has 300 KB at most and a report some hundred: more than this is no file that a person can use. */
export const mostFiles = 2_000

/** The reports and photos of a customer's orders by the paths that they have in the copy; reports first where there are too many. */
export const filesOf = (
  orders: readonly {
    readonly orderId: string
    readonly number: string
    readonly reports: readonly string[]
    /** Digests of photos that have arrived. */
    readonly photos: readonly string[]
  }[],
  most = mostFiles,
): CopiedFile[] => {
  const reports = orders.flatMap(({ orderId, reports: numbers }) =>
    numbers.map((number) => ({
      ...{ path: `reports/${number}.pdf`, orderId },
      of: { kind: 'report', number } as const,
    })),
  )
  const photos = orders.flatMap(({ orderId, number, photos: digests }) =>
    [...new Set(digests)].map((digest, index) => ({
      ...{ path: `photos/${number}-${index + 1}.jpg`, orderId },
      of: { kind: 'photo', digest } as const,
    })),
  )
  return [...reports, ...photos].slice(0, most)
}
