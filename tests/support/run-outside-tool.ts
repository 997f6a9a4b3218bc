import { spawnSync } from 'node:child_process'
import { type OutsideTool, outsideTool } from './outside-tools.ts'

/** Runs a checker from outside the project; gives all that it wrote and its exit status. */
export const runOutsideTool = (
  tool: OutsideTool,
  args: readonly string[],
): { readonly status: number; readonly output: string } => {
  const run = spawnSync(outsideTool(tool), [...args], { encoding: 'utf8', maxBuffer: 64 * 1024 * 1024 })
  return { status: run.status ?? -1, output: `${run.stdout}${run.stderr}` }
}
