import { spawnSync } from 'node:child_process'

const packages = {
  pdfsig: 'poppler-utils',
  pdftotext: 'poppler-utils',
  pdfinfo: 'poppler-utils',
  pdffonts: 'poppler-utils',
  pdftoppm: 'poppler-utils',
  qpdf: 'qpdf',
} as const

/**
 * Runs a checker from outside the project and gives what it wrote and its exit status. A missing one fails with
 * the command that brings it; no check is ever skipped.
 */
export const outsideTool = (
  tool: keyof typeof packages,
  args: readonly string[],
): { readonly status: number; readonly output: string } => {
  const run = spawnSync(tool, [...args], { encoding: 'utf8', maxBuffer: 64 * 1024 * 1024 })
  if (run.error)
    throw new Error(
      `${tool} is needed to check PDF files and cannot be run (${run.error.message}). ` +
        `Install it: apt-get update && apt-get install -y ${packages[tool]}`,
    )
  return { status: run.status ?? -1, output: `${run.stdout}${run.stderr}` }
}
