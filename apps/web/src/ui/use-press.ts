import { type MouseEvent, type PointerEvent, type TouchEvent, useRef } from 'react'
import { ghostMilliseconds } from './hold-steps.ts'

/** A finger rolls a little while it presses: so far outside the edge, in pixels, it is still on the button. */
const rollPixels = 12

/** Whether a pointer is still over the element that it pressed. */
export const isOn = ({ currentTarget, clientX, clientY }: PointerEvent): boolean => {
  const { left, right, top, bottom } = currentTarget.getBoundingClientRect()
  return (
    clientX >= left - rollPixels &&
    clientX <= right + rollPixels &&
    clientY >= top - rollPixels &&
    clientY <= bottom + rollPixels
  )
}

/**
 * The handlers of a key that is pressed quickly, by more than one finger: each finger is followed by itself, because a
 * browser makes no clicks of touches that overlap. The press counts when it ends on the key on which it began.
 */
export const usePress = (onPress: () => void) => {
  const begun = useRef(new Map<number, number>())
  return {
    onPointerDown: (event: PointerEvent) => {
      if (event.button === 0) begun.current.set(event.pointerId, event.timeStamp)
    },
    onPointerUp: (event: PointerEvent) => {
      const since = begun.current.get(event.pointerId)
      begun.current.delete(event.pointerId)
      if (since === undefined || !isOn(event)) return
      if (event.pointerType === 'touch' && event.timeStamp - since < ghostMilliseconds) return
      onPress()
    },
    onPointerCancel: (event: PointerEvent) => {
      begun.current.delete(event.pointerId)
    },
    // The pointer has pressed already. The mouse events and the click that a browser makes of a touch would cost a slow
    // tablet a second round of focus and paint.
    onTouchEnd: (event: TouchEvent) => {
      if (event.cancelable) event.preventDefault()
    },
    onClick: (event: MouseEvent) => {
      // No pointer made this click: a key, or assistive technology.
      if (event.detail === 0) onPress()
    },
  }
}
