import { createHash } from 'node:crypto'
import { build } from 'vite'
import { beforeAll, describe, expect, it } from 'vitest'
import { staffBuild } from './builds.ts'
import type { Output } from './first-load.ts'

type ShellFile = { readonly url: string; readonly revision: string | null; readonly integrity: string }

describe('what a tablet keeps of the bay', () => {
  let outputs: readonly Output[]
  let shell: readonly ShellFile[]
  const file = (name: string): string | Uint8Array => {
    const output = outputs.find(({ fileName }) => fileName === name)
    if (output === undefined) throw new Error(`${name} was not built`)
    return output.type === 'chunk' ? output.code : output.source
  }
  beforeAll(async () => {
    const result = await build({
      ...staffBuild,
      logLevel: 'silent',
      build: { ...staffBuild.build, write: false },
    })
    outputs = [result].flat().flatMap((one) => ('output' in one ? one.output : []))
    const listed = /\[\{"?url"?:.*?\}\]/.exec(String(file('bay-worker.js')))?.[0]
    shell = JSON.parse(listed ?? 'null') as ShellFile[]
  })

  it('is its page, the screens that open later, the rules of the diagnosis, styles and type', () => {
    const urls = shell.map(({ url }) => url.replace(/-[\w-]{8}\./, '.'))
    expect(urls).toEqual(
      expect.arrayContaining([
        '/bay.html',
        '/assets/bay.js',
        '/assets/bay.css',
        '/assets/bay-order.js',
        '/assets/bay-order.css',
        '/assets/diagnose.js',
        '/assets/atkinson-hyperlegible-next-latin-wght-normal.woff2',
      ]),
    )
  })

  it('holds nothing of the desk, of a customer or of the service', () => {
    expect(shell.filter(({ url }) => /desk|customer|^\/api/.test(url))).toEqual([])
    expect(outputs.some(({ fileName }) => /desk/.test(fileName))).toBe(true)
  })

  it('names every file by the digest of what it holds, so that no other answer is kept', () => {
    // Subresource Integrity (w3.org/TR/sri-2): "sha384-" and the digest in base64.
    for (const { url, integrity } of shell)
      expect(integrity).toBe(
        `sha384-${createHash('sha384')
          .update(file(url.slice(1)))
          .digest('base64')}`,
      )
  })

  it('has an address that does not change for what has no digest in its name', () => {
    expect(shell.filter(({ revision }) => revision !== null).map(({ url }) => url)).toEqual(['/bay.html'])
  })

  it('says which program it is, by number and by what its files hold', () => {
    expect(String(file('bay.html'))).toMatch(/<meta name="version" content="\d+\.\d+\.\d+\+[0-9a-f]{8}">/)
  })

  it('can be installed: a manifest for the bay alone, with icons that exist', () => {
    // What a browser asks for before it offers to install (w3.org/TR/appmanifest; web.dev/articles/install-criteria).
    const manifest = JSON.parse(String(file('bay.webmanifest'))) as {
      name: string
      start_url: string
      scope: string
      display: string
      icons: { src: string; sizes: string }[]
    }
    expect(manifest).toMatchObject({ start_url: '/bay', scope: '/bay', display: 'standalone' })
    expect(new Set(manifest.icons.map(({ sizes }) => sizes))).toEqual(new Set(['192x192', '512x512']))
    for (const { src, sizes } of manifest.icons) {
      const png = Buffer.from(file(src.slice(1)))
      // Width and height of a PNG (w3.org/TR/png-3, 11.2.1 IHDR).
      expect(`${png.readUInt32BE(16)}x${png.readUInt32BE(20)}`).toBe(sizes)
    }
    expect(String(file('desk.html'))).not.toContain('manifest')
  })
})
