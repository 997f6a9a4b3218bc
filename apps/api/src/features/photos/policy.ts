import { photoPieceBytes, photoPieceCount } from '@bayledger/contract/photos'

/** How many bytes this piece has to have; `null` where the photo has no such piece. */
export const bytesOfPiece = (byteLength: number, number: number): number | null => {
  const last = photoPieceCount(byteLength) - 1
  if (number > last) return null
  return number < last ? photoPieceBytes : byteLength - last * photoPieceBytes
}
