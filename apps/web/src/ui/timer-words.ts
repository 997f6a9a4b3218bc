/** "0:42" for the seconds that have passed, never under 0:00. */
export const clockWords = (seconds: number): string => {
  const whole = Math.max(0, Math.floor(seconds))
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`
}

/** How a timer is doing; `target` and `passed` in seconds. Without a target it only counts. */
export const timerWords = (passed: number, target: number | null): string => {
  if (target === null) return clockWords(passed)
  return passed >= target
    ? `${clockWords(passed)}: time is up`
    : `${clockWords(passed)} of ${clockWords(target)}`
}
