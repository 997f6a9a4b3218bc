import { useEffect } from 'react'
import { useWatch } from './use-watch.ts'

/** Starts a watch when the screen comes up that it times, without a press. */
export function StartsWatch({ watchKey }: { watchKey: string }) {
  const { watch, start } = useWatch(watchKey)
  const isIdle = watch === null
  useEffect(() => {
    if (isIdle) start()
  })
  return null
}
