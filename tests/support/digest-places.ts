import { randomUUID } from 'node:crypto'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/** Folders of a service's own, which are made when it first writes there. */
export const ownDigestPlaces = () => {
  const dataFolder = join(tmpdir(), `bayledger-own-${randomUUID()}`)
  return { dataFolder, digestFolder: join(dataFolder, 'digests') }
}
