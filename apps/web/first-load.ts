import type { Rolldown } from 'vite'

export type Output = Rolldown.OutputChunk | Rolldown.OutputAsset

/**
 * File names of the scripts that a page needs before it shows anything: its entry and all that it imports
 * outright, at any depth. Throws if no entry was built for the page.
 */
export function scriptsOfFirstLoad(outputs: readonly Output[], page: string): string[] {
  const chunks = outputs.filter((output) => output.type === 'chunk')
  const entry = chunks.find((chunk) => chunk.isEntry && chunk.facadeModuleId?.endsWith(`/${page}`))
  if (entry === undefined) throw new Error(`No entry was built for ${page}.`)
  const byName = new Map(chunks.map((chunk) => [chunk.fileName, chunk]))
  const needed = new Set([entry.fileName])
  for (const fileName of needed) {
    for (const imported of byName.get(fileName)?.imports ?? []) needed.add(imported)
  }
  return [...needed]
}

/** Whether a face weighs more than it may; an unknown weight (NaN) is too heavy as well. */
export const isTooHeavy = (kib: number, budgetKiB: number): boolean => Number.isNaN(kib) || kib > budgetKiB
