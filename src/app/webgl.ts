/** Whether a picture can be drawn here at all; asked before the 3D part is loaded. */
export function hasWebGl(): boolean {
  try {
    return document.createElement('canvas').getContext('webgl2') !== null
  } catch {
    return false
  }
}
