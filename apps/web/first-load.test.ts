import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { build } from 'vite'
import { describe, expect, it } from 'vitest'
import { isTooHeavy, type Output, scriptsOfFirstLoad } from './first-load.ts'

/** Builds a small page for real: its entry imports one module outright and another only later. */
async function builtPage(): Promise<Output[]> {
  const root = await mkdtemp(join(tmpdir(), 'first-load-'))
  try {
    await mkdir(join(root, 'src'))
    await writeFile(join(root, 'page.html'), '<script type="module" src="./src/entry.js"></script>')
    await writeFile(join(root, 'other.html'), '<script type="module" src="./src/outright.js"></script>')
    await writeFile(
      join(root, 'src/entry.js'),
      "import { now } from './outright.js'; now(); import('./later.js')",
    )
    await writeFile(join(root, 'src/outright.js'), "export const now = () => console.log('now'); now()")
    await writeFile(join(root, 'src/later.js'), "console.log('later')")
    const result = await build({
      configFile: false,
      root,
      logLevel: 'silent',
      build: {
        write: false,
        modulePreload: { polyfill: false },
        rolldownOptions: { input: [join(root, 'page.html'), join(root, 'other.html')] },
      },
    })
    return [result].flat().flatMap((one) => ('output' in one ? one.output : []))
  } finally {
    await rm(root, { recursive: true })
  }
}

describe('what a face must load first', () => {
  it('is its entry with all that it imports outright, and nothing that it may load later', async () => {
    const outputs = await builtPage()
    const needed = scriptsOfFirstLoad(outputs, 'page.html')
    const code = outputs
      .filter((output) => output.type === 'chunk' && needed.includes(output.fileName))
      .map((output) => (output.type === 'chunk' ? output.code : ''))
      .join('')
    expect(code).toContain('now')
    expect(code).not.toContain('"later"')
    expect(code).not.toContain('`later`')
    expect(needed.length).toBeGreaterThan(1)
    expect(() => scriptsOfFirstLoad(outputs, 'absent.html')).toThrow('No entry was built for absent.html')
  })

  it('is too heavy above its budget, or when its weight is unknown', () => {
    expect(isTooHeavy(40, 40)).toBe(false)
    expect(isTooHeavy(40.1, 40)).toBe(true)
    expect(isTooHeavy(Number.NaN, 40)).toBe(true)
  })
})
