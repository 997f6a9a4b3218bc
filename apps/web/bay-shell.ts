import { createHash } from 'node:crypto'
import { readFile } from 'node:fs/promises'
import type { Plugin, Rolldown } from 'vite'

/** The page and the worker of the installed bay, by the names that they have in the built folder. */
const page = 'bay.html'
export const workerFile = 'bay-worker.js'
const webManifestFile = 'bay.webmanifest'

const iconFolder = new URL('./src/look/icons/', import.meta.url)
const icons = [180, 192, 512].map((size) => ({ size, file: `bay-${size}.png` }))

const webManifest = {
  id: '/bay',
  name: 'Bayledger bay',
  short_name: 'Bayledger',
  description: 'What to do next at each vehicle, and what was found and done.',
  start_url: '/bay',
  scope: '/bay',
  display: 'standalone',
  orientation: 'any',
  lang: 'en',
  background_color: '#0d1312',
  theme_color: '#0d1312',
  icons: icons
    .filter(({ size }) => size >= 192)
    .flatMap(({ size, file }) =>
      ['any', 'maskable'].map((purpose) => ({
        src: `/${file}`,
        sizes: `${size}x${size}`,
        type: 'image/png',
        purpose,
      })),
    ),
}

type Bundle = Rolldown.OutputBundle

/**
 * Makes the bay an app that can be installed: writes its manifest and icons, tells its page which version it is, and
 * tells its worker which files to keep on the tablet: the bay's page and all that it can reach, nothing of the other faces.
 * Each file is named with its digest, so that the worker keeps no answer that did not come from this build. Throws if the
 * page or the worker was not built.
 */
export const bayShell = (version: string): Plugin => ({
  name: 'bay-shell',
  enforce: 'post',
  transformIndexHtml: {
    order: 'pre',
    handler: (html, { path }) =>
      path.endsWith(page)
        ? [
            { tag: 'link', attrs: { rel: 'manifest', href: `/${webManifestFile}` } },
            { tag: 'link', attrs: { rel: 'apple-touch-icon', href: '/bay-180.png' } },
            { tag: 'meta', attrs: { name: 'version', content: '' } },
          ]
        : html,
  },
  generateBundle: {
    order: 'post',
    async handler(_, bundle) {
      for (const { file } of icons)
        this.emitFile({ type: 'asset', fileName: file, source: await readFile(new URL(file, iconFolder)) })
      this.emitFile({ type: 'asset', fileName: webManifestFile, source: JSON.stringify(webManifest) })
      writeShell(bundle, version)
    },
  },
})

/** The attribute that is empty until the whole build is known. */
const noVersion = '<meta name="version" content="">'

const writeShell = (bundle: Bundle, number: string): void => {
  const html = bundle[page]
  const worker = bundle[workerFile]
  if (html?.type !== 'asset' || worker?.type !== 'chunk')
    throw new Error(`The build holds no ${page} or no ${workerFile}.`)
  if (worker.imports.length > 0)
    throw new Error(`${workerFile} imports ${worker.imports.join(', ')}; a worker must be one file.`)
  const files = reachableFrom(bundle, page)
  const before = files.map((file) => digestOf(textOf(bundle, file))).join(' ')
  const version = `${number}+${digestOf(before, 'hex').slice(0, 8)}`
  html.source = String(html.source).replace(noVersion, `<meta name="version" content="${version}">`)
  const shell = files.map((file) => ({
    url: `/${file}`,
    revision: file.startsWith('assets/') ? null : digestOf(textOf(bundle, file), 'hex'),
    integrity: `sha384-${digestOf(textOf(bundle, file), 'base64', 'sha384')}`,
  }))
  worker.code = worker.code.replace('__BAY_SHELL__', JSON.stringify(shell))
}

/** The file and every file of the build that it names, at any depth, in the order of their names. */
export const reachableFrom = (bundle: Bundle, first: string): string[] => {
  const reached = new Set([first])
  for (const file of reached) {
    if (!/\.(html|js|css)$/.test(file)) continue
    const text = String(textOf(bundle, file))
    // The build names its files by what they hold, so no name is part of another text by chance.
    for (const other of Object.keys(bundle))
      if (text.includes(other.slice(other.lastIndexOf('/') + 1))) reached.add(other)
  }
  return [...reached].filter((file) => file !== workerFile).sort()
}

const textOf = (bundle: Bundle, file: string): string | Uint8Array => {
  const output = bundle[file]
  if (output === undefined) throw new Error(`The build holds no ${file}.`)
  return output.type === 'chunk' ? output.code : output.source
}

const digestOf = (
  text: string | Uint8Array,
  encoding: 'hex' | 'base64' = 'hex',
  algorithm: 'sha256' | 'sha384' = 'sha256',
): string => createHash(algorithm).update(text).digest(encoding)
