let answer: boolean | undefined

/** Whether this browser gives a WebGL 2 context. Asked once; the context is given back at once. */
export function hasWebGl(): boolean {
  if (answer !== undefined) return answer
  try {
    const gl = document.createElement('canvas').getContext('webgl2')
    answer = gl !== null
    gl?.getExtension('WEBGL_lose_context')?.loseContext()
  } catch {
    answer = false
  }
  return answer
}
