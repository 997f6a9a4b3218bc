import { execFileSync } from 'node:child_process'
import { mkdirSync, mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { removeFolder } from './shop-folder.ts'

/** A disk of its own, kept in a file: what the file holds is what a power cut would leave on it. */
export type LoopDisk = {
  /** Where it is mounted. */
  readonly path: string
  /** Another disk, as this one would be found after the power was cut now. */
  readonly afterPowerCut: () => LoopDisk
  readonly remove: () => void
}

/** An ext4 disk of so many megabytes. Throws in words where this machine cannot mount one. */
export const makeLoopDisk = (megabytes: number): LoopDisk => {
  const home = mkdtempSync(join(tmpdir(), 'bayledger-disk-'))
  const image = join(home, 'image')
  run('truncate', '-s', `${megabytes}M`, image)
  run('mkfs.ext4', '-q', '-F', '-m', '0', image)
  return mount(home, image)
}

const mount = (home: string, image: string): LoopDisk => {
  const path = join(home, 'disk')
  mkdirSync(path)
  run('mount', '-o', 'loop', image, path)
  return {
    path,
    afterPowerCut: () => {
      const other = mkdtempSync(join(tmpdir(), 'bayledger-disk-'))
      const copy = join(other, 'image')
      run('cp', '--sparse=always', image, copy)
      return mount(other, copy)
    },
    remove: () => {
      run('umount', path)
      removeFolder(home)
    },
  }
}

const run = (command: string, ...parameters: string[]): void => {
  try {
    execFileSync(command, parameters, { stdio: ['ignore', 'ignore', 'pipe'] })
  } catch (error) {
    throw new Error(
      `"${command} ${parameters.join(' ')}" failed. A disk in a file needs root, e2fsprogs and loop devices: run this as root on Linux, or in a container with --privileged. ${String(error)}`,
      { cause: error },
    )
  }
}
