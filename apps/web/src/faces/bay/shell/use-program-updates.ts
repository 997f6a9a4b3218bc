import { useEffect } from 'react'
import { draftsKept } from '../form/draft-store.ts'
import { bayOutbox } from '../record/bay-outbox.ts'
import { isKeptWhole, keepOnTablet, newerProgram, onTakenOver } from './program.ts'

const lookAgainMilliseconds = 5 * 60_000
const keepAgainMilliseconds = 10_000

let isTakenOver = false
/** Loads the page again, where no step is open. */
let betweenOrders: (() => void) | null = null

onTakenOver(() => {
  isTakenOver = true
  betweenOrders?.()
})

/** Whether whatever was tapped or half filled in here would survive a reload. */
const isAllKept = async (): Promise<boolean> => {
  const [isPosted, isFilled] = await Promise.all([bayOutbox.allKept(), draftsKept()])
  return isPosted && isFilled
}

const keep = () => keepOnTablet().catch(() => null)

/** Keeps the bay on this tablet: again and again until it is there whole, as a network may go while it is loading. */
const useKeeping = (): void => {
  useEffect(() => {
    void keep()
    const timer = setInterval(() => {
      if (isKeptWhole()) clearInterval(timer)
      else void keep()
    }, keepAgainMilliseconds)
    return () => clearInterval(timer)
  }, [])
}

/**
 * Keeps the bay on this tablet and brings it up to date: a newer program waits until nobody is in the middle of a step and
 * everything that was tapped or half filled in is kept, and then takes over.
 */
export const useProgramUpdates = (isBetweenOrders: boolean): void => {
  useKeeping()
  useEffect(() => {
    if (!isBetweenOrders) return
    let isOver = false
    const reload = async () => {
      if ((await isAllKept()) && !isOver) window.location.reload()
    }
    const look = async () => {
      const registration = await keep()
      const newer = registration && (await newerProgram(registration))
      if (newer && (await isAllKept()) && !isOver) newer.postMessage('take over')
    }
    const again = () => void look()
    betweenOrders = () => void reload()
    if (isTakenOver) void reload()
    else again()
    const timer = setInterval(again, lookAgainMilliseconds)
    window.addEventListener('online', again)
    return () => {
      isOver = true
      betweenOrders = null
      clearInterval(timer)
      window.removeEventListener('online', again)
    }
  }, [isBetweenOrders])
}
