import { fileURLToPath } from 'node:url'
import react from '@vitejs/plugin-react'
import type { InlineConfig } from 'vite'

export const webFolder = fileURLToPath(new URL('.', import.meta.url))
export const outFolder = fileURLToPath(new URL('./dist/', import.meta.url))

export type Face = 'desk' | 'bay' | 'customer'

/** What a face may weigh: KiB of brotli-compressed JavaScript that its first load needs. */
export const budgetKiB: Readonly<Record<Face, number>> = { desk: 200, bay: 170, customer: 40 }

/** The staff's faces, on React. */
export const staffBuild: InlineConfig = {
  ...shared(['desk', 'bay']),
  plugins: [react()],
}

/** The customer's face: the same components on Preact, in a bundle that holds no staff code. */
export const customerBuild: InlineConfig = {
  ...shared(['customer']),
  plugins: [react()],
  resolve: {
    alias: {
      'react-dom/client': 'preact/compat/client',
      'react-dom': 'preact/compat',
      'react/jsx-runtime': 'preact/jsx-runtime',
      react: 'preact/compat',
    },
  },
}

function shared(faces: readonly Face[]): InlineConfig {
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
      rolldownOptions: {
        input: faces.map((face) => `${webFolder}${face}.html`),
      },
    },
  }
}
