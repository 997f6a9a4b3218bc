import { rm } from 'node:fs/promises'
import { build } from 'vite'
import { customerBuild, staffBuild } from './builds.ts'
import { outFolder } from './faces.ts'

/**
 * Builds the three faces, and builds them again when one of their files changes, without compression or budgets. Sends one
 * message to its parent process once all of them are there. Load the page again to see a change.
 */
await rm(outFolder, { recursive: true, force: true })

const watched = async (name: string, config: typeof staffBuild): Promise<void> => {
  const watcher = await build({ ...config, build: { ...config.build, watch: {} } })
  if (!('on' in watcher)) throw new Error('The build ended instead of watching.')
  await new Promise<void>((resolve) => {
    watcher.on('event', (event) => {
      if (event.code === 'ERROR') console.error(event.error.message)
      if (event.code !== 'BUNDLE_END') return
      console.log(`${name}: built in ${event.duration} ms`)
      void event.result.close()
      resolve()
    })
  })
}

await Promise.all([watched('desk and bay', staffBuild), watched('customer', customerBuild)])
process.send?.('built')
