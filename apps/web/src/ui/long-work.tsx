import { useEffect, useState } from 'react'

/** Work of which nobody knows how long it takes: what is being done, and for how long it has been. */
export function LongWork({ words }: { words: string }) {
  const [seconds, setSeconds] = useState(0)
  useEffect(() => {
    const began = Date.now()
    const timer = setInterval(() => setSeconds(Math.round((Date.now() - began) / 1_000)), 1_000)
    return () => clearInterval(timer)
  }, [])
  return (
    <div className="stack">
      <progress aria-label={words} />
      <p role="status">{words}.</p>
      {/* Not read out: it would speak every second. */}
      <p aria-hidden="true">{`${seconds} s so far. Leave this page open.`}</p>
    </div>
  )
}
