const signedByTablet = 'is signed by the key that a tablet keeps'
const sealedByTablet = 'is sealed by a tablet to the key of this service'
const signedByPasskey = 'is signed by a passkey'
const inALetter = 'needs what only a letter to the customer holds'

/**
 * Operations that requests from schemas and told values alone may never get an answer of success from, each with why. Tests beside
 * this one call them rightly. Any other operation that never succeeds in a whole run is a fault of the run.
 */
export const outOfReach: Readonly<Record<string, string>> = {
  makeFirstShop: 'is for a database without a shop',
  confirmSecondStep: 'needs the code of an app that was given the secret',
  enterByOwnerCode: 'needs a code that is printed once',
  signInByPasskey: signedByPasskey,
  proveByPasskey: signedByPasskey,
  addPasskey: signedByPasskey,
  resumeAtBay: signedByTablet,
  handInParcel: signedByTablet,
  registerDeviceKey: 'is for a tablet that was enrolled without a key',
  handInSealedParcel: sealedByTablet,
  handInSealedPhoto: sealedByTablet,
  putPhotoPiece: 'takes the very bytes of a photo that an entry names',
  createSheet: 'takes a whole sheet whose sources fit its figures, of a vehicle that has none',
  createSheetVersion: 'takes a whole sheet whose sources fit its figures',
  verifyFigure: 'needs the PIN of somebody else for this very figure',
  mergeVehicles: 'needs two vehicles, each in the version in which it was read',
  putStockItem: 'takes a line whose part and place stay as they are',
  getReport: 'needs the number of a sealed report',
  receiveTransfer: 'needs a transfer that is under way',
  askUnsubscribe: inALetter,
  unsubscribe: inALetter,
  decideEstimate: 'answers exactly what the customer was shown',
  sealOrderReport: 'needs an order on which everything is done',
  getCustomerReport: 'needs a sealed report of the order of the link',
}
