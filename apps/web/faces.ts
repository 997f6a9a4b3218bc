import { fileURLToPath } from 'node:url'

export const outFolder = fileURLToPath(new URL('./dist/', import.meta.url))

export const faces = ['desk', 'bay', 'customer'] as const
export type Face = (typeof faces)[number]

/** What a face may weigh: KiB of brotli-compressed JavaScript that its first load needs. */
export const budgetKiB: Readonly<Record<Face, number>> = { desk: 200, bay: 170, customer: 40 }

/** In the built folder: the scripts of each face's first load, for whoever weighs them. It begins with a dot, so it is not served. */
export const firstLoadsFile = '.first-loads.json'
