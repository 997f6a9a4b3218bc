/** What sends photos, loaded when it is first needed: the list of vehicles does not need it. */
export const loadPictures = async () => {
  const { bayPictures } = await import('./bay-pictures.ts')
  return bayPictures
}
