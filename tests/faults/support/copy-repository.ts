import { copyFileSync, cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, symlinkSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { repositoryFiles, root } from '../../house/repository-files.ts'

/** Where the workspaces lie among the installed packages. */
const own = '@bayledger'

/**
 * The repository copied to a folder of its own, so that a test may change its files: what git keeps and the generated
 * database client. Installed packages are linked, this repository's own among them to the copy.
 */
export const copyRepository = (): string => {
  const copy = mkdtempSync(join(tmpdir(), 'bayledger-copy-'))
  for (const file of repositoryFiles().filter((name) => !name.startsWith('docs/'))) {
    mkdirSync(dirname(join(copy, file)), { recursive: true })
    copyFileSync(join(root, file), join(copy, file))
  }
  const client = 'packages/db/src/generated'
  if (existsSync(join(root, client))) cpSync(join(root, client), join(copy, client), { recursive: true })
  mkdirSync(join(copy, 'node_modules'))
  for (const name of readdirSync(join(root, 'node_modules')))
    if (name === own)
      cpSync(join(root, 'node_modules', own), join(copy, 'node_modules', own), {
        recursive: true,
        verbatimSymlinks: true,
      })
    else symlinkSync(join(root, 'node_modules', name), join(copy, 'node_modules', name))
  for (const folder of ['apps', 'packages'])
    for (const room of readdirSync(join(root, folder))) {
      const installed = join(root, folder, room, 'node_modules')
      if (existsSync(installed)) symlinkSync(installed, join(copy, folder, room, 'node_modules'))
    }
  return copy
}
