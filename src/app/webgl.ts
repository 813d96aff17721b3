let answer: boolean | undefined

/** Whether a picture can be drawn here at all; asked once, before the 3D part is loaded. */
export function hasWebGl(): boolean {
  answer ??= probe()
  return answer
}

function probe(): boolean {
  try {
    const gl = document.createElement('canvas').getContext('webgl2')
    gl?.getExtension('WEBGL_lose_context')?.loseContext()
    return gl !== null
  } catch {
    return false
  }
}
