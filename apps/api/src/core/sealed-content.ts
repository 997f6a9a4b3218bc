/** What a tablet sealed to this server, as parsed JSON; `null` where it was sealed to another one or is no JSON. */
export const openSealed = async (
  sealing: { readonly open: (box: string) => Promise<string | null> },
  box: string,
): Promise<unknown> => {
  const text = await sealing.open(box)
  if (text === null) return null
  try {
    return JSON.parse(text)
  } catch {
    return null
  }
}
