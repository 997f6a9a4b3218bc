import { fileURLToPath } from 'node:url'
import { customerPage } from '@bayledger/wording/en/customer-page'
import { customerPage as inSpanish } from '@bayledger/wording/es/customer-page'
import react from '@vitejs/plugin-react'
import type { InlineConfig, Plugin, Rolldown } from 'vite'
import { bayShell, workerFile } from './bay-shell.ts'
import { type Face, outFolder } from './faces.ts'
import program from './package.json' with { type: 'json' }

export const webFolder = fileURLToPath(new URL('.', import.meta.url))

/** The staff's faces, on React, and the worker that keeps the bay on its tablets. */
export const staffBuild: InlineConfig = {
  ...shared(['desk', 'bay'], ['src/faces/bay/shell/worker.ts']),
  plugins: [react(), bayShell(program.version)],
}

/** What a customer reads of the page itself, before or without its script, is said by the wording room too. */
const wordsOfThePage: Plugin = {
  name: 'words-of-the-page',
  transformIndexHtml: (html) =>
    html
      .replace('{title}', customerPage.document.title)
      .replace('{needsScript}', customerPage.document.needsScript)
      .replace('{needsScriptInSpanish}', inSpanish.document.needsScript),
}

/** The customer's face: the same components on Preact, in a bundle that holds no staff code. */
export const customerBuild: InlineConfig = {
  ...shared(['customer']),
  plugins: [react(), wordsOfThePage],
  resolve: {
    alias: {
      'react-dom/client': 'preact/compat/client',
      'react-dom': 'preact/compat',
      'react/jsx-runtime': 'preact/jsx-runtime',
      react: 'preact/compat',
    },
  },
}

function shared(faces: readonly Face[], workers: readonly string[] = []): InlineConfig {
  return {
    configFile: false,
    root: webFolder,
    base: '/',
    logLevel: 'warn',
    build: {
      outDir: outFolder,
      // Both builds write here side by side; build.ts empties the folder first.
      emptyOutDir: false,
      target: 'es2022',
      // The content policy allows fonts and images from our own address only, not from data: addresses.
      assetsInlineLimit: 0,
      modulePreload: { polyfill: false },
      reportCompressedSize: false,
      // What a face may weigh is our own budget, by what it loads first.
      chunkSizeWarningLimit: 1_000,
      rolldownOptions: {
        input: [...faces.map((face) => `${face}.html`), ...workers].map((file) => `${webFolder}${file}`),
        // A worker keeps its address: the browser asks there whether there is a newer one.
        output: {
          entryFileNames: ({ name }) => (name === 'worker' ? workerFile : 'assets/[name]-[hash].js'),
          codeSplitting: { groups: [{ debugName: 'staff', tags: ['$initial'], name: chunkOfBothFaces() }] },
        },
      },
    },
  }
}

/**
 * What desk and bay both need at first is one script. Left alone, the bundler cuts it anew for every page that is loaded later,
 * and small pieces compress worse: some 8 KiB of the bay's first load. The worker's own modules stay with the worker.
 */
function chunkOfBothFaces(): Rolldown.CodeSplittingNameFunction {
  let shared: ReadonlySet<string> | null = null
  return (id, chunking) => {
    const reached = (entry: string): ReadonlySet<string> => {
      const seen = new Set([entry])
      for (const one of seen)
        for (const next of chunking.getModuleInfo(one)?.importedIds ?? []) seen.add(next)
      return seen
    }
    if (shared === null) {
      const [desk, bay, worker] = [
        'faces/desk/main.tsx',
        'faces/bay/main.tsx',
        'faces/bay/shell/worker.ts',
      ].map((file) => reached(`${webFolder}src/${file}`))
      shared = new Set([...(desk ?? [])].filter((one) => bay?.has(one) && !worker?.has(one)))
    }
    return shared.has(id) ? 'staff' : null
  }
}
