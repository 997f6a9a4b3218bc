import { useEffect, useState } from 'react'

type LongWorkProps = {
  /** What is being done. */
  words: string
  /** How much of it is done, once that is known. */
  counted: { readonly done: number; readonly of: number; readonly words: string } | null
}

/** Work that takes a while: what is being done, how much of it is done, and for how long it has been. */
export function LongWork({ words, counted }: LongWorkProps) {
  const [seconds, setSeconds] = useState(0)
  useEffect(() => {
    const began = Date.now()
    const timer = setInterval(() => setSeconds(Math.round((Date.now() - began) / 1_000)), 1_000)
    return () => clearInterval(timer)
  }, [])
  return (
    <div className="stack">
      {counted === null ? (
        <progress aria-label={words} />
      ) : (
        <progress aria-label={words} value={counted.done} max={counted.of} />
      )}
      <p role="status">{words}.</p>
      {/* Not read out: it would speak every second. */}
      <p aria-hidden="true">
        {counted === null ? '' : `${counted.words}. `}
        {`${seconds} s so far. Leave this page open.`}
      </p>
    </div>
  )
}
