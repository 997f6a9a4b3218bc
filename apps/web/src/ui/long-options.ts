/** One of a long list; `group`: the heading under which it is. */
export type LongOption = { readonly value: string; readonly label: string; readonly group?: string }

/** The options in which every word of a text is found, in their order. */
export const optionsFor = <One extends LongOption>(
  searched: string,
  options: readonly One[],
): readonly One[] => {
  const words = searched.toLowerCase().split(/\s+/)
  return options.filter(({ label, value }) => {
    const text = `${label} ${value}`.toLowerCase()
    return words.every((word) => text.includes(word))
  })
}
