/** Every page of a list, first to last: each names where the next one begins, the last one `null`. */
export const readPages = async <Page extends { readonly next: string | null }>(
  read: (cursor: string | null) => Promise<Page>,
): Promise<Page[]> => {
  const pages = [await read(null)]
  for (let next = pages.at(-1)?.next ?? null; next !== null; next = pages.at(-1)?.next ?? null)
    pages.push(await read(next))
  return pages
}
